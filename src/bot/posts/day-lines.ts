import { dayMarks, type Instant } from '../../core/instant.js'
import type { Outlook } from '../../core/plan/outlook.js'
import { alertNumbers } from '../decision/alert-numbers.js'
import { plannedNumbers } from '../decision/planned-numbers.js'
import type { Caution, Text } from '../text/text.js'
import { alertLines } from '../views/alerts.js'
import { dateOf } from '../views/clock.js'
import { dryLines, planLines } from '../views/day-plan.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import { shapes } from '../views/outcome.js'
import type { PostOn } from './post.js'

/** Alerts that stand until the day is over. `about`: an instant of the day, whose times need no date. */
export function alertLinesOf({ alerts, now, settings }: PostOn, date: string, about: Instant, how: How, text: Text): readonly string[] {
  return alertLines(alertNumbers(alerts, { now, from: now, to: dayMarks(date, settings.zone).midnight }), about, now, how, text)
}

/** First line of a day: the outcome of its best hours to spray. */
export function dayHead(on: PostOn, day: Outlook, how: How, text: Text): string {
  const { outcome, toRead } = day.activities.spray
  // Without the readings it is the weather that goes, not the work: the first line must not say more.
  const of = day.known && toRead.length > 0 ? `${text.activities.spray} (${text.decision.forecast})` : text.activities.spray
  const about = text.posts.about(of, escapeText(on.site, 60), dateOf(day.date, how) ?? day.date)
  return `${shapes[outcome]} ${text.outcomes[outcome]}${text.frame.colon}${about}`
}

/**
 * Last sheet by, what fits, what to stage, dry and dew; the warming of kits only where one is known to be too cold. `about`: an
 * instant of the day, whose times need no date.
 */
export function plannedLines(on: PostOn, day: Outlook, about: Instant, how: How, text: Text): readonly string[] {
  const numbers = plannedNumbers(on, day)
  return [...planLines(numbers, about, on.now, how, text), ...dryLines(numbers, about, how, text)]
}

/** The rule of people that each caution is for; wind is the danger at edges. */
const cautionOf: Readonly<Record<string, Caution>> = {
  thunder: 'thunder',
  ice: 'ice',
  heat: 'heat',
  cold: 'cold',
  'wind-mean': 'edges',
  'wind-gust': 'edges'
}
const mostCautions = 3

/** Each danger of the day has its caution, a day without one the usual one of spraying. */
export function dayCautions(day: Outlook, text: Text): readonly string[] {
  const found = new Set(
    day.hazards.flatMap(({ finding }) => (finding.outcome === 'unknown' && finding.value === null ? [] : (cautionOf[finding.rule] ?? [])))
  )
  const cautions: readonly Caution[] = found.size === 0 ? ['isocyanates'] : [...found].slice(0, mostCautions)
  return cautions.map((caution) => text.cautions[caution])
}
