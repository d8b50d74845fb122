import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { Place } from '../log/data.js'
import type { Hour } from '../weather/hour.js'
import { conductionTrail, type Enough, lumpedTrail, remembering, type Surroundings, type Trail, type Uniform } from './kit-model.js'
import { surroundingsOf } from './place.js'
import { type StartQuestion, startBy } from './start-by.js'
import { first, valueAt } from './trail.js'

export interface KitQuestion {
  /** Properties of the limits sheet, with the mixing factor as learned where it was. */
  readonly kit: LimitsSheet['kit']
  /** 0 without a carton, m²K/W. */
  readonly cartonM2KW?: number
  /** The last reading that holds for the whole kit, see `startingReading`; of its colder part. */
  readonly reading: Uniform
  readonly place: Place
  /** Temperature stated for the place, °C. */
  readonly placeC: number | null
  /** Of the deck; empty without a forecast. */
  readonly hours: readonly Hour[]
  /** Of the box a kit would be put into, °C; null: not known. */
  readonly boxC: number | null
  /** Inside these, ends included, a kit can be used; null: no such limit. */
  readonly limits: { readonly minC: number | null; readonly maxC: number | null }
  /** Now. */
  readonly from: Instant
  /** When it is wanted; null: nothing is planned. */
  readonly readyBy: Instant | null
}

export interface KitTimes {
  /** Now, by the likely course; null where the surroundings since the reading are not known. */
  readonly shellC: number | null
  readonly meanC: number | null
  readonly coreC: number | null
  /** First instant at which the mean, once mixed, is inside the limits by the slow bound. */
  readonly readyAt: Instant | null
  /** The same by the likely course, which lies between the two bounds. */
  readonly likelyAt: Instant | null
  /** First instant below them by the fast bound: of a kit on the deck from now; of any other, taken there mixed when it is ready and wanted. */
  readonly coldAt: Instant | null
  /** First instant above them where it stands, by the fast bound. */
  readonly hotAt: Instant | null
  /** Latest instant to put it into the box to be ready by `readyBy`; null: never, not known, or in the box already. */
  readonly startBy: Instant | null
}

/** Nothing is foretold beyond this. */
const horizonS = 72 * 3600

/**
 * What a kit is now and when it will be ready, too cold or too hot: warming answers with the slow bound, cooling and
 * overheating with the fast one. All times null beyond 72 h and beyond what is known of the surroundings; a reading from
 * after `from` or more than 72 h before it says nothing. RangeError for properties outside `cylinderRanges`.
 */
export function kitTimes(question: KitQuestion): KitTimes {
  const { kit, cartonM2KW = 0, reading, place, placeC, hours, from, limits, readyBy } = question
  if (!(reading.at <= from && from - reading.at <= horizonS)) return nothing
  const at = (where: Place, c: number | null) => surroundingsOf({ place: where, placeC: c, hours, hWM2K: kit.hWM2K, cartonM2KW })
  const until = from + horizonS
  const around = remembering(at(place, placeC))
  const asked = inside(limits)
  const fast = lumpedTrail(kit, reading, until, around)
  // Of the slow course all until the kit is wanted is read, of the likely one only what is now.
  const slow = conductionTrail(kit, 1, reading, until, around, untilInside(from, Math.max(from, readyBy ?? from), asked))
  const likely = conductionTrail(kit, kit.mixing, reading, until, around, untilInside(from, from, asked))
  const readyAt = first(slow, from, asked)
  const deck = at('deck', place === 'deck' ? placeC : null)
  const box = question.boxC === null || place === 'box' ? null : at('box', question.boxC)
  const courses = { fast, slow }
  return {
    ...placesAt(likely, from),
    readyAt,
    likelyAt: first(likely, from, asked),
    coldAt: coldAt(question, courses, readyAt, deck),
    hotAt: first(fast, from, (c) => limits.maxC !== null && c > limits.maxC),
    startBy: box === null || readyBy === null ? null : startBy({ kit, waiting: courses, box, minC: limits.minC, from, readyBy })
  }
}

const nothing: KitTimes = { shellC: null, meanC: null, coreC: null, readyAt: null, likelyAt: null, coldAt: null, hotAt: null, startBy: null }

function coldAt(
  { kit, place, limits, from, readyBy }: KitQuestion,
  courses: StartQuestion['waiting'],
  readyAt: Instant | null,
  deck: Surroundings
): Instant | null {
  const { minC } = limits
  if (minC === null) return null
  const tooCold = (c: number) => c < minC
  if (place === 'deck') return first(courses.fast, from, tooCold)
  if (readyAt === null) return null
  const takenAt = Math.max(readyAt, readyBy ?? readyAt)
  const c = valueAt(courses.slow, 'meanC', takenAt)
  return c === null ? null : first(lumpedTrail(kit, { at: takenAt, c }, from + horizonS, deck), takenAt, tooCold)
}

/** Now, by the likely course. */
function placesAt(likely: Trail, at: Instant): Pick<KitTimes, 'shellC' | 'meanC' | 'coreC'> {
  return { shellC: valueAt(likely, 'shellC', at), meanC: valueAt(likely, 'meanC', at), coreC: valueAt(likely, 'coreC', at) }
}

type Asked = (meanC: number) => boolean

function inside({ minC, maxC }: KitQuestion['limits']): Asked {
  return (c) => (minC === null || c >= minC) && (maxC === null || c <= maxC)
}

/** A course is followed until it has been as asked for once from an instant on, and past `least` in any case. */
function untilInside(from: Instant, least: Instant, asked: Asked): Enough {
  let was = false
  return (at, meanC) => {
    was ||= at > from && asked(meanC)
    return was && at > least
  }
}

/** A reading of a kit, and whether the kit had been mixed by then. */
export interface KitReading extends Uniform {
  readonly mixed: boolean
}

/**
 * The reading from which a kit is followed: the last one of a mixed kit, else the first, which is taken to hold throughout. What is
 * read on the shell of a kit left to itself says nothing of its mean. In order of `at`; null without any.
 */
export function startingReading(readings: readonly KitReading[]): KitReading | null {
  return readings.findLast((reading) => reading.mixed) ?? readings[0] ?? null
}
