import { latentMjKg } from '../physics/evaporation.js'
import { stefanBoltzmann } from '../physics/sky.js'
import { fadeS } from './correct.js'
import { type Drive, stepS } from './drive.js'
import { type Grid, interiorC } from './grid.js'
import type { Surface } from './surface.js'
import { vapourTable } from './vapour.js'

/** J/kg to evaporate water (as in `evaporation.ts`), and ice: fusion 0.334 MJ/kg added (from memory). */
const latentWater = latentMjKg * 1e6
const latentIce = latentWater + 0.334e6
const zeroK = 273.15
// At hand under short names: what is asked of another module in every step takes its time.
const { lowC, highC, perK, water: overWater, ice: overIce } = vapourTable
const sigma = stefanBoltzmann
const dtS = stepS
/** A last move this small, K, leaves an error of its square. */
const closeK = 2e-3
/** No roof on Earth leaves these; 60 halvings between them end in the last digit. */
const coldestC = -150
const hottestC = 450
const mostTries = 60

/** What a person told of a surface at the end of a step (−1: at the start): its temperature, or how full of water it is, 0…1. */
export interface Told {
  readonly step: number
  readonly surfaceC: number | null
  readonly filmShare: number | null
}

export interface Start {
  readonly surfaceC: number
  readonly filmMm: number
  /** Added to everything below, K. */
  readonly movedK: number
}

