import { fadeS } from '../weather/local.js'
import type { Drive } from './drive.js'
import { type Grid, interiorC } from './grid.js'
import { stepS } from './nodes.js'
import { apply, at, balance, firstCellC, settle, shift, slots, type Told, water } from './step.js'
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

export interface Run {
  /** At the start and at the end of each step. */
  readonly surfaceC: Float64Array
  /** The same without the shift of a reading. */
  readonly unreadC: Float64Array
  readonly filmMm: Float64Array
  readonly ledger: Ledger
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
  const unreadC = new Float64Array(steps + 1)
  const filmMm = new Float64Array(steps + 1)
  const startC = profile(grid, start)
  const modes = inModes(grid, startC)
  const now = new Float64Array(slots)
  const fade = Math.exp(-stepS / fadeS)
  now[at.surfaceC] = start.surfaceC + start.movedK
  now[at.filmMm] = Math.min(surface.filmMaxMm, start.filmMm)
  now[at.excessK] = 1
  let belowC = firstCellC(grid, modes)
  let next = 0
  let nextStep = told[0]?.step ?? steps
  for (let j = -1; j < steps; j += 1) {
    if (j >= 0) {
      now[at.readK] = (now[at.readK] as number) * fade
      now[at.filmMm] = (now[at.filmMm] as number) + (drive.rainMm[j] as number)
      balance(surface, grid, drive, j, belowC, now)
      water(surface.filmMaxMm, drive.rainMm[j] as number, now)
      belowC = settle(grid, modes, now)
      shift(drive.airC[j] as number, now)
    }
    while (nextStep <= j) {
      apply(told[next] as Told, surface.filmMaxMm, drive.airC[Math.max(0, j)] as number, now)
      next += 1
      nextStep = told[next]?.step ?? steps
    }
    unreadC[j + 1] = now[at.surfaceC] as number
    surfaceC[j + 1] = (now[at.surfaceC] as number) + (now[at.shiftK] as number)
    filmMm[j + 1] = now[at.filmMm] as number
  }
  return { surfaceC, unreadC, filmMm, ledger: ledgerOf(now, heatOf(grid, startC, modes, now[at.sumC] as number, steps)) }
}

/** Cells as modes: what they differ from their rest. */
function inModes({ toModes, restC }: Grid, cellC: Float64Array): Float64Array {
  return Float64Array.from(toModes, (row) => row.reduce((sum, share, i) => sum + share * ((cellC[i] as number) - (restC[i] as number)), 0))
}

/** What the build-up stored over a run, and what came from the room below: the last cell's sum follows from those of the modes, which fade. */
function heatOf(grid: Grid, startC: Float64Array, modes: Float64Array, sumC: number, steps: number): Pick<Ledger, 'interiorJ' | 'storedJ'> {
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

function ledgerOf(now: Float64Array, heat: Pick<Ledger, 'interiorJ' | 'storedJ'>): Ledger {
  const sum = (slot: number) => now[slot] as number
  return {
    sunJ: sum(at.sun) * stepS,
    longWaveJ: sum(at.longWave) * stepS,
    convectionJ: sum(at.convection) * stepS,
    latentJ: sum(at.latent) * stepS,
    ...heat,
    dewMm: sum(at.dew),
    rainMm: sum(at.rain),
    evaporatedMm: sum(at.evaporated),
    runOffMm: sum(at.runOff)
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
