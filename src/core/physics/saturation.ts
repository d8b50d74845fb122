import { within } from './range.js'

/**
 * Saturation vapour pressure over water and over ice, in Pa, from °C.
 * Water at and above 0 °C, and ice: Hyland & Wexler 1983 as in ASHRAE Handbook—Fundamentals 2017, ch. 1, eqs. 5 and 6.
 * Water below 0 °C, where that formula does not hold: the Magnus form of WMO-No. 8, annex 4.B (Sonntag 1990), which is
 * what weather services report dew points by, made to meet the other at 0 °C.
 */
const kelvin = 273.15
const lnWater0 = lnWater(0)
const lnIce0 = lnIce(0)
const magnus = { b: 17.62, c: 243.12 } as const
const magnusIce = { b: 22.46, c: 272.62 } as const

/** Natural logarithm of the pressure in Pa. */
function lnWater(tC: number): number {
  const t = tC + kelvin
  return -5800.2206 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8)) + 6.5459673 * Math.log(t)
}

/** Its slope, at kelvins. */
function lnWaterPerK(t: number): number {
  return 5800.2206 / t ** 2 - 4.8640239e-2 + t * (8.3529536e-5 - t * 4.3356279e-8) + 6.5459673 / t
}

function lnIce(tC: number): number {
  const t = tC + kelvin
  const series = t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13)))
  return -5674.5359 / t + 6.3925247 + series + 4.1635019 * Math.log(t)
}

/** Saturation vapour pressure over (below 0 °C: supercooled) water, Pa; −110…200 °C, a good match to measurements down to −45 °C. */
export function saturationWaterPa(tC: number): number {
  within('tC', tC, -110, 200)
  return Math.exp(tC >= 0 ? lnWater(tC) : lnWater0 + (magnus.b * tC) / (magnus.c + tC))
}

/** By what share of itself that pressure grows with each kelvin, 1/K. */
export function saturationWaterPerK(tC: number): number {
  within('tC', tC, -110, 200)
  return tC >= 0 ? lnWaterPerK(tC + kelvin) : (magnus.b * magnus.c) / (magnus.c + tC) ** 2
}

/** Saturation vapour pressure over ice, Pa; −110…100 °C, real only up to 0 °C: above, the curve is merely continued. */
export function saturationIcePa(tC: number): number {
  within('tC', tC, -110, 100)
  return Math.exp(lnIce(tC))
}

/** °C at which vapour of a pressure (Pa, > 0 … 1.5e6) saturates over water: the inverse of `saturationWaterPa`. */
export function saturatedWaterC(pa: number): number {
  const goal = Math.log(pa)
  const ratio = goal - lnWater0
  const startC = (magnus.c * ratio) / (magnus.b - ratio)
  if (ratio < 0) return startC
  return newton(goal, startC, lnWater, lnWaterPerK)
}

/** °C at which vapour of a pressure (Pa, > 0 … 611.15) saturates over ice, never above 0: the inverse of `saturationIcePa`. */
export function saturatedIceC(pa: number): number {
  const goal = Math.log(pa)
  const ratio = goal - lnIce0
  if (ratio >= 0) return 0
  return newton(
    goal,
    (magnusIce.c * ratio) / (magnusIce.b - ratio),
    lnIce,
    (t) => 5674.5359 / t ** 2 - 9.677843e-3 + t * (1.24431402e-6 + t * (6.2243475e-9 - t * 3.7936096e-12)) + 4.1635019 / t
  )
}

/** Newton on the logarithm, nearly straight from a Magnus start: three steps reach the last digits, eight bound it. */
function newton(goal: number, startC: number, curve: (tC: number) => number, slope: (tK: number) => number): number {
  let tC = startC
  for (let step = 0; step < 8; step += 1) {
    const moveK = (goal - curve(tC)) / slope(tC + kelvin)
    tC += moveK
    if (!(Math.abs(moveK) > 1e-10)) break
  }
  return tC
}

/** Dew point, °C, by the Magnus form over water at the air's and at the dew point's end (WMO-No. 8, annex 4.B), from rh > 0…100 %. */
export function magnusDewPointC(airC: number, rhPct: number): number {
  const { b, c } = magnus
  const goal = Math.log(rhPct / 100) + (b * airC) / (c + airC)
  return (c * goal) / (b - goal)
}
