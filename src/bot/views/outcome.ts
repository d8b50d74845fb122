import type { Finding } from '../../core/finding.js'
import type { Outcome } from '../../core/outcome.js'
import type { Text } from '../text/text.js'

/** One shape for each outcome, plain characters: no colour carries meaning. */
export const shapes: Readonly<Record<Outcome, string>> = { go: '✓', caution: '△', unknown: '?', 'no-go': '✕' }

/** The first line: shape, outcome, what it is about; unknown says what would make it known. */
export function headline(outcome: Outcome | null, about: string, findings: readonly Finding[], text: Text): string {
  if (outcome === null) return capital(about)
  const line = `${shapes[outcome]} ${text.outcomes[outcome]}${text.frame.colon}${about}`
  return outcome === 'unknown' ? `${line} — ${missingPart(findings, text)}` : line
}

/** A reading to take; or, when no reading is missing, the one thing to do or how many there are to state. */
function missingPart(findings: readonly Finding[], text: Text): string {
  const fixes = findings.flatMap(({ outcome, fix }) => (outcome === 'unknown' ? [fix] : []))
  const toRead = fixes.length === 0 || fixes.some((fix) => fix === null || fix.startsWith('read:'))
  if (toRead) return text.decision.takeReading
  const [only] = fixes
  return fixes.length === 1 && only ? text.fixes[only] : text.decision.toState(fixes.length)
}

function capital(line: string): string {
  return line.charAt(0).toUpperCase() + line.slice(1)
}
