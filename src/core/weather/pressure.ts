/**
 * Air pressure at the ground, hPa, from that reduced to sea level: p₀ × (1 − 2.25577·10⁻⁵ h)^5.25588, the standard
 * atmosphere (ISO 2533, constants from memory). Height −500…9000 m above the sea; null outside.
 */
export function groundHpa(seaLevelHpa: number, heightM: number): number | null {
  if (!(heightM >= -500 && heightM <= 9000)) return null
  return seaLevelHpa * (1 - 2.25577e-5 * heightM) ** 5.25588
}
