import { latentMjKg } from '../physics/evaporation.js'
import { stefanBoltzmann } from '../physics/sky.js'
import type { Drive } from './drive.js'
import type { Grid } from './grid.js'
import { stepS } from './nodes.js'
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

/** What a run knows at an instant, and its sums, side by side in one array: numbers that change ten thousand times cost least there. */
export const at = {
  surfaceC: 0,
  shiftK: 1,
  filmMm: 2,
  kgS: 3,
  sun: 4,
  longWave: 5,
  convection: 6,
  latent: 7,
  sumC: 8,
  dew: 9,
  rain: 10,
  evaporated: 11,
  runOff: 12,
  readK: 13,
  excessK: 14
} as const
export const slots = 15

/** What the first cell would have at the end of a step, were the surface at 0 °C. */
export function firstCellC({ cells, given, restC }: Grid, modes: Float64Array): number {
  let sum = restC[0] as number
  for (let k = 0; k < cells; k += 1) sum += (given[k] as number) * (modes[k] as number)
  return sum
}

/** The temperature at which the surface's heat flows are in balance at the end of a step, and the water it then takes up or gives off. */
export function balance(surface: Surface, grid: Grid, drive: Drive, j: number, beta0: number, now: Float64Array): void {
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
export function water(filmMaxMm: number, rainMm: number, now: Float64Array): void {
  const change = (now[at.kgS] as number) * dtS
  const slot = change > 0 ? at.dew : at.evaporated
  const film = Math.max(0, (now[at.filmMm] as number) + change)
  const over = Math.max(0, film - filmMaxMm)
  now[slot] = (now[slot] as number) + Math.abs(change)
  now[at.rain] = (now[at.rain] as number) + rainMm
  now[at.runOff] = (now[at.runOff] as number) + over
  now[at.filmMm] = Math.min(filmMaxMm, film)
}

/** Takes every mode through a step that ends with the surface as it is now; what `firstCellC` then is for the next one. */
export function settle({ cells, fade, taken, given, restC }: Grid, modes: Float64Array, now: Float64Array): number {
  const surfaceC = now[at.surfaceC] as number
  let sum = restC[0] as number
  for (let k = 0; k < cells; k += 1) {
    const mode = (fade[k] as number) * (modes[k] as number) + (taken[k] as number) * surfaceC
    modes[k] = mode
    sum += (given[k] as number) * mode
  }
  now[at.sumC] = (now[at.sumC] as number) + surfaceC
  return sum
}

/** What a reading was off by, fading, and no more than in step with how far the surface is from the air: of the sun's error none is left at night. */
export function shift(airC: number, now: Float64Array): void {
  const excessK = Math.abs((now[at.surfaceC] as number) - airC)
  now[at.shiftK] = (now[at.readK] as number) * Math.min(1, excessK / (now[at.excessK] as number))
}

/** An excess below this tells nothing of what the reading was off by, K. Source: from memory. */
const leastExcessK = 2

export function apply({ surfaceC, filmShare }: Told, filmMaxMm: number, airC: number, now: Float64Array): void {
  if (surfaceC !== null) {
    now[at.readK] = surfaceC - (now[at.surfaceC] as number)
    now[at.shiftK] = now[at.readK] as number
    now[at.excessK] = Math.max(leastExcessK, Math.abs((now[at.surfaceC] as number) - airC))
  }
  if (filmShare !== null) now[at.filmMm] = filmShare === 0 ? 0 : Math.max(now[at.filmMm] as number, filmShare * filmMaxMm)
}
