import type { Activity } from '../../core/finding.js'
import { roofOf } from '../../core/gather/roof-of.js'
import { dayMarks, type Instant, localDate } from '../../core/instant.js'
import type { Outcome } from '../../core/outcome.js'
import { type Outlook, outlook } from '../../core/plan/outlook.js'
import { firstInstantAt } from '../../core/schedule.js'
import { type Done, type OnSite, told } from '../context.js'
import { type AlertSpan, alertNumbers } from '../decision/alert-numbers.js'
import { plannedNumbers } from '../decision/planned-numbers.js'
import { dayPaper } from '../papers/day-paper.js'
import { remember } from '../session/remember.js'
import type { Said } from '../words/said.js'

/** Windows and plan of a day, as known now: the best hours to spray decide. Logs nothing. */
export async function day(said: Extract<Said, { command: 'day' }>, { session, sheet, forecast, alerts, how }: OnSite): Promise<Done> {
  const { settings, now } = session
  const site = session.view.key.site
  const date = said.date ?? localDate(now, settings.zone)
  const memory = await remember(session)
  const roof = roofOf(memory, forecast, sheet, now)
  const seen = outlook(memory, forecast, sheet, date, now, roof)
  const { outcome, binding } = seen.activities.spray
  return told({
    command: 'day',
    outcome,
    activities: outcomesOf(seen),
    findings: binding === null ? [] : [binding],
    numbers: { ...plannedNumbers({ memory, settings, sheet, forecast, now }, seen), ...alertNumbers(alerts, spanOf(date, settings.zone, now)) },
    papers: dayPaper({ site, settings, memory, sheet, forecast, roof, now }, seen, how)
  })
}

/** All of that day. */
function spanOf(date: string, zone: string, now: Instant): AlertSpan {
  const { noon, midnight } = dayMarks(date, zone)
  return { now, from: firstInstantAt(date, '00:00', zone) ?? noon, to: midnight }
}

function outcomesOf({ activities: { spray, lay, weld, people } }: Outlook): Readonly<Record<Activity, Outcome>> {
  return { spray: spray.outcome, lay: lay.outcome, weld: weld.outcome, people: people.outcome }
}
