import { type Axis, axisOf, type Spot, type Sweep, spotOf, sweepOf } from './axis.js'
import type { Cylinder, Left } from './cylinder.js'

/** Cells from axis to shell, and from the middle to an exposed end. */
const radialCells = 8
const axialCells = 5

/** The temperatures inside one cylinder, moved on in place: for each cell from the axis out, its rows from the middle (or an insulated end) up. */
export interface Profile {
  readonly radial: Axis
  /** Null: no end exposed, and one row stands for all. */
  readonly axial: Axis | null
  readonly rows: number
  readonly temperatureC: Float64Array
  /** Share of each cell in the volume. */
  readonly shares: Float64Array
  readonly axis: Spot
  readonly halfHeight: Spot
}

/** The two sweeps of a step at one film coefficient and length: made once, used while those stay. */
export interface Sweeps {
  readonly hWM2K: number
  readonly stepS: number
  readonly radial: Sweep
  readonly axial: Sweep | null
}

export function uniformProfile(body: Cylinder, c: number): Profile {
  const { radiusM, heightM, exposedEnds } = body
  const radial = axisOf('cylinder', radiusM, radialCells)
  const axial = exposedEnds === 0 ? null : axisOf('slab', heightM / exposedEnds, exposedEnds === 1 ? 2 * axialCells : axialCells)
  const rows = axial?.cells ?? 1
  const shares = new Float64Array(rows * radialCells)
  const whole = Math.PI * radiusM ** 2 * (axial?.lengthM ?? 1)
  for (let at = 0; at < shares.length; at += 1) {
    shares[at] = ((radial.sizes[Math.floor(at / rows)] ?? 0) * (axial?.sizes[at % rows] ?? 1)) / whole
  }
  const halfHeight = axial === null ? { index: 0, here: 1, next: 0 } : spotOf(axial, exposedEnds === 1 ? heightM / 2 : 0)
  return { radial, axial, rows, shares, temperatureC: new Float64Array(shares.length).fill(c), axis: spotOf(radial, 0), halfHeight }
}

export function sweepsOf({ radial, axial }: Profile, body: Cylinder, hWM2K: number, stepS: number): Sweeps {
  const heatJM3K = body.rhoKgM3 * body.cJKgK
  const sweep = (axis: Axis) => sweepOf(axis, body.kWMK, heatJM3K, hWM2K, stepS)
  return { hWM2K, stepS, radial: sweep(radial), axial: axial === null ? null : sweep(axial) }
}

/**
 * One step in surroundings of `toC`, one direction after the other (they commute, so nothing is lost by it). Gives the heat
 * taken up through the faces as a rise of the mean, K.
 */
export function advance(profile: Profile, sweeps: Sweeps, toC: number): number {
  const { rows, temperatureC } = profile
  const side = sweepLines(temperatureC, { count: radialCells, stride: rows }, { count: rows, stride: 1 }, sweeps.radial, toC)
  let taken = tally(profile, side, rows, 1, sweeps.radial.surround, toC)
  if (sweeps.axial === null) return taken
  const end = sweepLines(temperatureC, { count: rows, stride: 1 }, { count: radialCells, stride: rows }, sweeps.axial, toC)
  taken += tally(profile, end, radialCells, rows, sweeps.axial.surround, toC)
  return taken
}

interface Way {
  readonly count: number
  readonly stride: number
}

/** Thomas's algorithm along all lines of cells at once; gives where the last cells begin. */
function sweepLines(c: Float64Array, along: Way, across: Way, sweep: Sweep, toC: number): number {
  const { lower, upper, inverse, surround } = sweep
  const { stride } = along
  const step = across.stride
  const size = across.count * step
  const last = (along.count - 1) * stride
  for (let at = last, end = last + size; at < end; at += step) c[at] = (c[at] as number) + surround * toC
  for (let line = 0, base = 0; base <= last; line += 1, base += stride) {
    const scale = inverse[line] as number
    const low = line === 0 ? 0 : (lower[line] as number)
    const back = line === 0 ? 0 : stride
    for (let at = base, end = base + size; at < end; at += step) c[at] = ((c[at] as number) + low * (c[at - back] as number)) * scale
  }
  for (let line = along.count - 2, base = last - stride; base >= 0; line -= 1, base -= stride) {
    const high = upper[line] as number
    for (let at = base, end = base + size; at < end; at += step) c[at] = (c[at] as number) + high * (c[at + stride] as number)
  }
  return last
}

function tally({ temperatureC, shares }: Profile, from: number, count: number, stride: number, surround: number, toC: number): number {
  let taken = 0
  for (let at = from, end = from + count * stride; at < end; at += stride) taken += (shares[at] as number) * (toC - (temperatureC[at] as number))
  return surround * taken
}

/** Shell at half height, mean and centre, °C. `shellShare` of the last step's radial sweep and `toC` give the surface itself. */
export function placesOf({ rows, temperatureC, shares, axis, halfHeight }: Profile, shellShare: number, toC: number): Left {
  let mean = 0
  for (let at = 0; at < shares.length; at += 1) mean += (shares[at] as number) * (temperatureC[at] as number)
  const { index, here, next } = halfHeight
  const column = (cell: number) => {
    const at = cell * rows + index
    return here * (temperatureC[at] as number) + (next === 0 ? 0 : next * (temperatureC[at + 1] as number))
  }
  const rim = column(radialCells - 1)
  return { shell: rim + (toC - rim) * shellShare, mean, core: axis.here * column(0) + axis.next * column(1) }
}
