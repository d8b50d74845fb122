import { conductivityOf, density, diffusivity, evaporationHeat, prandtl, psychrometricHeat, viscosity } from './moist-air.js'
import { lowestBeamCos } from './radiation.js'
import { above, OutOfRange, within } from './range.js'
import { saturationWaterPa } from './saturation.js'
import { blackBodyWm2 } from './sky.js'
import { windAt2mKmh } from './wbgt-wind.js'

/**
 * Weather that people stand in. Air −90…70 °C (made for warm weather: below 0 °C the wick would freeze), humidity > 0…100 %,
 * pressure 500…1100 hPa, wind at 10 m 0…300 km/h, sun on the horizontal 0…1500 W/m², share of it that is direct 0…1 (0.9 at
 * most is used, and none with the sun below 0.5°), cosine of the zenith angle −1…1.
 */
export interface WbgtInput {
  readonly airC: number
  readonly rhPct: number
  readonly pressureHpa: number
  readonly windKmh: number
  readonly sunWm2: number
  readonly directFraction: number
  readonly cosZenith: number
}

export interface WbgtState {
  readonly wbgtC: number
  readonly globeC: number
  readonly naturalWetBulbC: number
}

/** Globe of 50.8 mm and wick of 7 × 25.4 mm over ground, as Liljegren et al. have them. */
const globe = { emissivity: 0.95, albedo: 0.05, diameterM: 0.0508 } as const
const wick = { emissivity: 0.95, albedo: 0.4, diameterM: 0.007, lengthM: 0.0254 } as const
const ground = { emissivity: 0.999, albedo: 0.45 } as const
const prandtlOfGlobe = prandtl ** 0.3333
const prandtlOfWick = prandtl ** 0.44
/** Saturation in air instead of pure vapour (Buck 1981). */
const enhancement = 1.004
/** W/m²: a beam can be no stronger than the sun outside the atmosphere in January, 1367 × 1.033 (FAO-56 eq. 23). */
const strongestBeamWm2 = 1412

interface Surroundings {
  readonly airK: number
  readonly vapourHpa: number
  readonly pressureHpa: number
  readonly windMs: number
  /** Sun taken in by the globe and by the wick, from above and from the ground, W/m² of their surface. */
  readonly globeSunWm2: number
  readonly wickSunWm2: number
  /** Long-wave from sky above and ground below, mean of the two, W/m². */
  readonly longWm2: number
}

/**
 * Outdoor wet-bulb globe temperature, °C, with globe and natural wet bulb. RangeError outside `WbgtInput`, or for more direct sun
 * than there is. Source: Liljegren et al. 2008, J. Occup. Environ. Hyg. 5:645–655; the balances are solved to a billionth of a kelvin.
 */
export function wbgt(input: WbgtInput): WbgtState {
  return wbgtAt2m(at2m(input))
}

function at2m(input: WbgtInput): WbgtInput {
  return { ...input, windKmh: windAt2mKmh(input.windKmh, input.sunWm2, input.cosZenith) }
}

/**
 * Whether WBGT is at most `limitC` beyond doubt, in a fifth of the time that reckoning it takes: a globe and a wick that would lose
 * heat at temperatures which together give that limit settle below them. False says nothing. Ranges and source as `wbgt`.
 */
export function isWbgtAtMost(limitC: number, input: WbgtInput): boolean {
  const around = surroundings(at2m(input))
  const { airK } = around
  const globeK = hottestGlobe(around)
  const wickK = (limitC - 0.2 * (globeK - 273.15) - 0.1 * input.airC) / 0.7 + 273.15
  if (!(wickK > coldestWick(around) && wickK < boilsBelow(around) && globeK < airK + 250)) return false
  return globeGain(globeK, around) <= 0 && wickGain(wickK, around) <= 0
}

/** A little above where a globe settles: on a straight line from the air, and what it sends out bends below that. K. */
function hottestGlobe(around: Surroundings): number {
  const { airK } = around
  const gain = globeGain(airK, around)
  return gain <= 0 ? airK : airK + (1.01 * gain) / (gain - globeGain(airK + 1, around))
}

/** The same with `windKmh` at 2 m. */
export function wbgtAt2m(input: WbgtInput): WbgtState {
  const around = surroundings(input)
  const globeC = balanced(around.airK - 60, around.airK + 250, around.airK, (tK) => globeGain(tK, around)) - 273.15
  const hottestK = boilsBelow(around)
  const naturalWetBulbC = balanced(coldestWick(around), hottestK, Math.min(around.airK, hottestK), (tK) => wickGain(tK, around)) - 273.15
  return { wbgtC: 0.7 * naturalWetBulbC + 0.2 * globeC + 0.1 * input.airC, globeC, naturalWetBulbC }
}

