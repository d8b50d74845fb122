import type { Because, Finding } from '../../core/finding.js'
import type { FindingId } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount, amountPair } from './amount.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'

type Said = Finding<FindingId>

/** A number alone would mislead here: the words come first. */
const inWords: ReadonlySet<FindingId> = new Set(['coupon', 'ice'])
/** A value on the bound is on its worse side. */
const strict: ReadonlySet<FindingId> = new Set(['rain-coming'])
/** Which side the bound is on, where value and bound are equal. */
const floors: ReadonlySet<FindingId> = new Set(['air-temperature', 'dew-margin', 'daylight', 'cold', 'strip-land', 'coupon-width'])
const twoSided: ReadonlySet<FindingId> = new Set(['kit-temperature', 'substrate-temperature', 'strip-gap'])

/** One finding in one line: "✕ dew margin 2.4 °C, at least 3 °C → wait …". */
export function findingLine(finding: Said, how: How, text: Text): string {
  const fix = finding.fix === null || finding.outcome === 'go' ? '' : ` → ${text.fixes[finding.fix]}`
  return `${shapes[finding.outcome]} ${findingWords(finding, how, text)}${fix}`
}

/** The finding without its shape and fix. */
export function findingWords(finding: Said, how: How, text: Text): string {
  const { rule, outcome, value, stale, limit, because } = finding
  if (because !== undefined) return becauseWords(because, how, text)
  const { name, is } = text.findings[rule]
  const words = is[outcome]
  if (typeof value !== 'number') return stale ? `${words} (${text.decision.tooOld})` : words
  if (rule === 'ice' && outcome !== 'go') return `${words}, ${measure(value, finding.unit, how, text)}`
  if (inWords.has(rule) && rule !== 'ice') return words
  if (limit === null && outcome === 'no-go') return rule === 'open-voids' ? `${words}${text.frame.colon}${measure(value, null, how, text)}` : words
  const [shown, bound] = limit === null ? [measure(value, finding.unit, how, text), null] : amountPair(value, limit, finding.unit, how)
  return `${name} ${shown}${ofEstimate(finding, text)}${bound === null ? '' : `, ${boundWords(finding, bound, text)}`}`
}

/** The measure that the outcome comes from, in place of the one that alone would be better. */
function becauseWords(because: Because, how: How, text: Text): string {
  const [shown, bound] = amountPair(because.value, because.limit, because.unit, how)
  const side = because.margin < 0 ? 'caution' : 'unknown'
  return `${text.decision.numbers.wbgtC} ${shown}${ofEstimate({ ...because, outcome: side }, text)}, ${text.decision.atMost(bound)}`
}

function measure(value: number, unit: string | null, how: How, text: Text): string {
  return unit === 'd' ? text.decision.days(value) : amount(value, unit, how)
}

/** "(forecast, too close to call)": an estimate says that it is one. */
function ofEstimate({ origin, outcome, spread }: Pick<Said, 'origin' | 'outcome' | 'spread'>, text: Text): string {
  if (origin !== 'forecast' && origin !== 'model') return ''
  if (spread === 0) return ''
  const words = origin === 'forecast' ? text.decision.forecast : text.decision.model
  return outcome === 'unknown' ? ` (${words}, ${text.decision.tooClose})` : ` (${words})`
}

function boundWords(finding: Said, bound: string, text: Text): string {
  const { decision } = text
  if (strict.has(finding.rule)) return decision.below(bound)
  const side = sideOf(finding)
  if (side === null) return decision.limit(bound)
  return side === 'floor' ? decision.atLeast(bound) : decision.atMost(bound)
}

/** The margin is positive inside, so value and margin tell on which side the bound lies. */
function sideOf({ rule, value, limit, margin }: Said): 'floor' | 'ceiling' | null {
  if (typeof value !== 'number' || limit === null || margin === null) return null
  const distance = value - limit
  if (Math.abs(distance) < 1e-9) return twoSided.has(rule) ? null : floors.has(rule) ? 'floor' : 'ceiling'
  return Math.sign(distance) === Math.sign(margin) || margin === 0 ? 'floor' : 'ceiling'
}
