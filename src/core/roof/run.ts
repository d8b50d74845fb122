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
  sunJ: number
  longWaveJ: number
  convectionJ: number
  latentJ: number
  interiorJ: number
  storedJ: number
  dewMm: number
  rainMm: number
  evaporatedMm: number
  runOffMm: number
}

export interface Run {
  /** At the start and at the end of each step. */
  readonly surfaceC: Float64Array
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
  const { steps, airC, vapourPa, skyWm2, sunWm2, hWm2K, rainMm, gammaPaK } = drive
  const { cells, capacity, conductance, alpha, inverse } = grid
  const { absorptance, emissivity, filmMaxMm } = surface
  const { lowC, highC, perK } = vapourTable
  const out = { surfaceC: new Float64Array(steps + 1), filmMm: new Float64Array(steps + 1), ledger: emptyLedger() }
  const { ledger } = out
  const cellC = profile(grid, start)
  const beta = new Float64Array(cells)
  const long = emissivity * stefanBoltzmann
  const g0 = conductance[0] as number
  const gBelow = conductance[cells] as number
  const down = g0 * (1 - (alpha[0] as number))
  const fade = Math.exp(-stepS / fadeS)
  let surfaceC = start.surfaceC + start.movedK
  let shiftK = 0
  let film = Math.min(filmMaxMm, start.filmMm)
  let next = 0
  for (; (told[next]?.step ?? steps) < 0; next += 1) apply(told[next] as Told)
  out.surfaceC[0] = surfaceC + shiftK
  out.filmMm[0] = film
  for (let j = 0; j < steps; j += 1) {
    shiftK *= fade
    for (let i = cells - 1; i >= 0; i -= 1) {
      const below = i === cells - 1 ? gBelow * interiorC : (conductance[i + 1] as number) * (beta[i + 1] as number)
      beta[i] = (((capacity[i] as number) / stepS) * (cellC[i] as number) + below) * (inverse[i] as number)
    }
    const h = hWm2K[j] as number
    const airNow = airC[j] as number
    const vapour = vapourPa[j] as number
    const rain = rainMm[j] as number
    film += rain
    const icy = surfaceC + shiftK < 0
    const curve = icy ? vapourTable.ice : vapourTable.water
    const latent = icy ? latentIce : latentWater
    const kgPa = h / (gammaPaK * latentWater)
    const most = -film / stepS
    const gain = absorptance * (sunWm2[j] as number) + emissivity * (skyWm2[j] as number) + h * airNow + g0 * (beta[0] as number)
    let kg = 0
    // Falling all along and bent one way on either side of the point where the film is used up: Newton closes in in two or three steps.
    for (let tries = 0; tries < 12; tries += 1) {
      const place = (Math.min(highC, Math.max(lowC, surfaceC + shiftK)) - lowC) * perK
      const row = Math.floor(place)
      const rise = (curve[row + 1] as number) - (curve[row] as number)
      kg = kgPa * (vapour - (curve[row] as number) - rise * (place - row))
      const bound = kg < most
      if (bound) kg = most
      const tK = surfaceC + zeroK
      const cube = long * tK * tK * tK
      const balance = gain - cube * tK - (h + down) * surfaceC + latent * kg
      const move = balance / (4 * cube + h + down + (bound ? 0 : latent * kgPa * rise * perK))
      surfaceC += move
      if (!(move > 1e-7 || move < -1e-7)) break
    }
    const before = film
    film = Math.max(0, film + kg * stepS)
    if (kg > 0) ledger.dewMm += film - before
    else ledger.evaporatedMm += before - film
    ledger.rainMm += rain
    if (film > filmMaxMm) {
      ledger.runOffMm += film - filmMaxMm
      film = filmMaxMm
    }
    let above = surfaceC
    for (let i = 0; i < cells; i += 1) {
      const was = cellC[i] as number
      above = (alpha[i] as number) * above + (beta[i] as number)
      cellC[i] = above
      ledger.storedJ += (capacity[i] as number) * (above - was)
    }
    ledger.sunJ += absorptance * (sunWm2[j] as number) * stepS
    ledger.longWaveJ += (emissivity * (skyWm2[j] as number) - long * (surfaceC + zeroK) ** 4) * stepS
    ledger.convectionJ += h * (airNow - surfaceC) * stepS
    ledger.latentJ += latent * kg * stepS
    ledger.interiorJ += gBelow * (interiorC - above) * stepS
    for (; told[next]?.step === j; next += 1) apply(told[next] as Told)
    out.surfaceC[j + 1] = surfaceC + shiftK
    out.filmMm[j + 1] = film
  }
  return out

  function apply({ surfaceC: read, filmShare }: Told): void {
    if (read !== null) shiftK = read - surfaceC
    if (filmShare !== null) film = filmShare === 0 ? 0 : Math.max(film, filmShare * filmMaxMm)
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

function emptyLedger(): Ledger {
  return {
    sunJ: 0, longWaveJ: 0, convectionJ: 0, latentJ: 0, interiorJ: 0, storedJ: 0, dewMm: 0, rainMm: 0, evaporatedMm: 0, runOffMm: 0
  }
}
