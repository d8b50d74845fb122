import { changesAt } from '../../core/changes.js'
import { type Decision, decide, outcomeOf } from '../../core/decide.js'
import type { Facts } from '../../core/facts.js'
import type { Activity } from '../../core/finding.js'
import { type SunEvents, sunEvents } from '../../core/gather/daylight.js'
import { gathererThen } from '../../core/gather/gather.js'
import type { Memory } from '../../core/gather/memory.js'
import { roofOf } from '../../core/gather/roof-of.js'
import { dayMarks, type Instant, localDate } from '../../core/instant.js'
import { canonical } from '../../core/log/canonical.js'
import { worst } from '../../core/outcome.js'
import { forecastBody } from '../../core/weather/body.js'
import { type Answer, unjudged } from '../answer.js'
import type { OnSite } from '../context.js'
import { remember } from '../session/remember.js'
import { decisionData } from './decision-data.js'

export interface Decided {
  readonly memory: Memory
  readonly facts: Facts
  readonly decision: string
  readonly told: Pick<Answer, 'outcome' | 'outcomes' | 'activities' | 'findings' | 'changesAt' | 'decision'>
}

/** `changesAt` looks no farther than this, nor beyond midnight. */
const changesWithinH = 12

function hoursToLookAt(now: Instant, midnight: Instant): number {
  return Math.min(changesWithinH, Math.ceil((midnight - now) / 3600))
}

/** Decides one activity on what the session knows now, and logs the decision with every input. */
export async function decideOnSite(on: OnSite, activity: Exclude<Activity, 'people'>): Promise<Decided> {
  const { session, sheet, forecast } = on
  const memory = await remember(session)
  const today = localDate(session.now, session.settings.zone)
  const sun = sunEvents(session.settings, today)
  const roof = roofOf(memory, forecast, sheet, session.now, hoursToLookAt(session.now, dayMarks(today, session.settings.zone).midnight))
  const factsAt = gathererThen(memory, forecast, sun, sheet, roof)
  const facts = factsAt(session.now)
  const decision = decide(activity, facts, sheet)
  const outcomeAt = (at: Instant) => (at === session.now ? decision.outcome : outcomeOf(activity, factsAt(at), sheet))
  const id = await session.log('decision', `day:${facts.today}`, decisionData(on, decision, facts))
  keepInputs(on)
  return { memory, facts, decision: id, told: { ...inAnswer(decision, id), changesAt: change(on, memory, sun, outcomeAt) } }
}

function change({ session, sheet, forecast }: OnSite, memory: Memory, sun: SunEvents, outcomeAt: (at: Instant) => unknown): Instant | null {
  return changesAt(memory, forecast, sun, sheet, session.now, outcomeAt)
}

function inAnswer(decision: Decision, id: string): Omit<Decided['told'], 'changesAt'> {
  const { activity, outcome, conditions, checklist, people, findings } = decision
  return {
    outcome: activity === 'lay' ? worst([outcome, people]) : outcome,
    outcomes: { conditions, checklist, people },
    activities: { ...unjudged, [activity]: outcome, people },
    findings,
    decision: id
  }
}

/** Sheets and forecasts are kept once, by hash. */
function keepInputs({ session, sheet, forecast }: OnSite): void {
  session.keep({ sha256: sheet.sha256, kind: 'sheet', body: () => canonical(sheet.resolved) })
  if (forecast !== null) session.keep({ sha256: forecast.sha256, kind: 'forecast', body: () => forecastBody(forecast.hours) })
}
