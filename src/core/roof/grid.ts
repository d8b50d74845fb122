import type { Layer } from '../limits/sheet.js'
import { within } from '../physics/range.js'

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
 * Cells from the top down, and what eliminating all of them from the bottom up leaves: all constant, so that a step costs two
 * passes. The surface itself has no mass: it lies on the first half cell.
 */
export interface Grid {
  readonly stepS: number
  readonly cells: number
  /** Heat capacity over the step, W/(m²·K). */
  readonly perStep: Float64Array
  /** Conductance above cell i (0: to the surface) and below the last one, W/(m²·K). */
  readonly conductance: Float64Array
  /** Share of the temperature above that a cell takes on in a step. */
  readonly alpha: Float64Array
  /** 1 ÷ the diagonal left by the elimination. */
  readonly inverse: Float64Array
  /** What the build-up takes from a surface, W per m² and K above where it would rest. */
  readonly downWm2K: number
  readonly insulated: boolean
}

/** Finite volumes for a build-up (each layer > 0…2 m) and a step in seconds (1…900), backward Euler in time. */
export function gridOf(layers: readonly Layer[], stepS: number): Grid {
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
  const { alpha, inverse } = eliminated(perStep, conductance)
  return { stepS, cells: n, perStep, conductance, alpha, inverse, downWm2K: at(conductance, 0) * (1 - at(alpha, 0)), insulated }
}

function eliminated(perStep: Float64Array, conductance: Float64Array): Pick<Grid, 'alpha' | 'inverse'> {
  const n = perStep.length
  const alpha = new Float64Array(n)
  const inverse = new Float64Array(n)
  for (let i = n - 1; i >= 0; i -= 1) {
    const below = at(conductance, i + 1)
    const kept = i === n - 1 ? 0 : below * at(alpha, i + 1)
    inverse[i] = 1 / (at(perStep, i) + at(conductance, i) + below - kept)
    alpha[i] = at(conductance, i) * at(inverse, i)
  }
  return { alpha, inverse }
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
