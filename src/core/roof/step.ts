import { latentMjKg } from '../physics/evaporation.js'
import { stefanBoltzmann } from '../physics/sky.js'
import { fadeS } from '../weather/local.js'
import type { Drive } from './drive.js'
import type { Grid } from './grid.js'
import { stepS } from './nodes.js'
import type { Surface } from './surface.js'
import { vapourTable } from './vapour.js'

/** J/kg to evaporate water (as in `evaporation.ts`), and ice: fusion 0.334 MJ/kg added (from memory). */
const latentWater = latentMjKg * 1e6
const latentIce = latentWater + 0.334e6
const zeroK = 273.15
const { lowC, highC, perK, water: overWater, ice: overIce } = vapourTable
/** What a step leaves of what a reading was off by. */
const fade = Math.exp(-stepS / fadeS)
/**
 * A last move this small, K, leaves less than a ten-thousandth of a kelvin: the long-wave bends by 2e-3 of the move's square, and the
 * table's slope changes by a hundredth from one row to the next.
 */
const closeK = 0.02
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

/** What a run knows at an instant. */
export interface State {
  /** Without the shift of a reading. */
  surfaceC: number
  filmMm: number
  /** What a reading was off by, fading; how much of it counts now; how far the surface was from the air when it was read. */
  readK: number
  shiftK: number
  excessK: number
  /** Of the build-up, see `Grid`. */
  readonly modes: Float64Array
  readonly sums: Sums
}

/** Over the steps so far: heat towards the surface, W/m²; water, mm; and the temperature of the surface itself, °C. */
export interface Sums {
  sun: number
  longWave: number
  convection: number
  latent: number
  dew: number
  rain: number
  evaporated: number
  runOff: number
  surface: number
}

/** A row for the start and one for the end of each step. */
export interface Rows {
  readonly surfaceC: Float64Array
  /** The same without the shift of a reading; the same array where there is none. */
  readonly unreadC: Float64Array
  readonly filmMm: Float64Array
}

/**
 * Takes a run through the steps [from, to). In each the rain comes, then the temperature is found at which the heat flows are in
 * balance at its end, the water it takes up or gives off is booked, and the build-up follows.
 */
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: an answer goes through it ten thousand times, and in parts it takes twice as long
export function march(surface: Surface, grid: Grid, drive: Drive, from: number, to: number, state: State, rows: Rows): void {
  const { airC, vapourPa, skyWm2, sunWm2, hWm2K, rainMm, gammaPaK } = drive
  const { cells, given, taken, fade: fades, conductance, downWm2K } = grid
  const { absorptance, emissivity, filmMaxMm } = surface
  const { modes, excessK } = state
  const above = conductance[0] as number
  const restC = grid.restC[0] as number
  const long = emissivity * stefanBoltzmann
  const perPaK = gammaPaK * latentWater
  let { surfaceC, filmMm, readK, shiftK } = state
  let { sun, longWave, convection, latent: latentHeat, dew, rain, evaporated, runOff, surface: sumC } = state.sums
  // What the first cell would have at the end of a step, were the surface at 0 °C.
  let belowC = restC
  for (let k = 0; k < cells; k += 1) belowC += (given[k] as number) * (modes[k] as number)
  let lastMoveK = 0
  for (let j = from; j < to; j += 1) {
    const h = hWm2K[j] as number
    const air = airC[j] as number
    const vapour = vapourPa[j] as number
    const icy = surfaceC + shiftK < 0
    const curve = icy ? overIce : overWater
    const latent = icy ? latentIce : latentWater
    const fell = rainMm[j] as number
    filmMm += fell
    readK *= fade
    const kgPa = h / perPaK
    const most = -filmMm / stepS
    const received = absorptance * (sunWm2[j] as number)
    const fromSky = emissivity * (skyWm2[j] as number)
    const gain = received + fromSky + h * air + above * belowC
    const fixed = h + downWm2K
    const beganC = surfaceC
    // Most steps go on as the last one went, so that one look at the balance is enough.
    surfaceC += lastMoveK
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
      const free = kgPa * (vapour - low - rise * (place - row))
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
    lastMoveK = surfaceC - beganC
    const change = kg * stepS
    const film = Math.max(0, filmMm + change)
    if (change > 0) dew += change
    else evaporated -= change
    runOff += Math.max(0, film - filmMaxMm)
    rain += fell
    filmMm = Math.min(filmMaxMm, film)
    sun += received
    longWave += fromSky - fourth
    convection += h * (air - surfaceC)
    latentHeat += latent * kg
    sumC += surfaceC
    belowC = restC
    for (let k = 0; k < cells; k += 1) {
      const mode = (fades[k] as number) * (modes[k] as number) + (taken[k] as number) * surfaceC
      modes[k] = mode
      belowC += (given[k] as number) * mode
    }
    // No more than in step with how far the surface is from the air: of the sun's error none is left at night.
    shiftK = readK * Math.min(1, Math.abs(surfaceC - air) / excessK)
    rows.unreadC[j + 1] = surfaceC
    rows.surfaceC[j + 1] = surfaceC + shiftK
    rows.filmMm[j + 1] = filmMm
  }
  Object.assign(state, { surfaceC, filmMm, readK, shiftK })
  Object.assign(state.sums, { sun, longWave, convection, latent: latentHeat, dew, rain, evaporated, runOff, surface: sumC })
}

/** An excess below this tells nothing of what the reading was off by, K. Source: from memory. */
const leastExcessK = 2

/** A surface is what was read of it, and as wet as was stated, in air of `airC`. */
export function apply({ surfaceC, filmShare }: Told, filmMaxMm: number, airC: number, state: State): void {
  if (surfaceC !== null) {
    state.readK = surfaceC - state.surfaceC
    state.shiftK = state.readK
    state.excessK = Math.max(leastExcessK, Math.abs(state.surfaceC - airC))
  }
  if (filmShare !== null) state.filmMm = filmShare === 0 ? 0 : Math.max(state.filmMm, filmShare * filmMaxMm)
}
