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

/** A reading to take, or, when all that is missing is a person's word, how many things to state. */
function missingPart(findings: readonly Finding[], text: Text): string {
  const unknown = findings.filter(({ outcome }) => outcome === 'unknown')
  const onlyWords = unknown.length > 0 && unknown.every(({ group, fix }) => group === 'checklist' || fix?.startsWith('state:'))
  return onlyWords ? text.decision.toState(unknown.length) : text.decision.takeReading
}

export function capital(line: string): string {
  return line.charAt(0).toUpperCase() + line.slice(1)
}
