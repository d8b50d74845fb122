import { matchAt } from './match.js'

/** Which way a letter or a word points: of an axis, and whether it turns the number negative. `O` is west in Spanish and French. */
const ways: readonly (readonly [axis: 'lat' | 'lon', sign: 1 | -1, words: string])[] = [
  ['lat', 1, 'north|norte|nord|n'],
  ['lat', -1, 'south|sur|sud|s'],
  ['lon', 1, 'east|este|est|e'],
  ['lon', -1, 'west|oeste|ouest|w|o']
]
const wayWord = ways.map(([, , words]) => words).join('|')
const wayBefore = `(${wayWord})[.]?\\s{0,3}`
const wayAfter = `\\s{0,3}(${wayWord})(?![\\p{L}\\p{N}])[.]?`
/** Degrees with a point, or degrees, minutes and seconds. */
const angle = `([-−+]?\\d{1,3}(?:\\.\\d{1,10})?)(?:\\s{0,2}[°º˚](?:\\s{0,2}(\\d{1,2}(?:\\.\\d{1,8})?)['’′](?:\\s{0,2}(\\d{1,2}(?:\\.\\d{1,8})?)(?:["”″]|['’′]{2}))?)?)?`
/** With letters a comma parts nothing but decimals. */
const eitherAngle = angle.replaceAll('\\.', '[.,]')
const end = '(?!\\d|[.,]\\d|[\\p{L}°])'
const between = '(?:\\s{0,3}[,;]\\s{0,3}|\\s{1,3})'

function placeOf(one: string, behind = ''): RegExp {
  return new RegExp(`${one}${between}${one}${end}${behind}`, 'iuy')
}

/** Both coordinates with a letter before, with one behind, or without: never one with and one without. */
const forms = [
  { at: placeOf(`${wayBefore}${eitherAngle}`), way: 0, angle: 1 },
  { at: placeOf(`${eitherAngle}${wayAfter}`), way: 3, angle: 0 },
  { at: placeOf(angle, `(?!\\s{0,3}(?:${wayWord})(?![\\p{L}\\p{N}]))`), way: null, angle: 0 }
] as const

/** A place as it was typed: each coordinate in degrees, north and east positive, and its words. */
export interface PlaceRead {
  readonly lat: number
  readonly lon: number
  readonly typed: { readonly lat: string; readonly lon: string }
  readonly end: number
}

interface Coordinate {
  readonly axis: 'lat' | 'lon' | null
  readonly value: number
  readonly typed: string
}

/** One coordinate out of the groups of its angle and its letter; null where a sign stands beside a letter, or minutes are 60. */
function coordinate([degrees = '', minutes = '0', seconds = '0']: readonly (string | undefined)[], way: string | null): Coordinate | null {
  const pointed = way === null ? undefined : ways.find(([, , words]) => words.split('|').includes(way.toLowerCase()))
  const [whole, sixtieth, second] = [degrees.replace(/^[-−+]/, ''), minutes, seconds].map((part) => Number(part.replace(',', '.'))) as [
    number,
    number,
    number
  ]
  if (!(sixtieth < 60 && second < 60) || (pointed !== undefined && /^[-−+]/.test(degrees))) return null
  const sign = pointed?.[1] ?? (/^[-−]/.test(degrees) ? -1 : 1)
  return { axis: pointed?.[0] ?? null, value: sign * (whole + sixtieth / 60 + second / 3600), typed: degrees }
}

/**
 * Reads a place that starts at `pos`: `41.9,-87.6`, `41.9 N, 87.6 W`, `N 41.9° W 87.6°`, `41°54'0"N 87°36'0"W`; by the letters the
 * longitude may come first. Null when none stands there.
 */
export function readPlaceAt(text: string, pos: number): PlaceRead | null {
  for (const form of forms) {
    const match = matchAt(form.at, text, pos)
    if (match === null) continue
    const groups = match.slice(1)
    const size = groups.length / 2
    const read = [0, size].map((from) =>
      coordinate(groups.slice(from + form.angle, from + form.angle + 3), form.way === null ? null : (groups[from + form.way] ?? null))
    )
    return placed(read, pos + match[0].length)
  }
  return null
}

function placed([first, second]: readonly (Coordinate | null | undefined)[], end: number): PlaceRead | null {
  if (!first || !second || (first.axis !== null && first.axis === second.axis)) return null
  const [lat, lon] = first.axis === 'lon' ? [second, first] : [first, second]
  return { lat: lat.value, lon: lon.value, typed: { lat: lat.typed, lon: lon.typed }, end }
}
