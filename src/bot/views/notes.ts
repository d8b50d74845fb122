import { fromIso } from '../../core/instant.js'
import type { Answer } from '../answer.js'
import type { Caution, Text } from '../text/text.js'
import { clock } from './clock.js'
import { clip, escapeText } from './escape.js'
import type { How } from './how.js'
import { flag, row } from './read.js'

/** Small print: the usual caution, where the weather is from and by which limits, what was logged. */
export function notesOf(answer: Answer, caution: Caution | null, how: How, text: Text): readonly string[] {
  return [...(caution === null ? [] : [text.cautions[caution]]), ...sourceNote(answer, how, text), ...loggedNote(answer, text)]
}

/** Answers in which a forecast would count. */
const forecasting: ReadonlySet<string> = new Set(['spray', 'air', 'weld', 'day'])

/** Answers that judge nothing by any limit. */
const unjudged: ReadonlySet<string> = new Set(['help', 'me', 'undo', 'correct'])

function sourceNote(answer: Answer, how: How, text: Text): readonly string[] {
  const { command, weather, weatherLacks, limits, decision, at, numbers } = answer
  if (unjudged.has(command)) return []
  const { frame } = text
  const invented = answer.invented || flag(row(numbers, 'site') ?? {}, 'invented') === true
  const parts: string[] = []
  if (weather !== null) {
    const issuedAt = fromIso(weather.issuedAt)
    parts.push(attribution(weather.source, text))
    if (weather.sample && weather.source !== 'sample') parts.push(frame.sample)
    if (issuedAt !== null) parts.push(`${frame.issued(clock(issuedAt, at, how))}${weather.stale ? `, ${frame.stale}` : ''}`)
  }
  if (weather === null && forecasting.has(command)) parts.push(weatherLacks === null ? frame.noForecast : frame.forecastLacks(weatherLacks))
  if (invented) parts.push(frame.invented)
  parts.push(frame.limits(escapeText(limits.id, 40), limits.version))
  if (decision !== null) parts.push(frame.decision(escapeText(decision, 60)))
  return [parts.join(' · ')]
}

/** Each source is named as its licence asks. */
function attribution(source: string, text: Text): string {
  const { frame } = text
  return Object.hasOwn(frame.attribution, source) ? (frame.attribution[source] as string) : frame.from(escapeText(source, 40))
}

/** Always last: ids that the author may take back. */
function loggedNote({ logged, undoUntil, unlogged }: Answer, text: Text): readonly string[] {
  if (logged.length === 0) return unlogged ? [text.refusal.nothingLogged] : []
  const ids = clip(logged.map((id) => escapeText(id, 60)).join(' '), 400)
  const said = text.frame.logged(ids)
  return [undoUntil === null ? said : `${said} · ${text.frame.undo(ids)}`]
}
