import { errorCodes } from '../../../src/bot/answer.js'
import { readWords } from '../../../src/bot/words/read.js'
import type { Reading } from '../../../src/bot/words/said.js'
import { forms, type Item } from './items.js'
import type { Message } from './messages.js'
import { type UnitOf, unitsIn, unitsOf, worth } from './units.js'

/** 2026-05-04 10:00 in Berlin. */
const now = 1_777_881_600

function at(value: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((from, key) => (from === null || typeof from !== 'object' ? undefined : (from as Record<string, unknown>)[key]), value)
}

/** Six decimals are kept; the rest is what doubles lose. */
function near(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-6 + 1e-11 * Math.abs(b)
}

function same(read: unknown, wanted: number | readonly number[]): boolean {
  if (typeof wanted === 'number') return typeof read === 'number' && near(read, wanted)
  return Array.isArray(read) && read.length === wanted.length && wanted.every((one, i) => near(read[i] as number, one))
}

function read({ text, units }: Message): Reading {
  return readWords(text, { units, zone: 'Europe/Berlin', now })
}

/** What is wrong with how a whole message was read; null: nothing. */
export function faultOf(message: Message): string | null {
  const reading = read(message)
  if (!reading.ok) return `${JSON.stringify(message)} was refused: ${JSON.stringify(reading.refusal)}`
  for (const [path, wanted] of Object.entries(message.expected)) {
    const got = at(reading.said, path)
    if (!same(got, wanted)) return `${JSON.stringify(message)}: ${path} is ${JSON.stringify(got)}, not ${JSON.stringify(wanted)}`
  }
  const extra = items.find(({ path }) => message.expected[path] === undefined && typeof at(reading.said, path) === 'number')
  return extra === undefined ? null : `${JSON.stringify(message)}: ${extra.path} was never said`
}

const byPath = new Map<string, Item>(forms.flatMap(({ needed, any }) => [...needed, ...any]).map((item) => [item.path, item]))
const items = [...byPath.values()].filter(({ path }) => path !== 'kit.data.isoC' && path !== 'kit.data.resinC')
const vulgar: Readonly<Record<string, number>> = { '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅛': 1 / 8, '⅝': 5 / 8 }
const numeral =
  /(?<sign>[-−]?)(?:(?:(?<whole>\d+)(?:[ \u00a0\u202f]{1,3}|-))?(?<above>\d+)[/⁄](?<below>\d+)|(?:(?<units>\d+)(?:[ \u00a0\u202f]{1,3}|-)?)?(?<glyph>[½¼¾⅛⅝])|(?<plain>\d+(?:[.,]\d+)?))/gu
const spelledUnits = Object.entries(unitsOf)
  .flatMap(([name, { spelled }]) => spelled.map((one) => [one.replace(/^[°º] ?/, ''), name] as const))
  .concat(
    Object.entries({
      "''": 'in',
      inch: 'in',
      po: 'in',
      pulgada: 'in',
      foot: 'ft',
      pie: 'ft',
      pied: 'ft',
      pi: 'ft',
      knot: 'kn',
      kts: 'kn',
      noeud: 'kn',
      noeuds: 'kn',
      nœud: 'kn',
      nœuds: 'kn',
      'mi/h': 'mph',
      kph: 'km/h',
      mins: 'min',
      seg: 's',
      sf: 'ft2',
      'sq ft': 'ft2',
      'm^2': 'm2',
      'ft^2': 'ft2',
      'mm^2': 'mm2',
      volt: 'V',
      watt: 'W',
      watts: 'W',
      newton: 'N',
      newtons: 'N',
      centigrade: 'C',
      centigrados: 'C',
      centígrados: 'C',
      mils: 'mil',
      'per cent': '%',
      'miles an hour': 'mph',
      meter: 'm',
      metre: 'm',
      metres: 'm',
      metro: 'm',
      mètre: 'm',
      millimetres: 'mm',
      milimetros: 'mm',
      centimeters: 'cm',
      centimetros: 'cm',
      'square metres': 'm2',
      'metres carres': 'm2',
      'square foot': 'ft2',
      'pieds carres': 'ft2',
      second: 's',
      segundo: 's',
      seconde: 's',
      minute: 'min',
      minuto: 'min',
      pound: 'lbf',
      libra: 'lbf',
      livre: 'lbf'
    })
  )
  .sort(([a], [b]) => b.length - a.length)

