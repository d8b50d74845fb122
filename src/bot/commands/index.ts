import type { Beside, Done, OnSite } from '../context.js'
import type { Said } from '../words/said.js'
import { air } from './air.js'
import { bond } from './bond.js'
import { correct } from './correct.js'
import { coupon } from './coupon.js'
import { day } from './day.js'
import { dayRecordOf } from './day-record.js'
import { dayStart } from './day-start.js'
import { detail } from './detail.js'
import { fire } from './fire.js'
import { foam } from './foam.js'
import { help } from './help.js'
import { kit } from './kit.js'
import { laid } from './laid.js'
import { me } from './me.js'
import { override } from './override.js'
import { probeList, probeOpen, probePhoto, probeStep } from './probe.js'
import { punchAdd, punchList, punchStep } from './punch.js'
import { role } from './role.js'
import { seal } from './seal.js'
import { siteNew, siteSet, siteShow } from './site.js'
import { spray } from './spray.js'
import { start } from './start.js'
import { strip } from './strip.js'
import { undo } from './undo.js'
import { weld } from './weld.js'
import { welderChart, welderEvent, welderShow } from './welder.js'

type Asked = Said['command']
type SaidOf<A extends Asked> = Extract<Said, { command: A }>

/** Works on a site, in the transaction that may log. `at`: the instant that the message dates its entries with. */
export type SiteCommand<A extends Asked> = (said: SaidOf<A>, on: OnSite, at: number, beside: Beside) => Promise<Done>
/** Works beside the sites, and logs nothing. */
export type FreeCommand<A extends Asked> = (said: SaidOf<A>, beside: Beside) => Promise<Done>

export const siteCommands = {
  spray,
  'spray override': override,
  air,
  weld,
  'weld coupon': coupon,
  'weld event': welderEvent,
  'weld show': welderShow,
  'weld chart': welderChart,
  'probe open': probeOpen,
  'probe step': probeStep,
  'probe photo': probePhoto,
  'probe list': probeList,
  bond,
  seal,
  fire,
  detail,
  'punch add': punchAdd,
  'punch step': punchStep,
  'punch list': punchList,
  kit,
  foam,
  laid,
  day,
  'day start': dayStart,
  'day record': dayRecordOf,
  'site show': siteShow,
  'site set': siteSet,
  undo,
  correct
} as const satisfies { readonly [A in Asked]?: SiteCommand<A> }

/** A roof is laid out by fifty files that nothing else needs: they are loaded with the first one. */
const sheets: FreeCommand<'sheets'> = async (said, beside) => (await import('./sheets.js')).sheets(said, beside)

export const freeCommands = { strip, sheets, 'site new': siteNew, start, role, help, me } as const satisfies {
  readonly [A in Asked]?: FreeCommand<A>
}

/** Every thing a person can ask has its command: a missing one does not compile. */
type Missing = Exclude<Asked, keyof typeof siteCommands | keyof typeof freeCommands>
export const complete: [Missing] extends [never] ? true : Missing = true
