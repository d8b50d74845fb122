import type { Shape } from './eigen.js'

/**
 * One direction of a cylinder cut into cells, from the middle (or an insulated end) to the exposed surface. Sizes are per
 * unit of the other direction: areas for the radius, lengths for the height.
 */
export interface Axis {
  readonly shape: Shape
  readonly cells: number
  readonly lengthM: number
  /** Size of each cell. */
  readonly sizes: Float64Array
  /** Between a cell and the next: heat flow per K and per conductivity, exact for a parabola, which a body in even warming is. */
  readonly links: Float64Array
  /** Surface area, and how far below it the last cell's mean stands. */
  readonly edge: number
  readonly edgeM: number
  /** Mean square distance of a cell from the middle: where a parabola has the cell's mean. */
  readonly squaresM2: Float64Array
}

/** Cells get thinner towards the surface, where the temperature bends first. */
const grading = 2
/** e-foldings in one step that are told apart. */
const mostDecay = 50

export function axisOf(shape: Shape, lengthM: number, cells: number): Axis {
  const round = shape === 'cylinder'
  const face = (index: number) => lengthM * (1 - (1 - index / cells) ** grading)
  const area = (m: number) => (round ? 2 * Math.PI * m : 1)
  const sizes = new Float64Array(cells)
  const squaresM2 = new Float64Array(cells)
  const links = new Float64Array(cells - 1)
  for (let index = 0; index < cells; index += 1) {
    const inner = face(index)
    const outer = face(index + 1)
    sizes[index] = round ? Math.PI * (outer ** 2 - inner ** 2) : outer - inner
    squaresM2[index] = round ? (outer ** 2 + inner ** 2) / 2 : (outer ** 2 + outer * inner + inner ** 2) / 3
    if (index > 0) links[index - 1] = (area(inner) * 2 * inner) / ((squaresM2[index] ?? 0) - (squaresM2[index - 1] ?? 0))
  }
  const edgeM = (lengthM ** 2 - (squaresM2[cells - 1] ?? 0)) / (2 * lengthM)
  return { shape, cells, lengthM, sizes, links, edge: area(lengthM), edgeM, squaresM2 }
}

/** How a place is read off the cells: `here` × cell `index` + `next` × the one after it. */
export interface Spot {
  readonly index: number
  readonly here: number
  readonly next: number
}

/** The middle by a parabola, any other place in a straight line. */
export function spotOf({ cells, squaresM2 }: Axis, placeM: number): Spot {
  const square = (index: number) => squaresM2[index] ?? 0
  if (placeM === 0) {
    const next = -square(0) / (square(1) - square(0))
    return { index: 0, here: 1 - next, next }
  }
  let index = 0
  while (index < cells - 2 && square(index + 1) <= placeM ** 2) index += 1
  const [near, far] = [Math.sqrt(square(index)), Math.sqrt(square(index + 1))]
  const next = (placeM - near) / (far - near)
  return { index, here: 1 - next, next }
}

/** One implicit step of an axis, factored: the same numbers serve every row of cells. */
export interface Sweep {
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly inverse: Float64Array
  /** Share of the last cell's heat capacity that the surroundings exchange. */
  readonly surround: number
  /** Surface = last cell × (1 − this) + surroundings × this: the resistance inside over that to the surroundings. */
  readonly shellShare: number
}

/**
 * Backward Euler over `stepS`, lengthened so that the slowest mode of the body decays as e^(−λt): still monotone and stable
 * at any step, and without the lag of the plain method.
 */
export function sweepOf(axis: Axis, kWMK: number, heatJM3K: number, hWM2K: number, stepS: number): Sweep {
  const { cells, sizes, links, lengthM } = axis
  const rate = (slowest(axis.shape, (hWM2K * lengthM) / kWMK) * kWMK) / (heatJM3K * lengthM ** 2)
  const paceS = Math.expm1(Math.min(rate * stepS, mostDecay)) / rate
  const toSurface = 1 / (1 / hWM2K + axis.edgeM / kWMK)
  const surround = (paceS * toSurface * axis.edge) / (heatJM3K * (sizes[cells - 1] ?? 1))
  const lower = new Float64Array(cells)
  const upper = new Float64Array(cells)
  const inverse = new Float64Array(cells)
  let before = 0
  for (let index = 0; index < cells; index += 1) {
    const perLink = (paceS * kWMK) / (heatJM3K * (sizes[index] ?? 1))
    const low = index === 0 ? 0 : perLink * (links[index - 1] ?? 0)
    const high = index === cells - 1 ? 0 : perLink * (links[index] ?? 0)
    const inverted = 1 / (1 + low + high + (index === cells - 1 ? surround : 0) - low * before)
    before = high * inverted
    lower[index] = low
    upper[index] = before
    inverse[index] = inverted
  }
  return { lower, upper, inverse, surround, shellShare: (toSurface * axis.edgeM) / kWMK }
}

/** ζ² of the slowest mode, between its limits at small and large Biot numbers; within 8 %, which the lag is not sensitive to. */
function slowest(shape: Shape, biot: number): number {
  return shape === 'cylinder' ? 1 / (1 / (2 * biot) + 1 / 2.404826 ** 2) : 1 / (1 / biot + 4 / Math.PI ** 2)
}
