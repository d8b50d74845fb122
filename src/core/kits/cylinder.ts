import { within } from '../physics/range.js'
import { type Shape, shareAt, type Term, termOf } from './eigen.js'
import { halfSpace } from './half-space.js'

/** A full cylinder and how its faces meet what is around it. */
export interface Cylinder {
  readonly radiusM: number
  readonly heightM: number
  readonly rhoKgM3: number
  readonly cJKgK: number
  readonly kWMK: number
  /** Film coefficient of all exposed faces; the rest is insulated. */
  readonly hWM2K: number
  /** 0: infinite cylinder · 1: stands on something that insulates · 2: air all round. */
  readonly exposedEnds: number
}

/** What is left of the first difference to the surroundings, 1 … 0: surface at half height, volume mean, centre. */
export interface Left {
  readonly shell: number
  readonly mean: number
  readonly core: number
}

export type PlaceIn = keyof Left

export const cylinderRanges = {
  radiusM: [1e-4, 10],
  heightM: [1e-3, 10],
  rhoKgM3: [1, 25_000],
  cJKgK: [10, 20_000],
  kWMK: [1e-3, 1e6],
  hWM2K: [1e-2, 1e5],
  exposedEnds: [0, 2]
} as const satisfies Record<keyof Cylinder, readonly [number, number]>

/** Below this Fourier number the half space stands for the series: it is then right to 0.5 % of what has changed. */
const earlyFourier = 1e-5
/** Enough for exp(−ζ²Fo) < 1e-13 from there on. */
const mostTerms = 560
const endless = 30
const mostSteps = 200

/** Throws RangeError when a property is outside its range (NaN too). */
export function checkCylinder(body: Cylinder): void {
  for (const [key, [low, high]] of Object.entries(cylinderRanges)) within(key, body[key as keyof Cylinder], low, high)
}

/**
 * Conduction in a cylinder that was at one temperature throughout, surroundings constant: what is left after `s` seconds ≥ 0.
 * The product of the infinite cylinder and the slab, each the whole series, at early times the half space.
 * Source: Carslaw & Jaeger, Conduction of Heat in Solids, 1.15, 3.11, 7.7; Incropera & DeWitt, ch. 5. RangeError outside
 * `cylinderRanges`.
 */
export function leftIn(body: Cylinder): (s: number) => Left {
  checkCylinder(body)
  const { radiusM, heightM, rhoKgM3, cJKgK, kWMK, hWM2K, exposedEnds } = body
  const diffusivity = kWMK / (rhoKgM3 * cJKgK)
  const side = direction('cylinder', (hWM2K * radiusM) / kWMK, diffusivity / radiusM ** 2, { shell: 1, core: 0 }, 2)
  if (exposedEnds === 0) return side
  // Two ends: from the middle to either. One: from the insulated end to the other, with half height halfway.
  const lengthM = heightM / exposedEnds
  const half = exposedEnds === 1 ? 0.5 : 0
  const ends = direction('slab', (hWM2K * lengthM) / kWMK, diffusivity / lengthM ** 2, { shell: half, core: half }, 1)
  return (s) => {
    const radial = side(s)
    const axial = ends(s)
    return { shell: radial.shell * axial.shell, mean: radial.mean * axial.mean, core: radial.core * axial.core }
  }
}

/** Seconds until `left` (0 < left < 1) of the difference is left at a place; bounded bisection. RangeError outside. */
export function secondsUntil(left: number, place: PlaceIn, after: (s: number) => Left): number {
  within('left', left, 1e-12, 1)
  let high = 1
  for (let step = 0; step < mostSteps && after(high)[place] > left; step += 1) high *= 2
  let low = 0
  for (let step = 0; step < mostSteps && high - low > 1e-10 * high; step += 1) {
    const middle = (low + high) / 2
    if (after(middle)[place] > left) low = middle
    else high = middle
  }
  return (low + high) / 2
}

type Places = Readonly<Record<'shell' | 'core', number>>

function direction(shape: Shape, biot: number, perS: number, places: Places, areaPerVolume: number): (s: number) => Left {
  const terms: Term[] = []
  const shares: { readonly shell: number; readonly core: number }[] = []
  function grow(n: number): void {
    const term = termOf(shape, biot, n)
    terms.push(term)
    shares.push({ shell: shareAt(shape, term, places.shell), core: shareAt(shape, term, places.core) })
  }
  return (s) => {
    const fourier = s * perS
    if (!(fourier >= earlyFourier)) return early(biot, fourier, places, areaPerVolume)
    const left = { shell: 0, mean: 0, core: 0 }
    for (let n = 0; n < mostTerms; n += 1) {
      if (n === terms.length) grow(n + 1)
      const term = terms[n]
      const at = shares[n]
      if (term === undefined || at === undefined) break
      const exponent = term.zeta ** 2 * fourier
      const decay = Math.exp(-exponent)
      left.shell += at.shell * decay
      left.mean += term.meanShare * decay
      left.core += at.core * decay
      if (n > 0 && exponent > endless) break
    }
    return { shell: share(left.shell), mean: share(left.mean), core: share(left.core) }
  }
}

/** The sum of a series strays from 0…1 by its last digits. */
function share(sum: number): number {
  return Math.max(0, Math.min(1, sum))
}

function early(biot: number, fourier: number, places: Places, areaPerVolume: number): Left {
  const { surface, taken } = halfSpace(biot, fourier)
  return { shell: places.shell === 1 ? surface : 1, mean: 1 - areaPerVolume * taken, core: 1 }
}
