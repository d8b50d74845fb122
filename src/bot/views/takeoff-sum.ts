import { largestFirstMm } from '../../core/sheets/fasteners.js'
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
  if (sum.length === 1 && sum[0]?.factors.length === 1 && line.spacingMm === null) return ''
  const parts = sum.map((part) => partWords(item, part, how, text))
  const waste = wastePct === 0 ? [] : [text.takeoff.waste(`${numeral(wastePct, 1, how)}\u00a0%`)]
  const cut = bound === null ? [] : [text.takeoff.asCut(numeral(value, 0, how), numeral(bound, 0, how))]
  const spaced =
    line.spacingMm === null ? [] : [text.takeoff.spaced(amount(line.spacingMm, 'mm', how), amount(largestFirstMm(line.spacingMm), 'mm', how))]
  const up = line.spacingMm === null && bound === null && line.whole ? [text.takeoff.roundedUp] : []
  const product = parts.length > 1 && wastePct !== 0 ? `(${parts.join(' + ')})` : parts.join(' + ')
  return [[product, ...waste].join(' '), ...spaced, ...cut, ...up].join('; ')
}

function partWords(item: TakeoffLine['item'], { name, factors }: Addend, how: How, text: Text): string {
  const product = factors.map((factor) => `${factor.by === '' ? '' : `${factor.by} `}${shown(factor, how, text)}`).join(' ')
  if (name === null) return product
  return `${nameOf(item, name, how, text)}${text.frame.colon}${product}`
}

function nameOf(item: TakeoffLine['item'], name: string, how: How, { takeoff }: Text): string {
  if (item === 'kits') return takeoff.zone(name)
  if (item === 'fasteners') return baseOf(name, how, takeoff)
  return name === 'rolls' || name === 'kits' ? takeoff.items[name] : name
}

function baseOf(name: string, how: How, words: Text['takeoff']): string {
  const [ring, lengthM] = name.split(' ')
  const base = words.base(Number(ring))
  return lengthM === undefined ? base : `${base} ${amount(Number(lengthM), 'm', how)}`
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
