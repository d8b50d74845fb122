import type { Finding, Group } from '../../core/finding.js'
import type { Answer, FindingId, Outcomes } from '../answer.js'
import type { Sayable, Text } from '../text/text.js'
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

/** The worst few, each with what to do; then what is missing, as the words to say; when all is go, the tightest. Then when it changes. */
export function reasonLines({ findings, at, changesAt }: Answer, how: How, text: Text): readonly string[] {
  const bad = badOnes(findings)
  const { shown, unsaid } = split(bad)
  const lines = shown.map((finding) => findingLine(finding, how, text))
  if (unsaid.length > 0) lines.push(text.decision.toSayStill(wordsToSay(unsaid, text)))
  const more = bad.length - shown.length - unsaid.length
  if (more > 0) lines.push(text.frame.more(more))
  const tight = findings.find(({ outcome, margin }) => outcome === 'go' && margin !== null)
  if (bad.length === 0 && tight !== undefined) lines.push(text.decision.tightest(findingWords(tight, how, text)))
  if (changesAt !== null) lines.push(text.decision.changes(clock(changesAt, at, how)))
  return lines
}

/** What did not find room among the reasons, each in a line of its own; what is to be said stands in its line already. */
export function restLines({ findings }: Answer, how: How, text: Text): readonly string[] {
  const bad = badOnes(findings)
  const { shown, unsaid } = split(bad)
  return bad.filter((finding) => !shown.includes(finding) && !unsaid.includes(finding)).map((finding) => findingLine(finding, how, text))
}

/** A few missing things stand as reasons; more of them are one line of words to say, so that the answer stays short. */
function split(bad: readonly Said[]): { shown: readonly Said[]; unsaid: readonly Said[] } {
  const missing = bad.filter(({ outcome, fix }) => outcome === 'unknown' && fix !== null)
  if (missing.length <= 2) return { shown: bad.slice(0, mostReasons), unsaid: [] }
  return { shown: bad.filter((finding) => !missing.includes(finding)).slice(0, mostReasons), unsaid: missing }
}

/** In the order of the groups: readings first, as they take longest. */
function wordsToSay(missing: readonly Said[], { toSay }: Text): string {
  const order = (finding: Said) => (finding.fix?.startsWith('read:') ? 0 : 1)
  const words = [...missing].sort((a, b) => order(a) - order(b)).flatMap(({ fix }) => (fix !== null && fix in toSay ? [toSay[fix as Sayable]] : []))
  return [...new Set(words)].join(' · ')
}

/** What takes people off the roof stands before any paper that is missing, so that it is never among “and 7 more”. */
function badOnes(findings: readonly Said[]): readonly Said[] {
  const bad = once(findings.filter(({ outcome }) => outcome !== 'go'))
  const offTheRoof = ({ group, outcome }: Said) => group === 'people' && outcome === 'no-go'
  return [...bad.filter(offTheRoof), ...bad.filter((finding) => !offTheRoof(finding))]
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
