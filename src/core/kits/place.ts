import type { Instant } from '../instant.js'
import type { Place } from '../log/data.js'
import { convectionWm2K } from '../physics/convection.js'
import type { Hour } from '../weather/hour.js'
import { firstAfter, hourHolding } from '../weather/lookup.js'
import type { Around, Surroundings } from './kit-model.js'

/** Widest gap between two hours that is bridged in a straight line, as elsewhere. */
const bridgeS = 6 * 3600

/**
 * Sun that a standing kit takes up, per area of all its faces, as a share of the sun on a level surface: light skin or carton
 * (absorptance 0.6), half of it lit. From memory. Rated as warmth of the surroundings (sol-air temperature).
 */
const sunShare = 0.3

export interface Standing {
  readonly place: Place
  /** Temperature stated for the place; null: not stated. A deck then has that of the forecast, box and store are not known. */
  readonly placeC: number | null
  /** In order of `at`. */
  readonly hours: readonly Hour[]
  /** Film coefficient in still air, from the limits sheet, W/m²K. */
  readonly hWM2K: number
  /** Resistance of a carton around the kit, m²K/W; 0 without one. */
  readonly cartonM2KW: number
}

/**
 * What is around a kit where it stands: box and store at the temperature stated, in still air; the deck at that stated, or at the
 * air of the forecast warmed by the sun, in its wind. Null where that is not known: never a guess.
 */
export function surroundingsOf(standing: Standing): Surroundings {
  const { place, placeC, hours, hWM2K, cartonM2KW } = standing
  if (place !== 'deck') {
    const still = placeC === null ? null : { toC: placeC, hWM2K: through(hWM2K, cartonM2KW) }
    return () => still
  }
  const known = hours.filter((hour) => hour.airC !== null)
  return (at) => {
    const hour = hourHolding(hours, at)
    const windKmh = hour?.windKmh ?? null
    // The wind of an hour is held over it: half an hour's difference is nothing to a kit, and the steps stay alike.
    const filmWM2K = windKmh === null ? hWM2K : Math.max(hWM2K, convectionWm2K(Math.min(windKmh, 300)))
    const around = { hWM2K: through(filmWM2K, cartonM2KW) }
    if (placeC !== null) return { toC: placeC, ...around }
    const airC = between(known, at)
    return airC === null ? null : { toC: airC + (sunShare * (hour?.sunWm2 ?? 0)) / filmWM2K, ...around }
  }
}

/** A place that stays as it is. */
export function steady(around: Around): Surroundings {
  return () => around
}

function through(filmWM2K: number, cartonM2KW: number): number {
  return 1 / (1 / filmWM2K + cartonM2KW)
}

function between(known: readonly Hour[], at: Instant): number | null {
  const index = firstAfter(known, at)
  const left = known[index - 1]
  const right = known[index]
  const from = left?.airC ?? null
  const to = right?.airC ?? null
  if (left === undefined || from === null || left.at === at) return from
  if (right === undefined || to === null || right.at - left.at > bridgeS) return null
  return from + ((to - from) * (at - left.at)) / (right.at - left.at)
}
