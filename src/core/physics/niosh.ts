import { within } from './range.js'

/** Metabolic rate of working people, W. Source: classes of ACGIH and the OSHA Technical Manual, from memory. */
export const metabolicW = { rest: 115, light: 180, moderate: 300, heavy: 415, veryHeavy: 520 } as const

/**
 * Recommended alert limit, °C WBGT, for people not used to heat; metabolic rate 100…600 W.
 * Source: NIOSH Publication 2016-106, ch. 8: 59.9 − 14.1·log10 M.
 */
export function alertLimitC(metabolic: number): number {
  within('metabolicW', metabolic, 100, 600)
  return 59.9 - 14.1 * Math.log10(metabolic)
}

/** Recommended exposure limit, °C WBGT, for people used to heat; 100…600 W. Source: the same: 56.7 − 11.5·log10 M. */
export function exposureLimitC(metabolic: number): number {
  within('metabolicW', metabolic, 100, 600)
  return 56.7 - 11.5 * Math.log10(metabolic)
}
