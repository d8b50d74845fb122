import fc from 'fast-check'
import type { Units } from '../../../src/bot/answer.js'
import type { Item } from './items.js'
import { type UnitOf, unitsIn, unitsOf, worth } from './units.js'

/** A number as typed with its unit, and what it is worth in the JSON unit. */
export interface Typed {
  readonly text: string
  readonly value: number
  /** The unit as spelled; empty for a bare number. */
  readonly unit: string
}

const sixteenths = 16
const vulgar: readonly (readonly [string, number])[] = [
  ['½', 1 / 2],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
  ['⅛', 1 / 8],
  ['⅝', 5 / 8]
]

/** k / 10^digits as people write it. */
function decimal(k: number, digits: number, separator: string): string {
  const sign = k < 0 ? '-' : ''
  const text = String(Math.abs(k)).padStart(digits + 1, '0')
  return digits === 0 ? `${sign}${text}` : `${sign}${text.slice(0, -digits)}${separator}${text.slice(-digits)}`
}

interface Draw {
  readonly at: number
  readonly digits: number
  readonly separator: string
  readonly spelling: number
  readonly unit: number
  readonly gap: string
  readonly style: number
  readonly part: number
}

/** Three digits behind a separator would be ambiguous by outside contract §5: never drawn here. */
const draw: fc.Arbitrary<Draw> = fc.record({
  at: fc.integer({ min: 0, max: 1_000_000 }),
  digits: fc.constantFrom(0, 0, 0, 1, 1, 2, 4),
  separator: fc.constantFrom('.', '.', ','),
  spelling: fc.nat(20),
  unit: fc.nat(20),
  gap: fc.constantFrom('', ' ', '\u00a0', '  '),
  style: fc.nat(9),
  part: fc.nat(10_000)
})

/** A number of an item inside its range, bare or in any unit of its kind, as decimals, fractions or feet and inches. */
export function numeralOf(item: Item, units: Units): fc.Arbitrary<Typed> {
  const { scale } = unitsOf[item.unit] as UnitOf
  const names = item.unitNeeded ?? ['', '', ...unitsIn(scale)]
  return draw.map((drawn) => {
    const name = scale === 'count' ? '' : (names[drawn.unit % names.length] as string)
    const unit = name === '' ? item.bare[units] : name
    return fractional(item, unit, name, drawn) ?? plain(item, unit, name, drawn)
  })
}

function spelledOf(name: string, drawn: Draw): { readonly unit: string; readonly tail: string } {
  if (name === '') return { unit: '', tail: '' }
  const { spelled } = unitsOf[name] as UnitOf
  const unit = spelled[drawn.spelling % spelled.length] as string
  return { unit, tail: `${drawn.gap}${unit}` }
}

function plain(item: Item, unit: string, name: string, drawn: Draw): Typed {
  const low = worth(item.min, item.unit, unit)
  const high = worth(item.max, item.unit, unit)
  const fits = (digits: number) => Math.floor(high * 10 ** digits - 1e-6) >= Math.ceil(low * 10 ** digits + 1e-6)
  const digits = unit === 'none' ? 0 : fits(drawn.digits) ? drawn.digits : 4
  const [first, last] = [Math.ceil(low * 10 ** digits - 1e-9 + 1e-6), Math.floor(high * 10 ** digits - 1e-6)]
  const k = Math.min(last, first + Math.round(((last - first) * drawn.at) / 1_000_000))
  const { unit: spelled, tail } = spelledOf(name, drawn)
  return { text: `${decimal(k, digits, drawn.separator)}${tail}`, value: worth(k / 10 ** digits, unit, item.unit), unit: spelled }
}

/** `1 1/2 in`, `½"`, `6' 6 1/2"`; null where the drawn style is another, or it falls outside the range. */
function fractional(item: Item, unit: string, name: string, drawn: Draw): Typed | null {
  if (unitsOf[item.unit]?.scale !== 'length' || drawn.style > 3) return null
  const typed = unit === 'in' ? inches(name, drawn) : unit === 'ft' && name !== '' ? feet(drawn) : null
  if (typed === null) return null
  const value = worth(typed.value, unit, item.unit)
  return value > item.min && value < item.max ? { ...typed, value } : null
}

function part(drawn: Draw): { readonly text: string; readonly value: number; readonly glued: boolean } {
  if (drawn.style === 0) {
    const [text, value] = vulgar[drawn.part % vulgar.length] as (typeof vulgar)[number]
    return { text, value, glued: true }
  }
  const above = 1 + (drawn.part % (sixteenths - 1))
  return { text: `${above}/${sixteenths}`, value: above / sixteenths, glued: false }
}

function inches(name: string, drawn: Draw): Typed {
  const { text, value, glued } = part(drawn)
  const whole = drawn.part % 12
  const { unit, tail } = spelledOf(name, drawn)
  if (whole === 0) return { text: `${text}${tail}`, value, unit }
  const between = glued ? '' : drawn.style === 1 ? ' ' : '-'
  return { text: `${whole}${between}${text}${tail}`, value: whole + value, unit }
}

function feet(drawn: Draw): Typed {
  const whole = 1 + (drawn.part % 30)
  const inch = drawn.at % 12
  const marks = [
    ["'", '"', ''],
    ['′', '″', ' '],
    ['ft', 'in', ' '],
    [' ft', ' in', ' '],
    ["'", '"', '-']
  ] as const
  const [foot, inchMark, between] = marks[drawn.spelling % marks.length] as (typeof marks)[number]
  const half = drawn.style === 2 ? { text: ' 1/2', value: 0.5 } : { text: '', value: 0 }
  return { text: `${whole}${foot}${between}${inch}${half.text}${inchMark}`, value: whole + (inch + half.value) / 12, unit: 'ft' }
}
