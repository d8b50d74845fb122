import type { Layer } from '../limits/sheet.js'
import { within } from '../physics/range.js'
import { eigenOf } from './modes.js'

/** Heated or cooled rooms below an insulated roof, °C, and the air film on the ceiling. Source: ISO 6946 (Rsi 0.10 m²·K/W, upward); 20 °C from memory. */
export const interiorC = 20
const ceilingM2KW = 0.1
/**
 * With at least this much resistance between, m²·K/W, the room below holds its temperature. A bare deck has none to keep
 * warm: it is taken to lose no heat downward, which is the careful side, as it then cools and dews most. From memory.
 */
const insulatedM2KW = 1

/** A thin layer is one cell; a thick one is cut finer towards its top. */
const thinM = 0.003
const cellsOfLayer = 6
const growth = 1.8

/**
 * A build-up cut into cells, from the top down, and taken apart into modes: what the cells differ from where they would rest under
 * a surface at 0 °C is a sum of modes, each of which fades by itself. A step then is one pass, where solving for the cells takes two
 * that wait for each other. The surface itself has no mass: it lies on the first half cell.
 */
export interface Grid {
  readonly stepS: number
  readonly cells: number
  /** Heat capacity over the step, W/(m²·K). */
  readonly perStep: Float64Array
  /** Conductance above cell i (0: to the surface) and below the last one, W/(m²·K). */
  readonly conductance: Float64Array
  /** Where the cells rest under a surface at 0 °C, °C. */
  readonly restC: Float64Array
  /** Cells as modes, and back: a row for each mode and for each cell. */
  readonly toModes: readonly Float64Array[]
  readonly toCells: readonly Float64Array[]
  /** What is left of a mode after a step. */
  readonly fade: Float64Array
  /** What a mode takes on in a step for each °C of the surface. */
  readonly taken: Float64Array
  /** What a mode would give the first cell in a step, were the surface at 0 °C. */
  readonly given: Float64Array
  /** What the build-up takes from a surface, W per m² and K above where it would rest. */
  readonly downWm2K: number
  readonly insulated: boolean
}

/** The last ones made: layers come from a limits sheet and are asked for again with every question. */
const made = new WeakMap<readonly Layer[], Grid>()

/** Finite volumes for a build-up (each layer > 0…2 m) and a step in seconds (1…900), backward Euler in time. */
export function gridOf(layers: readonly Layer[], stepS: number): Grid {
  const known = made.get(layers)
  if (known?.stepS === stepS) return known
  const grid = make(layers, stepS)
  made.set(layers, grid)
  return grid
}

function make(layers: readonly Layer[], stepS: number): Grid {
  within('stepS', stepS, 1, 900)
  const cut = layers.flatMap(cellsOf)
  const n = cut.length
  within('layers', n, 1, 200)
  const insulated = layers.reduce((sum, { thicknessM, kWMK }) => sum + thicknessM / kWMK, 0) >= insulatedM2KW
  const perStep = Float64Array.from(cut, ({ thicknessM, rhoKgM3, cJKgK }) => (thicknessM * rhoKgM3 * cJKgK) / stepS)
  const half = cut.map(({ thicknessM, kWMK }) => thicknessM / 2 / kWMK)
  const conductance = new Float64Array(n + 1)
  conductance[0] = 1 / at(half, 0)
  for (let i = 1; i < n; i += 1) conductance[i] = 1 / (at(half, i - 1) + at(half, i))
  conductance[n] = insulated ? 1 / (at(half, n - 1) + ceilingM2KW) : 0
  return { stepS, cells: n, perStep, conductance, restC: restOf(conductance, insulated), insulated, ...modesOf(perStep, conductance) }
}

/** A straight line by resistance from the surface at 0 °C to the room, or 0 °C throughout where no heat comes from below. */
function restOf(conductance: Float64Array, insulated: boolean): Float64Array {
  const resistance = conductance.map((each) => (each > 0 ? 1 / each : 0))
  const total = resistance.reduce((sum, each) => sum + each, 0)
  let above = 0
  return resistance.subarray(0, -1).map((each) => {
    above += each
    return insulated ? (interiorC * above) / total : 0
  })
}

type Modes = Pick<Grid, 'toModes' | 'toCells' | 'fade' | 'taken' | 'given' | 'downWm2K'>

/** With C the capacities over the step and K the conductances: the modes of C^−½·K·C^−½, which is symmetric. */
function modesOf(perStep: Float64Array, conductance: Float64Array): Modes {
  const root = perStep.map(Math.sqrt)
  const exchanged = (i: number, j: number): number => {
    if (i === j) return at(conductance, i) + at(conductance, i + 1)
    return Math.abs(i - j) === 1 ? -at(conductance, Math.max(i, j)) : 0
  }
  const matrix = Array.from(root, (rootI, i) => root.map((rootJ, j) => exchanged(i, j) / (rootI * rootJ)))
  const { values, vectors } = eigenOf(matrix)
  const fade = values.map((value) => 1 / (1 + value))
  const above = at(conductance, 0)
  const first = Float64Array.from(vectors, (vector) => at(vector, 0) / at(root, 0))
  const given = first.map((share, k) => share * at(fade, k))
  const taken = given.map((share) => share * above)
  const ownShare = given.reduce((sum, share, k) => sum + share * at(first, k) * above, 0)
  return {
    toModes: vectors.map((vector) => vector.map((share, i) => share * at(root, i))),
    toCells: Array.from(root, (each, i) => Float64Array.from(vectors, (vector) => at(vector, i) / each)),
    fade,
    taken,
    given,
    downWm2K: above * (1 - ownShare)
  }
}

function cellsOf(layer: Layer): readonly Layer[] {
  const { thicknessM, rhoKgM3, cJKgK, kWMK } = layer
  within('thicknessM', thicknessM, 1e-6, 2)
  within('heat capacity', rhoKgM3 * cJKgK, 1, 1e8)
  within('kWMK', kWMK, 1e-4, 500)
  if (thicknessM <= thinM) return [layer]
  const first = (thicknessM * (growth - 1)) / (growth ** cellsOfLayer - 1)
  return Array.from({ length: cellsOfLayer }, (_, i) => ({ ...layer, thicknessM: first * growth ** i }))
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] as number
}
