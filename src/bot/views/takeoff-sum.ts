import type { Addend, Factor, TakeoffLine, TakeoffUnit } from '../../core/sheets/takeoff/line.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import { numeral } from './number.js'

/** What is shown in the person's own units; the rest of a sum is in metric ones, as the limits sheet has it. */
const converted: readonly TakeoffUnit[] = ['m', 'm2', 'mm']

function shown({ value, unit }: Pick<Factor, 'value' | 'unit'>, how: How, { takeoff }: Text): string {
  if (unit === 'piece') return numeral(value, 2, how)
  if (converted.includes(unit)) return amount(value, unit, how)
  return `${numeral(value, unit === 'kN/kg' ? 6 : 2, how)}\u00a0${takeoff.units[unit]}`
}

/** A sum as it is done by hand: parts from the left, waste, rounding. What is a plain count has none. */
export function sumWords(line: TakeoffLine, how: How, text: Text): string {
  const { item, sum, wastePct, bound, value } = line
  if (sum.length === 1 && sum[0]?.factors.length === 1) return ''
  const parts = sum.map((part) => partWords(item, part, how, text))
  const waste = wastePct === 0 ? [] : [text.takeoff.waste(`${numeral(wastePct, 1, how)}\u00a0%`)]
  const cut = bound === null ? [] : [text.takeoff.asCut(numeral(value, 0, how), numeral(bound, 0, how))]
  const up = bound === null && line.whole ? [text.takeoff.roundedUp] : []
  return [[parts.join(' + '), ...waste].join(' '), ...cut, ...up].join('; ')
}

function partWords(item: TakeoffLine['item'], { name, factors }: Addend, how: How, text: Text): string {
  const product = factors.map((factor) => `${factor.by === '' ? '' : `${factor.by} `}${shown(factor, how, text)}`).join(' ')
  if (name === null) return product
  return `${nameOf(item, name, text)}${text.frame.colon}${product}`
}

function nameOf(item: TakeoffLine['item'], name: string, { takeoff }: Text): string {
  if (item === 'kits') return takeoff.zone(name)
  if (item === 'fasteners') return takeoff.base(Number(name))
  return name === 'rolls' || name === 'kits' ? takeoff.items[name] : name
}

/** Amount of a line with its unit. */
export function lineAmount({ value, unit }: Pick<TakeoffLine, 'value' | 'unit'>, how: How, text: Text): string {
  return shown({ value, unit }, how, text)
}

/** So many packs of so much: "2 × 250". Single pieces need no pack. */
export function packWords({ sale }: TakeoffLine, how: How, text: Text): string {
  if (sale === null) return ''
  if (sale.of === 1) return numeral(sale.packs, 0, how)
  return `${numeral(sale.packs, 0, how)} × ${shown({ value: sale.of, unit: sale.unit }, how, text)}`
}
