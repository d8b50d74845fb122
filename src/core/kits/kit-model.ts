import type { Instant } from '../instant.js'
import { within } from '../physics/range.js'
import { type Cylinder, checkCylinder } from './cylinder.js'
import { advance, placesOf, type Sweeps, sweepsOf, uniformProfile } from './profile.js'

/** What a kit stands in: temperature (sun included) and film coefficient (carton included), constant over a step. */
export interface Around {
  readonly toC: number
  readonly hWM2K: number
}

/** What is around a kit at an instant; null where nobody knows. */
export type Surroundings = (at: Instant) => Around | null

/** A kit at one temperature throughout, at an instant. */
export interface Uniform {
  readonly at: Instant
  readonly c: number
}

/** Temperatures at instants from the first on: every step, in order; it ends where the surroundings are not known. */
export interface Trail {
  readonly at: readonly Instant[]
  readonly shellC: readonly number[]
  readonly meanC: readonly number[]
  readonly coreC: readonly number[]
  /** Heat taken up since the first instant, J. */
  readonly heatJ: readonly number[]
}

/** The three courses of a kit: lumped (fastest), conduction with the mixing factor on k, conduction alone (slowest). */
export interface KitCourses {
  readonly fast: Trail
  readonly likely: Trail
  readonly slow: Trail
}

/** Longest step. */
export const stepS = 300
/** Kits are followed this long at most. */
const mostS = 10 * 86_400
/** The first steps after a jump of the surroundings are shorter: the shell moves at once. */
const firstStepsS = [60, 60, 180]

/**
 * Both bounds of a kit that was at one temperature at `from.at`, and the likely course between them, until an instant (at most
 * 10 days on). RangeError for a body outside `cylinderRanges`, a mixing factor outside 1…1000, or what is no temperature.
 */
export function kitCourses(body: Cylinder, mixing: number, from: Uniform, until: Instant, around: Surroundings): KitCourses {
  return {
    fast: lumpedTrail(body, from, until, around),
    likely: conductionTrail(body, mixing, from, until, around),
    slow: conductionTrail(body, 1, from, until, around)
  }
}

/** Stirred all the time: one temperature throughout. dT/dt = h·A·(T∞ − T)/(ρ·V·c), exact over each step. */
export function lumpedTrail(body: Cylinder, from: Uniform, until: Instant, around: Surroundings): Trail {
  const { radiusM, heightM, exposedEnds } = body
  const capacityJK = capacityOf(body)
  const faceM2 = 2 * Math.PI * radiusM * heightM + exposedEnds * Math.PI * radiusM ** 2
  let c = from.c
  let heatJ = 0
  return follow(body, from, until, around, ({ toC, hWM2K }, tookS) => {
    const takenK = (toC - c) * -Math.expm1((-hWM2K * faceM2 * tookS) / capacityJK)
    c += takenK
    heatJ += takenK * capacityJK
    return { shell: c, mean: c, core: c, heatJ }
  })
}

/**
 * Conduction in the finite cylinder with `mixing` (1…1000) times its conductivity: finite volumes in radius and height, implicit,
 * so stable at any step, carrying the profile through surroundings that change. Source: Patankar, Numerical Heat Transfer and
 * Fluid Flow, ch. 4, from memory; the tests hold it against the series.
 */
export function conductionTrail(body: Cylinder, mixing: number, from: Uniform, until: Instant, around: Surroundings): Trail {
  within('mixing', mixing, 1, 1000)
  const stirred = { ...body, kWMK: body.kWMK * mixing }
  const profile = uniformProfile(stirred, from.c)
  const capacityJK = capacityOf(body)
  let sweeps: Sweeps | null = null
  let heatJ = 0
  return follow(body, from, until, around, ({ toC, hWM2K }, tookS) => {
    if (sweeps === null || sweeps.hWM2K !== hWM2K || sweeps.stepS !== tookS) sweeps = sweepsOf(profile, stirred, hWM2K, tookS)
    heatJ += capacityJK * advance(profile, sweeps, toC)
    return { ...placesOf(profile, sweeps.radial.shellShare, toC), heatJ }
  })
}

interface Moment {
  readonly shell: number
  readonly mean: number
  readonly core: number
  readonly heatJ: number
}

function follow(body: Cylinder, from: Uniform, until: Instant, around: Surroundings, step: (around: Around, tookS: number) => Moment): Trail {
  checkCylinder(body)
  within('temperature', from.c, -100, 500)
  const trail = { at: [from.at], shellC: [from.c], meanC: [from.c], coreC: [from.c], heatJ: [0] }
  const end = Math.min(until, from.at + mostS)
  let at = from.at
  for (let n = 0; at < end; n += 1) {
    const tookS = Math.min(firstStepsS[n] ?? stepS, end - at)
    const now = around(at + tookS / 2)
    if (now === null) break
    const moment = step(now, tookS)
    at += tookS
    trail.at.push(at)
    trail.shellC.push(moment.shell)
    trail.meanC.push(moment.mean)
    trail.coreC.push(moment.core)
    trail.heatJ.push(moment.heatJ)
  }
  return trail
}

function capacityOf({ radiusM, heightM, rhoKgM3, cJKgK }: Cylinder): number {
  return rhoKgM3 * cJKgK * Math.PI * radiusM ** 2 * heightM
}
