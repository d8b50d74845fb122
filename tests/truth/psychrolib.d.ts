declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number
    SetUnitSystem(system: number): void
    /** °C → Pa; over ice up to 0.01 °C. */
    GetSatVapPres(dryBulbC: number): number
    /** °C, 0…1, Pa. */
    GetTDewPointFromRelHum(dryBulbC: number, relHum: number): number
    GetTWetBulbFromRelHum(dryBulbC: number, relHum: number, pressurePa: number): number
    GetHumRatioFromRelHum(dryBulbC: number, relHum: number, pressurePa: number): number
    GetHumRatioFromTWetBulb(dryBulbC: number, wetBulbC: number, pressurePa: number): number
  }
  const psychrolib: Psychrolib
  export default psychrolib
}