/** Sums over a run, for those who check it: heat in J/m² towards the surface, water in mm. */
export interface Ledger {
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
  const cellC = profile(grid, start)
  const scratch = new Float64Array(grid.cells)
  const now = new Float64Array(slots)
  const fade = Math.exp(-dtS / fadeS)
  now[at.surfaceC] = start.surfaceC + start.movedK
  now[at.filmMm] = Math.min(surface.filmMaxMm, start.filmMm)
  now[at.excessK] = 1
  let next = 0
  let nextStep = told[0]?.step ?? steps
  for (let j = -1; j < steps; j += 1) {
    if (j >= 0) {
      now[at.readK] = (now[at.readK] as number) * fade
      now[at.filmMm] = (now[at.filmMm] as number) + (drive.rainMm[j] as number)
      sweepUp(grid, cellC, scratch)
      balance(surface, grid, drive, j, scratch[0] as number, now)
      water(surface.filmMaxMm, drive.rainMm[j] as number, now)
      sweepDown(grid, cellC, scratch, now)
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
  return { surfaceC, unreadC, filmMm, ledger: ledgerOf(now) }
}

/** What a run knows at an instant, and its sums, side by side in one array: numbers that change ten thousand times cost least there. */
const at = {
  surfaceC: 0,
  shiftK: 1,
  filmMm: 2,
  kgS: 3,
  sun: 4,
  longWave: 5,
  convection: 6,
  latent: 7,
  interior: 8,
  stored: 9,
  dew: 10,
  rain: 11,
  evaporated: 12,
  runOff: 13,
  readK: 14,
  excessK: 15
} as const
const slots = 16

/** Eliminates the build-up from the bottom up: what each cell would have if the one above stood at 0 °C. */
function sweepUp({ cells, perStep, conductance, inverse }: Grid, cellC: Float64Array, beta: Float64Array): void {
  let carried = (conductance[cells] as number) * interiorC
  for (let i = cells - 1; i >= 0; i -= 1) {
    const own = ((perStep[i] as number) * (cellC[i] as number) + carried) * (inverse[i] as number)
    beta[i] = own
    carried = (conductance[i] as number) * own
  }
}

/** The temperature at which the surface's heat flows are in balance at the end of a step, and the water it then takes up or gives off. */
function balance(surface: Surface, grid: Grid, drive: Drive, j: number, beta0: number, now: Float64Array): void {
  const h = drive.hWm2K[j] as number
  const airC = drive.airC[j] as number
  const vapourPa = drive.vapourPa[j] as number
  const shiftK = now[at.shiftK] as number
  let surfaceC = now[at.surfaceC] as number
  const icy = surfaceC + shiftK < 0
  const curve = icy ? overIce : overWater
  const latent = icy ? latentIce : latentWater
  const long = surface.emissivity * sigma
  const kgPa = h / (drive.gammaPaK * latentWater)
  const most = -(now[at.filmMm] as number) / dtS
  const received = surface.absorptance * (drive.sunWm2[j] as number)
  const fromSky = surface.emissivity * (drive.skyWm2[j] as number)
  const gain = received + fromSky + h * airC + (grid.conductance[0] as number) * beta0
  const fixed = h + grid.downWm2K
  let kg = 0
  let fourth = 0
  let coldest = coldestC
  let hottest = hottestC
  // The balance falls all along: Newton closes in in two or three steps, and where the film gives out and it would jump too far, halving does.
  for (let tries = 0; tries < mostTries; tries += 1) {
    const place = (Math.min(highC, Math.max(lowC, surfaceC + shiftK)) - lowC) * perK
    const row = place | 0
    const low = curve[row] as number
    const rise = (curve[row + 1] as number) - low
    const free = kgPa * (vapourPa - low - rise * (place - row))
    const steep = free < most ? 0 : kgPa * rise * perK
    kg = Math.max(most, free)
    const tK = surfaceC + zeroK
    const cube = long * tK * tK * tK
    const left = gain - cube * tK - fixed * surfaceC + latent * kg
    if (left > 0) coldest = surfaceC
    else hottest = surfaceC
    let move = left / (4 * cube + fixed + latent * steep)
    if (!(surfaceC + move >= coldest && surfaceC + move <= hottest)) move = (coldest + hottest) / 2 - surfaceC
    surfaceC += move
    // Along the slopes just used, so that the step closes with what is booked for it.
    fourth = cube * (tK + 4 * move)
    kg = Math.max(most, kg - steep * move)
    if (move < closeK && move > -closeK) break
  }
  now[at.surfaceC] = surfaceC
  now[at.kgS] = kg
  now[at.sun] = (now[at.sun] as number) + received
  now[at.longWave] = (now[at.longWave] as number) + fromSky - fourth
  now[at.convection] = (now[at.convection] as number) + h * (airC - surfaceC)
  now[at.latent] = (now[at.latent] as number) + latent * kg
}

/** Books the water of a step; the film has its rain already. */
function water(filmMaxMm: number, rainMm: number, now: Float64Array): void {
  const change = (now[at.kgS] as number) * dtS
  const slot = change > 0 ? at.dew : at.evaporated
  const film = Math.max(0, (now[at.filmMm] as number) + change)
  const over = Math.max(0, film - filmMaxMm)
  now[slot] = (now[slot] as number) + Math.abs(change)
  now[at.rain] = (now[at.rain] as number) + rainMm
  now[at.runOff] = (now[at.runOff] as number) + over
  now[at.filmMm] = Math.min(filmMaxMm, film)
}

/** Gives every cell its new temperature, from the surface down. */
function sweepDown({ cells, perStep, conductance, alpha }: Grid, cellC: Float64Array, beta: Float64Array, now: Float64Array): void {
  let above = now[at.surfaceC] as number
  let stored = 0
  for (let i = 0; i < cells; i += 1) {
    const was = cellC[i] as number
    above = (alpha[i] as number) * above + (beta[i] as number)
    cellC[i] = above
    stored += (perStep[i] as number) * (above - was)
  }
  now[at.stored] = (now[at.stored] as number) + stored
  now[at.interior] = (now[at.interior] as number) + (conductance[cells] as number) * (interiorC - above)
}

/** What a reading was off by, fading, and no more than in step with how far the surface is from the air: of the sun's error none is left at night. */
function shift(airC: number, now: Float64Array): void {
  const excessK = Math.abs((now[at.surfaceC] as number) - airC)
  now[at.shiftK] = (now[at.readK] as number) * Math.min(1, excessK / (now[at.excessK] as number))
}

/** An excess below this tells nothing of what the reading was off by, K. Source: from memory. */
const leastExcessK = 2

function apply({ surfaceC, filmShare }: Told, filmMaxMm: number, airC: number, now: Float64Array): void {
  if (surfaceC !== null) {
    now[at.readK] = surfaceC - (now[at.surfaceC] as number)
    now[at.shiftK] = now[at.readK] as number
    now[at.excessK] = Math.max(leastExcessK, Math.abs((now[at.surfaceC] as number) - airC))
  }
  if (filmShare !== null) now[at.filmMm] = filmShare === 0 ? 0 : Math.max(now[at.filmMm] as number, filmShare * filmMaxMm)
}

function ledgerOf(now: Float64Array): Ledger {
  const sum = (slot: number) => now[slot] as number
  return {
    sunJ: sum(at.sun) * dtS,
    longWaveJ: sum(at.longWave) * dtS,
    convectionJ: sum(at.convection) * dtS,
    latentJ: sum(at.latent) * dtS,
    interiorJ: sum(at.interior) * dtS,
    storedJ: sum(at.stored) * dtS,
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
