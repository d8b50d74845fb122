import { bessel } from './bessel.js'

/** A solid that is infinite but for one direction: from its middle (0) to its surface (1), Biot number h·L/k, L from the middle out. */
export type Shape = 'cylinder' | 'slab'

/** One term of the series: share at a place 0…1, share of the mean, and how it decays with the Fourier number, exp(−ζ²Fo). */
export interface Term {
  readonly zeta: number
  /** C of the tables. */
  readonly c: number
  readonly meanShare: number
}

const mostSteps = 100

/**
 * Root n (1, 2 …) of ζ·J1(ζ) = Bi·J0(ζ) (cylinder) or ζ·tan ζ = Bi (slab), Bi > 0.
 * Source: Carslaw & Jaeger, Conduction of Heat in Solids, 7.7 and 3.11; there is exactly one in each bracket.
 */
export function rootOf(shape: Shape, biot: number, n: number): number {
  const low = (n - 1) * Math.PI
  const high = shape === 'cylinder' ? n * Math.PI : (n - 0.5) * Math.PI
  return newton(low, high, shape === 'cylinder' ? cylinderGap(biot) : slabGap(biot))
}

/** The whole term n of a shape. */
export function termOf(shape: Shape, biot: number, n: number): Term {
  const zeta = rootOf(shape, biot, n)
  if (shape === 'slab') {
    const c = (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta))
    return { zeta, c, meanShare: (c * Math.sin(zeta)) / zeta }
  }
  const { j0, j1 } = bessel(zeta)
  const c = (2 * j1) / (zeta * (j0 * j0 + j1 * j1))
  return { zeta, c, meanShare: (c * 2 * j1) / zeta }
}

/** What a term is worth at a place, before it decays. */
export function shareAt(shape: Shape, { zeta, c }: Term, place: number): number {
  return c * (shape === 'cylinder' ? bessel(zeta * place).j0 : Math.cos(zeta * place))
}

type Gap = (zeta: number) => readonly [value: number, slope: number]

function cylinderGap(biot: number): Gap {
  return (zeta) => {
    const { j0, j1 } = bessel(zeta)
    return [zeta * j1 - biot * j0, zeta * j0 + biot * j1]
  }
}

function slabGap(biot: number): Gap {
  return (zeta) => {
    const sin = Math.sin(zeta)
    const cos = Math.cos(zeta)
    return [zeta * sin - biot * cos, (1 + biot) * sin + zeta * cos]
  }
}

/** Newton's steps, halving the bracket where one would leave it. */
function newton(from: number, to: number, gap: Gap): number {
  let low = from
  let high = to
  const rising = gap(low)[0] < 0
  let at = (low + high) / 2
  for (let step = 0; step < mostSteps; step += 1) {
    const [value, slope] = gap(at)
    if (value < 0 === rising) low = at
    else high = at
    const next = at - value / slope
    const inside = next > low && next < high ? next : (low + high) / 2
    if (Math.abs(inside - at) <= 1e-14 * at) return inside
    at = inside
  }
  return at
}
