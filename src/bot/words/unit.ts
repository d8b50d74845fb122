import type { Unit } from '../../core/units.js'
import { fold } from './fold.js'
import { matchAt } from './match.js'

/** How units are spelled, folded; `²` and `^2` count as `2`. No `sec` for seconds: it is French for dry. */
const spellings: Readonly<Record<Unit, string>> = {
  C: 'c celsius',
  F: 'f fahrenheit',
  K: '',
  deltaF: '',
  '%': 'pct percent',
  'km/h': 'km/h kmh kph',
  'm/s': 'm/s',
  mph: 'mph mi/h',
  kn: 'kn kt kts knots knot noeud noeuds nœud nœuds',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in inch inches pulgada pulgadas pouces po',
  ft: 'ft foot feet pie pies pied pieds pi',
  mil: 'mil mils',
  m2: 'm2',
  ft2: 'ft2 sqft sf sq_ft',
  mm2: 'mm2',
  s: 's seg',
  min: 'min mins',
  h: 'h',
  'm/min': 'm/min',
  'ft/min': 'ft/min fpm',
  V: 'v volt volts',
  W: 'w watt watts',
  'W/m2': 'w/m2',
  N: 'n newton newtons',
  lbf: 'lbf',
  AWG: 'awg'
}

const units = new Map(
  Object.entries(spellings).flatMap(([unit, words]) =>
    words
      .split(' ')
      .filter(Boolean)
      .map((word) => [word.replace('_', ' '), unit as Unit] as const)
  )
)
const longestFirst = [...units.keys()].sort((a, b) => b.length - a.length).map((word) => word.replace('2', '(?:2|²|\\^2)'))
/** A unit ends where the word ends; only feet may have their inches right behind (`6ft6in`). */
const wordAt = new RegExp(`(?:(?:${longestFirst.join('|')})(?![\\p{L}\\p{M}\\p{N}])|ft(?=\\d))`, 'iuy')
const spaceAt = /[ \t\u00a0\u2009\u202f]{0,3}/y
const degreeAt = /[°º˚]/y
const inchMarkAt = /["”“″]|['’‘′]{2}/y
const footMarkAt = /['’‘′]/y

/** Every unit spelling, folded: no vocabulary may use one as a word. */
export const unitWords: ReadonlySet<string> = new Set(units.keys())

/** A number as typed, with its unit if it had one. */
export interface Quantity {
  readonly value: number
  readonly unit: Unit | null
  /** A degree sign without C or F: some temperature in the person's scale. */
  readonly degree: boolean
  readonly raw: string
}

export interface UnitRead {
  /** Null: none, or a degree sign alone. */
  readonly unit: Unit | null
  readonly degree: boolean
  readonly end: number
}

function wordUnit(text: string, pos: number): UnitRead | null {
  const word = matchAt(wordAt, text, pos)?.[0]
  const unit = word === undefined ? undefined : units.get(fold(word).replace(/²|\^2/, '2'))
  return word === undefined || unit === undefined ? null : { unit, degree: false, end: pos + word.length }
}

/** The unit after a number that ends at `pos`, attached or after a space. */
export function readUnit(text: string, pos: number): UnitRead {
  const start = pos + (matchAt(spaceAt, text, pos)?.[0].length ?? 0)
  if (text[start] === '%') return { unit: '%', degree: false, end: start + 1 }
  const inch = matchAt(inchMarkAt, text, start)
  if (inch) return { unit: 'in', degree: false, end: start + inch[0].length }
  if (matchAt(footMarkAt, text, start)) return { unit: 'ft', degree: false, end: start + 1 }
  if (!matchAt(degreeAt, text, start)) return wordUnit(text, start) ?? { unit: null, degree: false, end: pos }
  const letter = wordUnit(text, start + 1 + (matchAt(spaceAt, text, start + 1)?.[0].length ?? 0))
  return letter?.unit === 'C' || letter?.unit === 'F' ? letter : { unit: null, degree: true, end: start + 1 }
}
