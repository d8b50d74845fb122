import type { LimitsSheet } from '../core/limits/sheet.js'
import type { SiteSettings } from '../core/site.js'
import type { Alerts } from '../core/weather/alert.js'
import type { Forecast } from '../core/weather/forecast.js'
import type { Answer, Lang, Refusal, Units } from './answer.js'
import type { Ask } from './ask.js'
import type { Draw, Paper } from './papers/paper.js'
import type { Sheets, Store, Weather } from './ports.js'
import type { Session } from './session/session.js'
import type { How } from './views/how.js'

/** What the bot needs of the world. */
export interface Ports {
  readonly store: Store
  readonly weather: Weather
  readonly sheets: Sheets
  readonly draw: Draw
  /** For those who chose none. */
  readonly lang: Lang
  readonly units: Units
  /** The channel that a site has by its name alone; left out: it has none until one is set. */
  readonly ownChannel?: (site: string) => string
  /** Logs a bug; the reference id that the person sees too. */
  readonly report: (error: unknown, context: Readonly<Record<string, string>>) => string
}

/** A command at work on one site. */
export interface OnSite {
  /** Language and units of the answer, the site's zone. */
  readonly how: How
  readonly session: Session
  readonly sheet: LimitsSheet
  readonly forecast: Forecast | null
  /** Read for the commands that show them; null: no service that warns covers the place. */
  readonly alerts: Alerts | null
}

/** A command at work beside the sites. */
export interface Beside {
  readonly ask: Ask
  readonly ports: Ports
  readonly sheet: LimitsSheet
  readonly how: How
  /** The site that it was asked at; null: no such site, or no telling which. */
  readonly place: { readonly name: string; readonly settings: SiteSettings } | null
}

/** The parts of an answer that a command fills; the dispatcher adds the rest. */
export type Told = Pick<Answer, 'command'> & {
  /** Files that go with the answer: drawn when everything is written, so that nobody waits for a pen. */
  readonly papers?: readonly Paper[]
} & Partial<Pick<Answer, 'outcome' | 'outcomes' | 'activities' | 'findings' | 'numbers' | 'changesAt' | 'decision' | 'site' | 'logged' | 'invented'>>

export type Done = { readonly ok: true; readonly told: Told } | { readonly ok: false; readonly refusal: Refusal }

export function refuse(code: Refusal['code'], word: string | null, detail: Refusal['detail'] = {}): Done {
  return { ok: false, refusal: { code, word, understood: [], detail, ref: null } }
}

export function told(answer: Told): Done {
  return { ok: true, told: answer }
}
