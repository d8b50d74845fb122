import type { Finding, Group } from '../../core/finding.js'
import type { Answer, FindingId, Outcomes } from '../answer.js'
import type { Text } from '../text/text.js'
import { clock } from './clock.js'
import { findingLine, findingWords } from './finding.js'
import type { How } from './how.js'

type Said = Finding<FindingId>

const groups = ['conditions', 'checklist', 'people'] as const
const mostReasons = 3

/** "conditions go · checklist: 5 to state · people go". */
export function groupsLine(outcomes: Outcomes, findings: readonly Said[], text: Text): string {
  return groups.map((group) => groupWords(group, outcomes, findings, text)).join(' · ')
}

function groupWords(group: Group, outcomes: Outcomes, findings: readonly Said[], text: Text): string {
  const outcome = outcomes[group]
  const name = text.groups[group]
  const unknown = once(findings.filter((finding) => finding.group === group && finding.outcome === 'unknown')).length
  const said = text.decision.group(name, text.outcomesWithin[outcome])
  if (unknown === 0) return said
  const left = group === 'checklist' ? text.decision.toState(unknown) : text.decision.toRead(unknown)
  return outcome === 'unknown' ? `${name}${text.frame.colon}${left}` : `${said}, ${left}`
}

/** The worst few, each with what to do; when all is go, the one that is tightest. Then when it changes. */
export function reasonLines({ findings, at, changesAt }: Answer, how: How, text: Text): readonly string[] {
  const bad = badOnes(findings)
  const lines = bad.slice(0, mostReasons).map((finding) => findingLine(finding, how, text))
  if (bad.length > mostReasons) lines.push(text.frame.more(bad.length - mostReasons))
  const tight = findings.find(({ outcome, margin }) => outcome === 'go' && margin !== null)
  if (bad.length === 0 && tight !== undefined) lines.push(text.decision.tightest(findingWords(tight, how, text)))
  if (changesAt !== null) lines.push(text.decision.changes(clock(changesAt, at, how)))
  return lines
}

/** What did not find room among the reasons. */
export function restLines({ findings }: Answer, how: How, text: Text): readonly string[] {
  return badOnes(findings)
    .slice(mostReasons)
    .map((finding) => findingLine(finding, how, text))
}

function badOnes(findings: readonly Said[]): readonly Said[] {
  return once(findings.filter(({ outcome }) => outcome !== 'go'))
}

/** The same rule with the same result stands once, though two activities carry it. */
function once(findings: readonly Said[]): readonly Said[] {
  const seen = new Set<string>()
  return findings.filter(({ rule, outcome, value, limit }) => {
    const key = `${rule} ${outcome} ${value} ${limit}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}
