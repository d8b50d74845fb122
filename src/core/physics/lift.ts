import { above } from './range.js'

/** kg/m³, as EN 1991-1-4 recommends. */
const airDensity = 1.25
/** m/s², standard gravity. */
const gravity = 9.80665

/**
 * Wind, km/h, whose suction ½ρv²·|cp| equals the weight of a loose sheet of `kgM2` (> 0…100 kg/m²): from there on it
 * lifts. `cp` −10…10, not 0 (net coefficient, suction negative or given without its sign). RangeError outside.
 * Source: ½ρv² of EN 1991-1-4, eq. 4.10; the coefficient is the asker's.
 */
export function liftKmh(kgM2: number, cp: number): number {
  const suction = Math.abs(cp)
  above('kgM2', kgM2, 0, 100)
  above('cp', suction, 0, 10)
  return 3.6 * Math.sqrt((2 * kgM2 * gravity) / (airDensity * suction))
}
