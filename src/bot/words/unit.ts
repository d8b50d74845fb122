import type { Unit } from '../../core/units.js'
import { fold } from './fold.js'
import { matchAt } from './match.js'

/**
 * How units are spelled, `_` between words; `²` and `^2` count as `2`. No `sec` for seconds (it is French for dry) and no word for hours
 * (`hours`, `horas`, `heures` are a setting of a site).
 */
const spellings: Readonly<Record<Unit, string>> = {
  C: 'c celsius centigrade centígrados centigrados',
  F: 'f fahrenheit',
  K: '',
  deltaF: '',
  '%': 'pct percent per_cent por_ciento pour_cent',
  'km/h': 'km/h kmh kph km_per_hour km_por_hora',
  'm/s': 'm/s',
  mph: 'mph mi/h miles_per_hour miles_an_hour millas_por_hora',
  kn: 'kn kt kts knots knot noeud noeuds nœud nœuds',
  mm: 'mm millimeters millimetres milímetros milimetros millimètres',
  cm: 'cm centimeters centimetres centímetros centimetros centimètres',
  m: 'm meter meters metre metres metro metros mètre mètres',
  in: 'in inch inches pulgada pulgadas pouces po',
  ft: 'ft foot feet pie pies pied pieds pi',
  mil: 'mil mils',
  m2: 'm2 square_meters square_metres metros_cuadrados mètres_carrés metres_carres',
  ft2: 'ft2 sqft sf sq_ft square_feet square_foot pies_cuadrados pieds_carrés pieds_carres',
  mm2: 'mm2',
  s: 's seg second seconds segundo segundos seconde secondes',
  min: 'min mins minute minutes minuto minutos',
  h: 'h',
  'm/min': 'm/min',
  'ft/min': 'ft/min fpm',
  V: 'v volt volts',
  W: 'w watt watts',
  'W/m2': 'w/m2',
  N: 'n newton newtons',
  lbf: 'lbf lb lbs pound pounds libra libras livre livres',
  AWG: 'awg'
}

const units: ReadonlyMap<string, Unit> = new Map(
  Object.entries(spellings).flatMap(([unit, words]) =>
    words
      .split(' ')
      .filter(Boolean)
      .map((word) => [word.replaceAll('_', ' '), unit as Unit] as const)
  )
)
const longestFirst = [...units.keys()].sort((a, b) => b.length - a.length).map((word) => word.replace('2', '(?:2|²|\\^2)').replaceAll(' ', ' {1,3}'))
const byFolded: ReadonlyMap<string, Unit> = new Map([...units].map(([word, unit]) => [fold(word), unit] as const))
/** A unit ends where the word ends; only feet may have their inches right behind (`6ft6in`). */
const wordAt = new RegExp(`(?:(?:${longestFirst.join('|')})(?![\\p{L}\\p{M}\\p{N}])|ft(?=\\d))`, 'iuy')
const spaceAt = /[ \t\u00a0\u2009\u202f]{0,3}/y
const degreeAt = /[°º˚]|(?:deg(?:ree)?s?|grados?|degr[eé]s?)(?![\p{L}\p{M}\p{N}])/iuy
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
  const unit = word === undefined ? undefined : byFolded.get(fold(word).replace(/²|\^2/, '2').replace(/ +/g, ' '))
  return word === undefined || unit === undefined ? null : { unit, degree: false, end: pos + word.length }
}

/** The unit after a number that ends at `pos`, attached or after a space. */
export function readUnit(text: string, pos: number): UnitRead {
  const start = pos + (matchAt(spaceAt, text, pos)?.[0].length ?? 0)
  if (text[start] === '%') return { unit: '%', degree: false, end: start + 1 }
  const inch = matchAt(inchMarkAt, text, start)
  if (inch) return { unit: 'in', degree: false, end: start + inch[0].length }
  if (matchAt(footMarkAt, text, start)) return { unit: 'ft', degree: false, end: start + 1 }
  const degree = matchAt(degreeAt, text, start)?.[0].length
  if (degree === undefined) return wordUnit(text, start) ?? { unit: null, degree: false, end: pos }
  const end = start + degree
  const letter = wordUnit(text, end + (matchAt(spaceAt, text, end)?.[0].length ?? 0))
  return letter?.unit === 'C' || letter?.unit === 'F' ? letter : { unit: null, degree: true, end }
}
