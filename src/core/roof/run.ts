import type { Drive } from './drive.js'
import { type Grid, interiorC } from './grid.js'
import { stepS } from './nodes.js'
import { apply, march, type Rows, type State, type Sums, type Told } from './step.js'
import type { Surface } from './surface.js'

export interface Start {
  readonly surfaceC: number
  readonly filmMm: number
  /** Added to everything below, K. */
  readonly movedK: number
}

/** Sums over a run, for those who check it: heat in J/m² towards the surface, water in mm. */
interface Ledger {
  readonly sunJ: number
  readonly longWaveJ: number
  readonly convectionJ: number
  readonly latentJ: number
  readonly interiorJ: number
  readonly storedJ: number
  readonly dewMm: number
  readonly rainMm: number
  readonly evaporatedMm: number
  readonly runOffMm: number
}

export interface Run extends Rows {
  readonly ledger: () => Ledger
}

/**
 * Energy and water balance of one surface: sun absorbed + sky long-wave − own long-wave + convection + latent heat = heat into
 * the build-up. Implicit in temperature, so it never swings however thin a layer is. Water comes and goes by the Lewis relation
 * with Le = 1, as FAO-56 takes it: g = h/(γ·L)·(e_air − e_s(surface)), over ice below 0 °C. It leaves only as far as there is
 * some; above `filmMaxMm` it runs off. Rain comes at the temperature of the surface; melting takes no heat; a film weighs nothing.
 * `told` (in order) shifts the surface through what was read, fading with 6 h, and sets the film to what was stated.
 * Source: outside surface heat balance as in the EnergyPlus Engineering Reference; sky and convection as named in `physics/`.
 */
export function runSurface(surface: Surface, grid: Grid, drive: Drive, start: Start, told: readonly Told[]): Run {
  const { steps } = drive
  const surfaceC = new Float64Array(steps + 1)
  const unreadC = told.some((each) => each.surfaceC !== null) ? new Float64Array(steps + 1) : surfaceC
  const rows = { surfaceC, unreadC, filmMm: new Float64Array(steps + 1) }
  const startC = profile(grid, start)
  const state = begun(surface, start, inModes(grid, startC))
  write(state, rows, 0)
  let next = 0
  for (const each of told) {
    const step = Math.min(each.step, steps - 1)
    march(surface, grid, drive, next, step + 1, state, rows)
    next = Math.max(next, step + 1)
    apply(each, surface.filmMaxMm, drive.airC[Math.max(0, step)] as number, state)
    write(state, rows, next)
  }
  march(surface, grid, drive, next, steps, state, rows)
  return { ...rows, ledger: () => ledgerOf(state.sums, heatOf(grid, startC, state, steps)) }
}

function begun(surface: Surface, start: Start, modes: Float64Array): State {
  return {
    surfaceC: start.surfaceC + start.movedK,
    filmMm: Math.min(surface.filmMaxMm, start.filmMm),
    readK: 0,
    shiftK: 0,
    excessK: 1,
    modes,
    sums: { sun: 0, longWave: 0, convection: 0, latent: 0, dew: 0, rain: 0, evaporated: 0, runOff: 0, surface: 0 }
  }
}

function write({ surfaceC, shiftK, filmMm }: State, rows: Rows, row: number): void {
  rows.unreadC[row] = surfaceC
  rows.surfaceC[row] = surfaceC + shiftK
  rows.filmMm[row] = filmMm
}

/** Cells as modes: what they differ from their rest. */
function inModes({ cells, toModes, restC }: Grid, cellC: Float64Array): Float64Array {
  const modes = new Float64Array(cells)
  for (let k = 0; k < cells; k += 1) {
    const row = toModes[k] as Float64Array
    for (let i = 0; i < cells; i += 1) modes[k] = (modes[k] as number) + (row[i] as number) * ((cellC[i] as number) - (restC[i] as number))
  }
  return modes
}

/** What the build-up stored over a run, and what came from the room below: the last cell's sum follows from those of the modes, which fade. */
function heatOf(grid: Grid, startC: Float64Array, { modes, sums: { surface: sumC } }: State, steps: number): Pick<Ledger, 'interiorJ' | 'storedJ'> {
  const { cells, perStep, conductance, toCells, restC, fade, taken } = grid
  const began = inModes(grid, startC)
  // Of m′ = fade·m + taken·C over all steps: (1 − fade)·Σm′ = fade·(m₀ − m) + taken·ΣC.
  const sums = modes.map((mode, k) => ((fade[k] as number) * ((began[k] as number) - mode) + (taken[k] as number) * sumC) / (1 - (fade[k] as number)))
  const cellOf = (cell: number, of: Float64Array) => (toCells[cell] as Float64Array).reduce((sum, share, k) => sum + share * (of[k] as number), 0)
  const stored = perStep.map((each, i) => each * ((restC[i] as number) + cellOf(i, modes) - (startC[i] as number)))
  const lastSumC = steps * (restC[cells - 1] as number) + cellOf(cells - 1, sums)
  return {
    interiorJ: (conductance[cells] as number) * (steps * interiorC - lastSumC) * stepS,
    storedJ: stored.reduce((sum, each) => sum + each, 0) * stepS
  }
}

function ledgerOf(sums: Sums, heat: Pick<Ledger, 'interiorJ' | 'storedJ'>): Ledger {
  return {
    sunJ: sums.sun * stepS,
    longWaveJ: sums.longWave * stepS,
    convectionJ: sums.convection * stepS,
    latentJ: sums.latent * stepS,
    ...heat,
    dewMm: sums.dew,
    rainMm: sums.rain,
    evaporatedMm: sums.evaporated,
    runOffMm: sums.runOff
  }
}

/** Steady heat flow between the surface and the room below, or one temperature where no heat goes down. */
function profile(grid: Grid, start: Start): Float64Array {
  const { cells, conductance } = grid
  const cellC = new Float64Array(cells)
  let resistance = 0
  const total = conductance.reduce((sum, each) => sum + (each > 0 ? 1 / each : 0), 0)
  const fall = grid.insulated ? (interiorC - start.surfaceC) / total : 0
  for (let i = 0; i < cells; i += 1) {
    resistance += 1 / (conductance[i] as number)
    cellC[i] = start.surfaceC + fall * resistance + start.movedK
  }
  return cellC
}
