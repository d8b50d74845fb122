import { localDate } from '../../core/instant.js'
import type { WelderEvent } from '../../core/log/data.js'
import type { WelderState } from '../../core/log/states/welder.js'
import { clearance } from '../../core/welds/clearance.js'
import { keep, movesFor } from '../../core/welds/coupon.js'
import { lackingForRelease } from '../../core/welds/holding.js'
import { leastMm, seamLimit } from '../../core/welds/seam-limit.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { aroundNow, welderNumbers, welderOf } from '../decision/welder-numbers.js'
import { widthsPaper } from '../papers/widths-paper.js'
import type { Said } from '../words/said.js'

/** `/weld NAME restart` and the like: the clearance lapses. `probed` and `released`: what was done about metres on hold. */
export async function welderEvent({ welder, event, lead }: Extract<Said, { command: 'weld event' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const no =
    event.event === 'probed' || event.event === 'released' ? notYet(await welderOf(session.asOf(at), welder), event.event, event.metresM) : null
  if (no !== null) return no
  if (lead !== undefined) await session.log('statement', `day:${localDate(at, session.settings.zone)}`, { lead }, at)
  await session.log('welder', `welder:${welder}`, event, at)
  return showWelder(on, welder, event.event)
}

/** Why metres cannot be probed or released yet: none are on hold, not so many, not cut back, not probed. */
function notYet(state: WelderState, event: 'probed' | 'released', metresM: number | undefined): Done | null {
  const lack = lackingForRelease(state)
  const why = event === 'probed' && lack !== 'nothing-on-hold' ? null : lack
  if (why !== null) return refuse('wrong-state', event, { label: 'welder', state: why })
  return metresM !== undefined && metresM > state.onHoldM ? refuse('out-of-range', event, { label: 'released', max: state.onHoldM, unit: 'm' }) : null
}

export async function welderShow(said: Extract<Said, { command: 'weld show' }>, on: OnSite): Promise<Done> {
  return showWelder(on, said.welder)
}

/** The same with the picture of its coupons. */
export async function welderChart(said: Extract<Said, { command: 'weld chart' }>, on: OnSite): Promise<Done> {
  const done = await showWelder(on, said.welder)
  if (!done.ok) return done
  const { session, sheet, how } = on
  const state = await welderOf(session, said.welder)
  const paper = widthsPaper(state, session.view.key.site, session.settings, leastMm(seamLimit(said.welder, sheet)), how)
  return told({ ...done.told, papers: [paper] })
}

/** `event`: what was just said of it; null for nothing. */
async function showWelder(on: OnSite, name: string, event: WelderEvent | null = null): Promise<Done> {
  if ((await on.session.state(`welder:${name}`)) === null) return refuse('not-found', name, { label: 'welder' })
  const state = await welderOf(on.session, name)
  const last = state.coupon?.value ?? null
  const cause = last?.cause ?? null
  const after = welderNumbers(state, clearance(state, await aroundNow(on), on.sheet), on.sheet)
  const numbers = {
    welder: name,
    event,
    passed: last?.passed ?? null,
    widthMm: last?.widthMm ?? null,
    minWidthMm: leastMm(seamLimit(name, on.sheet)),
    cause,
    move: { ...(cause === null ? keep : movesFor(cause, (state.failing?.count ?? 1) - 1)) },
    ...after
  }
  return told({ command: 'weld', outcome: after.cleared ? 'go' : after.lapsedBy === null ? 'unknown' : 'no-go', numbers })
}
