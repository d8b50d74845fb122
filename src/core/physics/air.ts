import { above, within } from './range.js'
import { magnusDewPointC, saturatedIceC, saturatedWaterC, saturationIcePa, saturationWaterPa } from './saturation.js'

/**
 * The state of moist air. Relative humidity and dew point are over water at every temperature, as weather services
 * report them. Made for air of −60…60 °C, relative humidity > 0…100 %, pressure 500…1100 hPa; up to ±90 °C is
 * answered, so that a value moved by its spread still is, and beyond is a RangeError. Sources: `saturation.ts`; ASHRAE
 * Handbook—Fundamentals 2017, ch. 1, eqs. 20, 33 and 35.
 */
export interface AirInput {
  readonly airC: number
  readonly rhPct: number
  readonly pressureHpa: number
}

export interface AirState {
  readonly dewPointC: number
  /** Null at a dew point of 0 °C and above: no frost forms there. */
  readonly frostPointC: number | null
  readonly wetBulbC: number
  readonly vapourPa: number
  readonly saturationWaterPa: number
  readonly saturationIcePa: number
  /** kg of water per kg of dry air. */
  readonly humidityRatio: number
}

/** Used where the pressure of the site is not known. */
export const standardPressureHpa = 1013.25

export { saturationIcePa, saturationWaterPa }

function refuseNoAir(airC: number, rhPct: number): void {
  within('airC', airC, -90, 90)
  above('rhPct', rhPct, 0, 100)
}

/** Partial pressure of the water vapour, Pa. */
export function vapourPa(airC: number, rhPct: number): number {
  refuseNoAir(airC, rhPct)
  return (saturationWaterPa(airC) * rhPct) / 100
}

/** Below this dew point, °C, it is reckoned as weather services do; between it and 0 °C the two ways are met gradually. */
const asReportedBelowC = -2

/**
 * Dew point over water, °C; never above the air temperature. From 0 °C up by ASHRAE; below, as weather services reckon it: by
 * the Magnus form of WMO-No. 8 at both ends. The two lie up to 0.04 K apart, which is no step, as they are mixed down to −2 °C.
 */
export function dewPointC(airC: number, rhPct: number): number {
  const pa = vapourPa(airC, rhPct)
  if (rhPct === 100) return airC
  const dewC = saturatedWaterC(pa)
  if (dewC >= 0) return Math.min(airC, dewC)
  const share = Math.min(1, dewC / asReportedBelowC)
  return Math.min(airC, dewC + share * (magnusDewPointC(airC, rhPct) - dewC))
}

/** Frost point over ice, °C; null where the dew point is 0 °C or above. In air beyond ice saturation it is above the air temperature. */
export function frostPointC(airC: number, rhPct: number): number | null {
  return dewPointC(airC, rhPct) >= 0 ? null : saturatedIceC(vapourPa(airC, rhPct))
}

/** Temperature, °C, at which water settles on a surface: the dew point or, where that is below 0 °C, the frost point. */
export function condensationC(airC: number, rhPct: number): number {
  const dewC = dewPointC(airC, rhPct)
  return dewC < 0 ? saturatedIceC(vapourPa(airC, rhPct)) : dewC
}

/** Relative humidity over water, %, from air (−90…90 °C) and dew point (−110…90 °C); 100 for a dew point above the air temperature. */
export function relativeHumidityPct(airC: number, dewC: number): number {
  within('airC', airC, -90, 90)
  within('dewC', dewC, -110, 90)
  if (dewC >= airC) return 100
  let rhPct = (100 * saturationWaterPa(dewC)) / saturationWaterPa(airC)
  // The dew point below 0 °C is not quite the inverse of that curve: two steps along its slope meet it to 1e-9 %.
  for (let step = 0; dewC < 0 && step < 3; step += 1) {
    rhPct *= saturationWaterPa(dewC) / saturationWaterPa(dewPointC(airC, Math.min(100, rhPct)))
  }
  return Math.min(100, rhPct)
}

/** Humidity ratio, kg of water per kg of dry air, from vapour pressure (Pa) and total pressure (500…1100 hPa, above the vapour's). */
export function humidityRatio(vapour: number, pressureHpa: number): number {
  within('pressureHpa', pressureHpa, 500, 1100)
  within('vapourPa', vapour, 0, pressureHpa * 99)
  return (0.621945 * vapour) / (pressureHpa * 100 - vapour)
}

/**
 * Humidity ratio from a wet bulb (−110 °C … air): ASHRAE eq. 33, over ice below 0 °C eq. 35. The two differ at 0 °C; a
 * wet bulb of exactly 0 °C is of water, as ASHRAE takes it.
 */
export function humidityRatioOfWetBulb(airC: number, wetC: number, pressureHpa: number): number {
  within('airC', airC, -90, 90)
  within('wetC', wetC, -110, airC)
  return wetRatio(airC, wetC, pressureHpa, wetC >= 0)
}

function wetRatio(airC: number, wetC: number, pressureHpa: number, overWater: boolean): number {
  const saturated = humidityRatio(overWater ? saturationWaterPa(wetC) : saturationIcePa(wetC), pressureHpa)
  return overWater
    ? ((2501 - 2.326 * wetC) * saturated - 1.006 * (airC - wetC)) / (2501 + 1.86 * airC - 4.186 * wetC)
    : ((2830 - 0.24 * wetC) * saturated - 1.006 * (airC - wetC)) / (2830 + 1.86 * airC - 2.1 * wetC)
}

/**
 * Thermodynamic wet bulb, °C, over ice below 0 °C. Where both a wet and an iced bulb would fit, the wet one; in air
 * beyond ice saturation the air temperature.
 */
export function wetBulbC(airC: number, rhPct: number, pressureHpa: number): number {
  const dewC = dewPointC(airC, rhPct)
  if (rhPct === 100) return airC
  const ratio = humidityRatio(vapourPa(airC, rhPct), pressureHpa)
  const overWater = airC >= 0 && wetRatio(airC, 0, pressureHpa, true) <= ratio
  let low = overWater ? Math.max(0, dewC) : Math.max(-110, dewC)
  let high = overWater ? airC : Math.min(airC, 0)
  // The ratio rises with the wet bulb, so halving is safe; 60 halvings of at most 200 K end in the last digit.
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2
    if (wetRatio(airC, middle, pressureHpa, overWater) > ratio) high = middle
    else low = middle
  }
  return (low + high) / 2
}

/** Everything about air of one temperature, humidity and pressure. */
export function airState({ airC, rhPct, pressureHpa }: AirInput): AirState {
  const vapour = vapourPa(airC, rhPct)
  return {
    dewPointC: dewPointC(airC, rhPct),
    frostPointC: frostPointC(airC, rhPct),
    wetBulbC: wetBulbC(airC, rhPct, pressureHpa),
    vapourPa: vapour,
    saturationWaterPa: saturationWaterPa(airC),
    saturationIcePa: saturationIcePa(airC),
    humidityRatio: humidityRatio(vapour, pressureHpa)
  }
}
