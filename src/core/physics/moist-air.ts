/**
 * How moist air carries heat and vapour, SI, temperatures in kelvin: what a heat balance of globe and wick needs.
 * Source: Liljegren et al. 2008, J. Occup. Environ. Hyg. 5:645–655, after Bird, Stewart & Lightfoot, Transport Phenomena.
 * For air of about 180…350 K; callers check the range.
 */
const airKgKmol = 28.97
const waterKgKmol = 18.015
/** Gas constant of dry air, J/(kg·K). */
const gasConstant = 8314.34 / airKgKmol
/** Specific heat of air, J/(kg·K). */
const airHeat = 1003.5
export const prandtl = airHeat / (airHeat + 1.25 * gasConstant)
/** Specific heat of air × the ratio of the molar masses of air and water, J/(kg·K). */
export const psychrometricHeat = (airHeat * airKgKmol) / waterKgKmol

/** Dynamic viscosity, Pa·s (Chapman–Enskog). */
export function viscosity(tK: number): number {
  const omega = ((tK / 97 - 2.9) / 0.4) * -0.034 + 1.048
  return (2.6693e-6 * Math.sqrt(airKgKmol * tK)) / (3.617 ** 2 * omega)
}

/** Thermal conductivity, W/(m·K), of air of a viscosity (Eucken). */
export function conductivityOf(viscosityPaS: number): number {
  return (airHeat + 1.25 * gasConstant) * viscosityPaS
}

const critical = { airK: 132, waterK: 647.3, airAtm: 36.4, waterAtm: 218 } as const
const rootOfKelvins = Math.sqrt(critical.airK * critical.waterK)
const pressures = (critical.airAtm * critical.waterAtm) ** (1 / 3)
const temperatures = (critical.airK * critical.waterK) ** (5 / 12)
const masses = Math.sqrt(1 / airKgKmol + 1 / waterKgKmol)

/** Diffusivity of water vapour in air, m²/s (Slattery & Bird); pressure in hPa. */
export function diffusivity(tK: number, pressureHpa: number): number {
  const reducedT = tK / rootOfKelvins
  return ((3.64e-4 * reducedT ** 2.334 * pressures * temperatures * masses) / (pressureHpa / 1013.25)) * 1e-4
}

/** Density, kg/m³; pressure in hPa. */
export function density(tK: number, pressureHpa: number): number {
  return (pressureHpa * 100) / (gasConstant * tK)
}

/** Heat of evaporation, J/kg (a line through table values of 283…313 K). */
export function evaporationHeat(tK: number): number {
  return ((313.15 - tK) / 30) * -71_100 + 2.4073e6
}
