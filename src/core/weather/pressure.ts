/**
 * Pressure at a height above sea level from the pressure reduced to it, hPa: the barometric formula of the standard
 * atmosphere (ISO 2533), for heights of -500 … 11000 m; sea-level pressure itself at 0 m.
 */
export function groundHpa(seaLevelHpa: number, heightM: number): number {
  return seaLevelHpa * (1 - 2.25577e-5 * heightM) ** 5.25588
}