function surroundings(input: WbgtInput): Surroundings {
  const { airC, rhPct, pressureHpa, windKmh, sunWm2, directFraction, cosZenith } = input
  within('airC', airC, -90, 70)
  above('rhPct', rhPct, 0, 100)
  within('pressureHpa', pressureHpa, 500, 1100)
  within('windKmh', windKmh, 0, 300)
  within('sunWm2', sunWm2, 0, 1500)
  within('directFraction', directFraction, 0, 1)
  within('cosZenith', cosZenith, -1, 1)
  const airK = airC + 273.15
  const vapourHpa = (rhPct / 100) * saturationHpa(airK)
  const longWm2 = 0.5 * (0.575 * vapourHpa ** 0.143 + ground.emissivity) * blackBodyWm2(airK)
  const direct = cosZenith < lowestBeamCos ? 0 : Math.min(0.9, directFraction)
  const beamWm2 = direct === 0 ? 0 : (direct * sunWm2) / cosZenith
  if (beamWm2 > strongestBeamWm2) {
    throw new OutOfRange(
      'directFraction',
      `directFraction ${directFraction} makes a beam of ${Math.round(beamWm2)} W/m², the sun has ${strongestBeamWm2}`
    )
  }
  const globeSunWm2 = onGlobe(sunWm2, direct, cosZenith)
  return { airK, vapourHpa, pressureHpa, windMs: Math.max(0.13, windKmh / 3.6), globeSunWm2, wickSunWm2: onWick(sunWm2, direct, cosZenith), longWm2 }
}

function onGlobe(sunWm2: number, direct: number, cos: number): number {
  const beam = direct === 0 ? 0 : direct * (1 / (2 * cos) - 1)
  return (sunWm2 / 2) * (1 - globe.albedo) * (beam + 1 + ground.albedo)
}

function onWick(sunWm2: number, direct: number, cos: number): number {
  const end = wick.diameterM / (4 * wick.lengthM)
  const beam = direct === 0 ? 0 : direct * (Math.sqrt(1 - cos ** 2) / (cos * Math.PI) + end)
  return (1 - wick.albedo) * sunWm2 * ((1 - direct) * (1 + end) + beam + ground.albedo)
}

function saturationHpa(tK: number): number {
  return (enhancement * saturationWaterPa(tK - 273.15)) / 100
}

/** Heat that a globe of `tK` gains, W/m² of its surface: sun, long-wave, convection. */
function globeGain(tK: number, { airK, pressureHpa, windMs, globeSunWm2, longWm2 }: Surroundings): number {
  const meanK = (tK + airK) / 2
  const mu = viscosity(meanK)
  const reynolds = (windMs * density(meanK, pressureHpa) * globe.diameterM) / mu
  const hWm2K = ((2 + 0.6 * Math.sqrt(reynolds) * prandtlOfGlobe) * conductivityOf(mu)) / globe.diameterM
  return globeSunWm2 + globe.emissivity * (longWm2 - blackBodyWm2(tK)) - hWm2K * (tK - airK)
}

/** The same for a wet wick, with the heat that evaporation takes. */
function wickGain(tK: number, around: Surroundings): number {
  const { airK, vapourHpa, pressureHpa, windMs, wickSunWm2, longWm2 } = around
  const meanK = (tK + airK) / 2
  const rho = density(meanK, pressureHpa)
  const mu = viscosity(meanK)
  const reynolds = (windMs * rho * wick.diameterM) / mu
  const hWm2K = (0.281 * reynolds ** 0.6 * prandtlOfWick * conductivityOf(mu)) / wick.diameterM
  const wetHpa = saturationHpa(tK)
  const schmidt = mu / (rho * diffusivity(meanK, pressureHpa))
  const coolingK = (evaporationHeat(meanK) / psychrometricHeat) * ((wetHpa - vapourHpa) / (pressureHpa - wetHpa)) * (prandtl / schmidt) ** 0.56
  return wickSunWm2 + wick.emissivity * (longWm2 - blackBodyWm2(tK)) - hWm2K * (tK - airK + coolingK)
}

/** Coldest wick to look at, K. */
function coldestWick({ airK }: Surroundings): number {
  return Math.max(165, airK - 80)
}

/** Warmest wick to look at, K: 60 K above the air, and below boiling. */
function boilsBelow({ airK, pressureHpa }: Surroundings): number {
  // Water boils at 81 °C under 500 hPa; a line from there to 100 °C at 1013 hPa stays below the true curve in between, and 100 is kept above.
  const boilingC = Math.min(100, 81 + ((pressureHpa - 500) / 513.25) * 19)
  return Math.min(airK + 60, boilingC + 272.5)
}

/** A move this small, K, is followed by one of its square or so: less than a billionth of a kelvin is left. */
const closeK = 1e-6
/** Secants are done in six or so; from here on halving, which ends in any case: 40 halvings of at most 310 K leave less than a billionth. */
const mostSecants = 20
const mostSteps = 60

/** Where a gain that falls with temperature is nought, K, between two bounds: secants from `startK` on, halving where they would leave the bounds. */
function balanced(lowK: number, highK: number, startK: number, gain: (tK: number) => number): number {
  let low = lowK
  let high = highK
  let at = startK
  let before = gain(startK)
  let moveK = before > 0 ? 1 : -1
  if (before > 0) low = startK
  else high = startK
  for (let step = 0; step < mostSteps; step += 1) {
    if (!(at + moveK > low && at + moveK < high) || step >= mostSecants) moveK = (low + high) / 2 - at
    at += moveK
    if (Math.abs(moveK) < closeK && step < mostSecants) break
    const now = gain(at)
    if (now > 0) low = at
    else high = at
    moveK *= now / (before - now)
    before = now
  }
  return at
}
