import type { Activity } from '../../core/finding.js'
import { sunEvents } from '../../core/gather/daylight.js'
import { gather } from '../../core/gather/gather.js'
import type { Memory } from '../../core/gather/memory.js'
import { roofOf } from '../../core/gather/roof-of.js'
import { dayMarks, type Instant, localDate } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { JsonObject } from '../../core/log/entry.js'
import type { Outcome } from '../../core/outcome.js'
import { type Outlook, outlook } from '../../core/plan/outlook.js'
import type { RoofSeries } from '../../core/roof/series.js'
import { firstInstantAt } from '../../core/schedule.js'
import type { Forecast } from '../../core/weather/forecast.js'
import { bondNumbers } from '../closing/bond-numbers.js'
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
    numbers: {
      ...plannedNumbers({ memory, settings, sheet, forecast, now }, seen),
      ...(date === localDate(now, settings.zone) ? { deckNow: deckNow(memory, forecast, sheet, now, roof) } : {}),
      ...alertNumbers(alerts, spanOf(date, settings.zone, now)),
      ...bondNumbers(memory)
    },
    papers: dayPaper({ site, settings, memory, sheet, forecast, roof, now }, seen, how)
  })
}

/** What is known of the deck and the rain at this instant: stated while that holds, else by the model. */
function deckNow(memory: Memory, forecast: Forecast | null, sheet: LimitsSheet, now: Instant, roof: RoofSeries | null): JsonObject {
  const sun = sunEvents(memory.settings, localDate(now, memory.settings.zone))
  const { substrateDry, surfaceWet, rainFalling } = gather(memory, forecast, sun, sheet, now, now, roof)
  return { wet: surfaceWet.value, raining: rainFalling.value, of: substrateDry.value === null ? 'model' : 'statement', today: true }
}

/** All of that day. */
function spanOf(date: string, zone: string, now: Instant): AlertSpan {
  const { noon, midnight } = dayMarks(date, zone)
  return { now, from: firstInstantAt(date, '00:00', zone) ?? noon, to: midnight }
}

function outcomesOf({ activities: { spray, lay, weld, people } }: Outlook): Readonly<Record<Activity, Outcome>> {
  return { spray: spray.outcome, lay: lay.outcome, weld: weld.outcome, people: people.outcome }
}
