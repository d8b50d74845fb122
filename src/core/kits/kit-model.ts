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
  readonly at: Float64Array
  readonly shellC: Float64Array
  readonly meanC: Float64Array
  readonly coreC: Float64Array
  /** Heat taken up since the first instant, J. */
  readonly heatJ: Float64Array
}

/** The three courses of a kit: lumped (fastest), conduction with the mixing factor on k, conduction alone (slowest). */
export interface KitCourses {
  readonly fast: Trail
  readonly likely: Trail
  readonly slow: Trail
}

/** Longest step. */
const stepS = 300
/** Kits are followed this long at most. */
const mostS = 10 * 86_400
/** The first steps after a jump of the surroundings are shorter: the shell moves at once. */
const firstStepsS = [60, 60, 180]

/**
 * Both bounds of a kit that was at one temperature at `from.at`, and the likely course between them, until an instant (at most
 * 10 days on). RangeError for a body outside `cylinderRanges`, a mixing factor outside 1…1000, or what is no temperature (−100…500 °C)
 * or film coefficient.
 */
export function kitCourses(body: Cylinder, mixing: number, from: Uniform, until: Instant, around: Surroundings): KitCourses {
  const remembered = remembering(around)
  return {
    fast: lumpedTrail(body, from, until, remembered),
    likely: conductionTrail(body, mixing, from, until, remembered),
    slow: conductionTrail(body, 1, from, until, remembered)
  }
}

/** The courses of a kit ask at the same instants. */
export function remembering(around: Surroundings): Surroundings {
  const known = new Map<Instant, Around | null>()
  return (at) => {
    const before = known.get(at)
    if (before !== undefined) return before
    const now = around(at)
    known.set(at, now)
    return now
  }
}

/** Stirred all the time: one temperature throughout. dT/dt = h·A·(T∞ − T)/(ρ·V·c), exact over each step. */
export function lumpedTrail(body: Cylinder, from: Uniform, until: Instant, around: Surroundings): Trail {
  const { radiusM, heightM, exposedEnds } = body
  const capacityJK = capacityOf(body)
  const faceM2 = 2 * Math.PI * radiusM * heightM + exposedEnds * Math.PI * radiusM ** 2
  let c = from.c
  let heatJ = 0
  return follow(body, from, until, around, (trail, n, { toC, hWM2K }, tookS) => {
    const takenK = (toC - c) * -Math.expm1((-hWM2K * faceM2 * tookS) / capacityJK)
    c += takenK
    heatJ += takenK * capacityJK
    trail.shellC[n] = trail.meanC[n] = trail.coreC[n] = c
    trail.heatJ[n] = heatJ
  })
}

/**
 * Conduction in the finite cylinder with `mixing` (1…1000) times its conductivity: finite volumes in radius and height, implicit,
 * so stable at any step, carrying the profile through surroundings that change. Source: Patankar, Numerical Heat Transfer and
 * Fluid Flow, ch. 4, from memory; the tests hold it against the series. Three days of it take long: who has seen `enough` says so.
 */
export function conductionTrail(
  body: Cylinder,
  mixing: number,
  from: Uniform,
  until: Instant,
  around: Surroundings,
  enough: Enough = neverEnough
): Trail {
  within('mixing', mixing, 1, 1000)
  const stirred = { ...body, kWMK: body.kWMK * mixing }
  const profile = uniformProfile(stirred, from.c)
  const capacityJK = capacityOf(body)
  let sweeps: Sweeps | null = null
  let heatJ = 0
  const step: Step = (trail, n, { toC, hWM2K }, tookS) => {
    if (sweeps === null || sweeps.hWM2K !== hWM2K || sweeps.stepS !== tookS) sweeps = sweepsOf(profile, stirred, hWM2K, tookS)
    heatJ += capacityJK * advance(profile, sweeps, toC)
    const { shell, mean, core } = placesOf(profile, sweeps.radial.shellShare, toC)
    trail.shellC[n] = shell
    trail.meanC[n] = mean
    trail.coreC[n] = core
    trail.heatJ[n] = heatJ
  }
  return follow(body, from, until, around, step, enough)
}

/** Asked at the end of each step: true ends a trail there, before its time. */
export type Enough = (at: Instant, meanC: number) => boolean

const neverEnough: Enough = () => false

type Step = (trail: Trail, n: number, around: Around, tookS: number) => void

function follow(body: Cylinder, from: Uniform, until: Instant, around: Surroundings, step: Step, enough = neverEnough): Trail {
  checkCylinder(body)
  within('temperature', from.c, -100, 500)
  const end = Math.min(until, from.at + mostS)
  const trail = emptyTrail(from, end > from.at ? firstStepsS.length + 1 + Math.ceil((end - from.at) / stepS) : 1)
  let at = from.at
  let n = 1
  for (let done = false; at < end && !done; n += 1) {
    const tookS = Math.min(firstStepsS[n - 1] ?? stepS, end - at)
    const now = around(at + tookS / 2)
    if (now === null) break
    within('surroundings', now.toC, -150, 600)
    within('hWM2K', now.hWM2K, 1e-3, 1e5)
    step(trail, n, now, tookS)
    at += tookS
    trail.at[n] = at
    done = enough(at, trail.meanC[n] as number)
  }
  return cut(trail, n)
}

function emptyTrail({ at, c }: Uniform, length: number): Trail {
  const series = (start: number) => {
    const values = new Float64Array(length)
    values[0] = start
    return values
  }
  return { at: series(at), shellC: series(c), meanC: series(c), coreC: series(c), heatJ: series(0) }
}

function cut({ at, shellC, meanC, coreC, heatJ }: Trail, length: number): Trail {
  const to = (values: Float64Array) => values.subarray(0, length)
  return { at: to(at), shellC: to(shellC), meanC: to(meanC), coreC: to(coreC), heatJ: to(heatJ) }
}

function capacityOf({ radiusM, heightM, rhoKgM3, cJKgK }: Cylinder): number {
  return rhoKgM3 * cJKgK * Math.PI * radiusM ** 2 * heightM
}
