import { convert, type Unit } from '../../core/units.js'
import type { How } from './how.js'
import { feet, tape } from './inches.js'
import { numeral } from './number.js'

interface Shown {
  readonly unit: Unit
  readonly symbol: string
  readonly decimals: number
}

const degreesC = { symbol: '°C', decimals: 1 } as const
const degreesF = { symbol: '°F', decimals: 1 } as const

/** In which unit a JSON unit is shown. Lengths in inches and feet have their own words (inches.ts). */
const metric: Readonly<Record<string, Shown>> = {
  C: { unit: 'C', ...degreesC },
  K: { unit: 'K', ...degreesC },
  '%': { unit: '%', symbol: '%', decimals: 1 },
  'km/h': { unit: 'km/h', symbol: 'km/h', decimals: 1 },
  mm: { unit: 'mm', symbol: 'mm', decimals: 1 },
  m: { unit: 'm', symbol: 'm', decimals: 2 },
  m2: { unit: 'm2', symbol: 'm²', decimals: 1 },
  mm2: { unit: 'mm2', symbol: 'mm²', decimals: 2 },
  s: { unit: 's', symbol: 's', decimals: 0 },
  min: { unit: 'min', symbol: 'min', decimals: 0 },
  'm/min': { unit: 'm/min', symbol: 'm/min', decimals: 1 },
  V: { unit: 'V', symbol: 'V', decimals: 1 },
  W: { unit: 'W', symbol: 'W', decimals: 0 },
  'W/m2': { unit: 'W/m2', symbol: 'W/m²', decimals: 0 },
  N: { unit: 'N', symbol: 'N', decimals: 0 }
}

const us: Readonly<Record<string, Shown>> = {
  ...metric,
  C: { unit: 'F', ...degreesF },
  K: { unit: 'deltaF', ...degreesF },
  'km/h': { unit: 'mph', symbol: 'mph', decimals: 1 },
  mm: { unit: 'in', symbol: 'in', decimals: 3 },
  m: { unit: 'ft', symbol: 'ft', decimals: 2 },
  m2: { unit: 'ft2', symbol: 'ft²', decimals: 0 },
  'm/min': { unit: 'ft/min', symbol: 'ft/min', decimals: 1 },
  N: { unit: 'lbf', symbol: 'lbf', decimals: 0 }
}

const tables = { metric, us } as const
const hourFromMin = 120
/** From here on a tape is read to the millimetre; a sheet, a gap or the width of a weld below it to a tenth. */
const wholeFromMm = 100

/** Between number and unit: in Spanish and French a space that does not break. */
function spaceOf(how: How): string {
  return how.lang === 'en' ? ' ' : '\u00a0'
}

/** A number of a JSON unit in the person's system and language. An unknown unit is shown as it is. */
export function amount(value: number, unit: string | null, how: How): string {
  const space = spaceOf(how)
  if (how.units === 'us' && unit === 'mm') return tape(value / 25.4, how, space)
  if (how.units === 'us' && unit === 'm') return feet(value, how, space)
  if (unit === 'min' && Math.abs(value) >= hourFromMin) return hours(value, how, space)
  return plain(value, unit, how, 0)
}

/** Two amounts to compare, with as many more decimals as it takes to tell them apart: never "25 km/h, at most 25 km/h: no-go". */
export function amountPair(value: number, limit: number, unit: string | null, how: How): readonly [string, string] {
  const easy = [amount(value, unit, how), amount(limit, unit, how)] as const
  if (easy[0] !== easy[1] || value === limit) return easy
  for (let more = 0; more <= 3; more++) {
    const finer = [plain(value, unit, how, more), plain(limit, unit, how, more)] as const
    if (finer[0] !== finer[1]) return finer
  }
  return easy
}

function plain(value: number, unit: string | null, how: How, more: number): string {
  if (unit === null) return numeral(value, 1 + more, how)
  const shown = tables[how.units][unit]
  if (shown === undefined) return `${numeral(value, 1 + more, how)}${spaceOf(how)}${unit}`
  const converted = convert(value, unit as Unit, shown.unit) ?? value
  const decimals = shown.unit === 'mm' && Math.abs(converted) >= wholeFromMm ? 0 : shown.decimals
  return `${numeral(converted, decimals + more, how)}${spaceOf(how)}${shown.symbol}`
}

function hours(minutes: number, how: How, space: string): string {
  const whole = Math.round(Math.abs(minutes))
  const sign = minutes < 0 ? '-' : ''
  const rest = whole % 60
  const h = `${sign}${numeral(Math.floor(whole / 60), 0, how)}${space}h`
  return rest === 0 ? h : `${h} ${rest}${space}min`
}

const endings: Readonly<Record<string, string>> = {
  C: 'C',
  K: 'K',
  Pct: '%',
  Kmh: 'km/h',
  Mm: 'mm',
  M: 'm',
  M2: 'm2',
  S: 's',
  Min: 'min',
  MMin: 'm/min',
  Wm2: 'W/m2'
}

/** The JSON unit that the name of a number ends with (JSON units). */
export function unitOfName(name: string): string | null {
  const ending = /(Pct|Kmh|Wm2|MMin|Mm|M2|Min|[CKMS])$/.exec(name)?.[1]
  return ending === undefined ? null : (endings[ending] ?? null)
}
