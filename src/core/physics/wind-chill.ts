/**
 * Wind chill, °C, from air (−60…10 °C) and wind at 10 m (> 4.8…300 km/h): the index of 2001 of the US National Weather
 * Service and Environment Canada. Null where it is not defined: warmer, calmer, or out of range.
 */
export function windChillC(airC: number, windKmh: number): number | null {
  if (!(airC >= -60 && airC <= 10 && windKmh > 4.8 && windKmh <= 300)) return null
  const speed = windKmh ** 0.16
  return 13.12 + 0.6215 * airC - 11.37 * speed + 0.3965 * airC * speed
}
