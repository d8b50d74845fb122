import type { WelderFact } from '../../core/facts.js'
import { localDate } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { emptyDay } from '../../core/log/states/day.js'
import { type WelderState, wholeWelder } from '../../core/log/states/welder.js'
import { hoursKnown } from '../../core/weather/lookup.js'
import { chanceShort, individualsChart } from '../../core/welds/chart.js'
import type { Around } from '../../core/welds/clearance.js'
import { driftOf } from '../../core/welds/drift.js'
import { metresOf } from '../../core/welds/holding.js'
import { leastMm, seamLimit } from '../../core/welds/seam-limit.js'
import type { OnSite } from '../context.js'
import { iso } from '../json.js'
import type { Session } from '../session/session.js'
import { factsNow } from './facts-now.js'

/** The state of a welder, whole even where an earlier version kept it; empty for one that nobody named. */
export async function welderOf(session: Pick<Session, 'state'>, name: string): Promise<WelderState> {
  return wholeWelder(name, await session.state(`welder:${name}`))
}

/** Every welder that the site ever named, in order of name. */
export async function everyWelder(session: Session): Promise<readonly WelderState[]> {
  const kept = await session.view.states('welder:')
  const today = (await session.state(`day:${localDate(session.now, session.settings.zone)}`)) ?? emptyDay
  const names = new Set([...kept.map(({ subject }) => subject.slice('welder:'.length)), ...Object.keys(today.welders)])
  return Promise.all([...names].sort().map((name) => welderOf(session, name)))
}

/** What a clearance is looked at with at the session's instant. */
export async function aroundNow(on: OnSite): Promise<Around> {
  const { session, forecast } = on
  const { facts, memory } = await factsNow(on)
  return { now: session.now, zone: session.settings.zone, facts, today: memory.today, hours: hoursKnown(forecast, session.now) }
}

/** Where one welder stands: clearance, metres, trend. */
export function welderNumbers(state: WelderState, fact: WelderFact, sheet: LimitsSheet) {
  const { cleared, lapsedBy } = shown(fact)
  const { goodCuts, probed } = state
  return { cleared, lapsedBy, ...metresOf(state), goodCuts, probed, ...trend(state, leastMm(seamLimit(state.name, sheet))) }
}

/** Of the coupons kept, oldest first. */
function trend({ widthsMm }: WelderState, minWidthMm: number) {
  const chart = individualsChart(widthsMm)
  const drift = driftOf(widthsMm, minWidthMm)
  return {
    ...chart,
    chanceShort: chanceShort(chart.meanMm, chart.sigmaMm, minWidthMm),
    coupons: widthsMm.length,
    drift: drift?.kind ?? null,
    shortIn: drift?.shortIn ?? null
  }
}

/** One welder in a list. */
export function shown({ name, status, lapsedBy, widthMm, at }: WelderFact) {
  return { name, cleared: status === 'cleared', lapsedBy, widthMm, at: iso(at) }
}
