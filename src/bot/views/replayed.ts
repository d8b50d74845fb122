import type { Activity, Finding } from '../../core/finding.js'
import { fromIso, localDate } from '../../core/instant.js'
import type { Entry } from '../../core/log/entry.js'
import type { Outcome } from '../../core/outcome.js'
import type { FindingId } from '../answer.js'
import type { Replayed } from '../replay.js'
import type { Text } from '../text/text.js'
import { clock, dateOf } from './clock.js'
import { escapeText } from './escape.js'
import { findingWords } from './finding.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'

/** What a decision entry holds, as far as it is shown. */
interface Shown {
  readonly activity: Activity
  readonly outcome: Outcome
  readonly findings: readonly (Omit<Finding<FindingId>, 'at'> & { readonly at: string | null })[]
  readonly limits: { readonly id: string; readonly version: number; readonly sha256: string }
  readonly weather: { readonly source: string; readonly issuedAt: string; readonly sha256: string } | null
}

/**
 * What an inspector can check of a decision that was taken again: the verdict; what was decided and when; each finding with its value,
 * its limit, where the value came from; the sheet of limits and the forecast by their hashes; the engines.
 */
export function replayLines({ id, same, outcome, engine, recordedEngine, differs }: Replayed, entry: Entry, how: How, text: Text): readonly string[] {
  const shown = entry.data as unknown as Shown
  const { replay, outcomesWithin, frame } = text
  const now = outcome === null ? null : outcomesWithin[outcome]
  const verdict = same && now !== null ? replay.same(now) : replay.other(now, differs.join(', ') || 'outcome')
  const at = fromIso(entry.at)
  const when = at === null ? entry.at : `${dateOf(localDate(at, how.zone), how)} ${clock(at, at, how)}`
  const { limits, weather } = shown
  const issuedAt = weather === null ? null : fromIso(weather.issuedAt)
  const forecast =
    weather === null || at === null || issuedAt === null
      ? []
      : [`${escapeText(weather.source, 60)}, ${frame.issued(clock(issuedAt, at, how))}, ${weather.sha256}`]
  return [
    `${id}${frame.colon}${verdict}`,
    replay.decided(outcomesWithin[shown.outcome], text.activities[shown.activity], when),
    replay.from,
    // Being on the roof and laying are held to the same wind: said once.
    ...new Set(shown.findings.map((finding) => findingShown(finding, how, text))),
    `${frame.limits(escapeText(limits.id, 60), limits.version)}, ${limits.sha256}`,
    ...forecast,
    replay.engine(engine, recordedEngine)
  ]
}

function findingShown({ at, ...finding }: Shown['findings'][number], how: How, text: Text): string {
  const when = at === null ? null : fromIso(at)
  const known = finding.value !== null && when !== null && finding.origin !== null
  const origin =
    known && (finding.origin === 'reading' || finding.origin === 'statement')
      ? ` (${text.record.types[finding.origin]}, ${clock(when, when, how)})`
      : ''
  return `${shapes[finding.outcome]} ${findingWords({ ...finding, at: when, ease: null }, how, text)}${origin}`
}
