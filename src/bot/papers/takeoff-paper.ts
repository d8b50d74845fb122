import { type Remaining, remaining } from '../../core/sheets/remaining.js'
import type { Takeoff } from '../../core/sheets/takeoff.js'
import { round6 } from '../../core/units.js'
import type { Text } from '../text/text.js'
import type { How } from '../views/how.js'
import { lineAmount, packWords, sumWords } from '../views/takeoff-sum.js'
import type { DocumentPart, TableData } from './document.js'
import type { Paper } from './paper.js'

export interface TakeoffOn {
  readonly takeoff: Takeoff
  readonly roofM2: number
  /** Logged as laid so far. */
  readonly laidM2: number
}

/** The takeoff for a spreadsheet: numbers as numbers in metric units, sums in words. */
export function takeoffTable({ takeoff, roofM2, laidM2 }: TakeoffOn, how: How, text: Text): TableData {
  const { heads, items, units } = text.takeoff
  const left = leftOf(remaining(takeoff, roofM2, laidM2))
  return {
    head: [heads.item, heads.amount, heads.unit, heads.packs, heads.pack, heads.left, heads.sum],
    rows: Object.values(takeoff).map((line) => [
      items[line.item],
      round6(line.value),
      units[line.unit],
      line.sale?.packs ?? null,
      line.sale?.of ?? null,
      left.get(line.item)?.value ?? null,
      sumWords(line, how, text)
    ])
  }
}

/** The takeoff as parts of a document: a table, what it leaves to the engineer, and the load against a limit that nobody said. */
export function takeoffParts({ takeoff, roofM2, laidM2 }: TakeoffOn, how: How, text: Text): readonly DocumentPart<Paper>[] {
  const { heads, items, limitNotSaid, engineers, table } = text.takeoff
  const left = leftOf(remaining(takeoff, roofM2, laidM2))
  const rows = Object.values(takeoff).map((line) => {
    const rest = left.get(line.item)
    return [
      items[line.item],
      lineAmount(line, how, text),
      packWords(line, how, text),
      rest === undefined ? '' : lineAmount(rest, how, text),
      sumWords(line, how, text)
    ]
  })
  return [
    { kind: 'heading', text: table },
    { kind: 'table', head: [heads.item, heads.amount, heads.packs, heads.left, heads.sum], rows, shares: [18, 12, 12, 12, 46] },
    { kind: 'words', text: `${limitNotSaid} ${engineers}` }
  ]
}

function leftOf(rest: readonly Remaining[]): ReadonlyMap<string, Remaining> {
  return new Map(rest.map((each) => [each.item, each]))
}