/** The unit that stands behind a number, by a reader of its own; null: none. */
function unitBehind(text: string, from: number): string | null {
  const rest = text
    .slice(from)
    .replace(/^[ \t\u00a0\u2009\u202f]{0,3}(?:[°º˚]|(?:deg(?:ree)?s?|grados?|degr[eé]s?)(?![\p{L}\p{M}\p{N}]))?[ \t\u00a0]{0,3}/iu, '')
  if (/^['’‘′]{2}/.test(rest)) return 'in'
  const lower = rest.toLowerCase().replace(/(?<=\p{L}) {2,3}(?=\p{L})/gu, ' ')
  const found = spelledUnits.find(([one, name]) => {
    if (!lower.startsWith(one.toLowerCase())) return false
    // A unit ends where the word ends; only feet may have their inches right behind.
    const ends = !/[\p{L}\p{N}]$/u.test(one) || !/^[\p{L}\p{M}\p{N}]/u.test(rest.slice(one.length))
    return ends || (name === 'ft' && /^\d/.test(rest.slice(one.length)))
  })
  return found?.[1] ?? null
}

/** Every number that stands in a text, with the unit behind it: what may have been meant. `2 ½ in` may be one number or two. */
function numeralsIn(text: string): readonly Numeral[] {
  return [...text.matchAll(numeral)].flatMap((match): readonly Numeral[] => {
    const { sign, whole, above, below, units: before, glyph, plain } = match.groups as Readonly<Record<string, string | undefined>>
    const unit = unitBehind(text, match.index + match[0].length)
    const signed = (value: number) => (sign === '' ? value : -value)
    if (plain !== undefined) return [{ value: signed(Number(plain.replace(',', '.'))), unit }]
    const part = glyph === undefined ? Number(above) / Number(below) : (vulgar[glyph] ?? 0)
    const first = whole ?? before
    if (first === undefined) return [{ value: signed(part), unit }]
    const units = Number(first)
    return [
      { value: signed(units + part), unit },
      { value: signed(units), unit: null },
      { value: part, unit }
    ]
  })
}

interface Numeral {
  readonly value: number
  readonly unit: string | null
}

/** Whether a number that was read follows from one that is typed, in the unit that stands there or the person's own. */
function explained(path: string, value: number, message: Message): boolean {
  const item = byPath.get(path) as Item
  const { scale } = unitsOf[item.unit] as UnitOf
  const typed = numeralsIn(message.text)
  const of = (one: number, unit: string | null): number => {
    const known = unit !== null && unitsIn(scale).includes(unit) ? unit : item.bare[message.units]
    return worth(one, known, item.unit)
  }
  if (typed.some((one) => near(of(one.value, one.unit), value) || near(of(Math.abs(one.value), one.unit), value))) return true
  // A bare section is a wire gauge where gauges are at home: ASTM B258, 0.005 in × 92^((36 − n) / 39) across.
  const gauged = (gauge: number) => (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2
  if (scale === 'wire' && typed.some((one) => near(gauged(one.value), value))) return true
  // Feet and inches, and a whole with a fraction behind it, in any pair that stands there.
  return typed.some((one, i) =>
    typed.slice(i + 1).some(({ value: inch }) => {
      const sign = one.value < 0 ? -1 : 1
      return scale === 'length' && near(worth(one.value + (sign * Math.abs(inch)) / 12, 'ft', item.unit), value)
    })
  )
}

/** What is wrong with how anything was read: a refusal without a code, a number out of range or out of nowhere. */
export function wildFaultOf(message: Message): string | null {
  const reading = read(message)
  if (!reading.ok) return errorCodes.includes(reading.refusal.code) ? null : `${JSON.stringify(message)}: ${reading.refusal.code}`
  for (const { path, min, max } of items) {
    const value = at(reading.said, path)
    if (typeof value !== 'number' || (path === 'seal.openEdgeM' && value === 0)) continue
    if (!(value >= Math.min(0, min) && value <= max)) return `${JSON.stringify(message)}: ${path} is ${value}`
    if (!explained(path, value, message)) return `${JSON.stringify(message)}: ${path} is ${value}, which nobody typed`
  }
  return null
}
