import { within } from './range.js'

/**
 * Heat that moving air takes from a rough horizontal surface, W/(m²·K), from the wind over the roof itself, km/h (0…300).
 * Source: McAdams, Heat Transmission, 3rd ed. 1954: h = 5.7 + 3.8·V, V in m/s (title and range from memory). Made for winds up
 * to 5 m/s; beyond, the straight line is continued and takes off a little too much: a surface seems nearer to the air than it is.
 */
export function convectionWm2K(windKmh: number): number {
  within('windKmh', windKmh, 0, 300)
  return 5.7 + (3.8 * windKmh) / 3.6
}

/** Exponent and boundary-layer height, m, of open country, where stations stand, and of rough, wooded or suburban land. */
const open = { exponent: 0.14, layerM: 270 } as const
const rough = { exponent: 0.22, layerM: 370 } as const

/**
 * Wind over a roof, km/h, from the wind at 10 m of a forecast or station (0…300 km/h) and the height of the roof (0…370 m;
 * taken as 2 m at least). In suburbs or woods; a roof in the open gets more.
 * Source: EnergyPlus Engineering Reference, "Climate Calculations" (ASHRAE Handbook—Fundamentals 2005).
 */
export function windAtRoofKmh(windKmh: number, heightM: number): number {
  within('windKmh', windKmh, 0, 300)
  within('heightM', heightM, 0, rough.layerM)
  return windKmh * (open.layerM / 10) ** open.exponent * (Math.max(2, heightM) / rough.layerM) ** rough.exponent
}
