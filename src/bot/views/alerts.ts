import { fromIso, type Instant } from '../../core/instant.js'
import type { Text } from '../text/text.js'
import { clock } from './clock.js'
import type { Numbers } from './day-plan.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import { flag, rows, str } from './read.js'

const most = 4
const longestEvent = 120

/** A line for each alert that is more than minor, the worst first; whether they are known at all. `about`: times of another day say which. */
export function alertLines(numbers: Numbers, about: Instant, now: Instant, how: How, text: Text): readonly string[] {
  const shown = rows(numbers, 'alerts').filter((one) => str(one, 'severity') !== 'minor')
  const lines = shown.slice(0, most).map((one) => `${shapes.caution} ${alertLine(one, about, now, how, text)}`)
  const more = shown.length > most ? [text.frame.more(shown.length - most)] : []
  return [...lines, ...more, ...unknownLine(numbers, now, how, text)]
}

/** "Severe Thunderstorm Warning, until 10:15 (US National Weather Service): follow the service's instruction". */
function alertLine(one: Numbers, about: Instant, now: Instant, how: How, { alerts }: Text): string {
  const [from, to] = ['from', 'to'].map((name) => fromIso(str(one, name) ?? ''))
  const end = to == null ? '?' : clock(to, about, how)
  const when = from == null || from <= now ? alerts.until(end) : `${clock(from, about, how)}–${end}`
  const source = str(one, 'source') ?? ''
  const service = Object.hasOwn(alerts.services, source) ? (alerts.services[source] as string) : escapeText(source, 40)
  return alerts.line(escapeText(str(one, 'event') ?? '', longestEvent), when, service)
}

/** The service was asked and did not answer: that there is none is not known. */
function unknownLine(numbers: Numbers, now: Instant, how: How, { alerts }: Text): readonly string[] {
  if (flag(numbers, 'alertsKnown') !== false) return []
  const asOf = fromIso(str(numbers, 'alertsAsOf') ?? '')
  return [`${shapes.unknown} ${asOf === null ? alerts.notKnown : alerts.notKnownSince(clock(asOf, now, how))}`]
}
