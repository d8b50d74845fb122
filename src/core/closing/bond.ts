import type { BondData } from '../log/closing-data.js'

export type BondWhy = 'face' | 'weak' | 'uncured' | 'untold'

/**
 * Is a test square good? Foam on both faces, torn fleece or torn facer: the foam holds better than what it holds. A clean face: it
 * never held. Less than the designer wants fails too; not cured or not told where it broke is not judged. Common practice, no source.
 */
export function judgeBond(square: Pick<BondData, 'broke' | 'forceN' | 'wantedN'> & { readonly cured: boolean }): {
  readonly passed: boolean | null
  readonly why: BondWhy | null
} {
  const { broke, forceN, wantedN, cured } = square
  if (!cured) return { passed: null, why: 'uncured' }
  if (broke === 'face') return { passed: false, why: 'face' }
  if (forceN !== undefined && wantedN !== undefined && forceN < wantedN) return { passed: false, why: 'weak' }
  return broke === null ? { passed: null, why: 'untold' } : { passed: true, why: null }
}

/** Stress in kPa of a force (N) on a square of a side (mm); null where either is not known. 1 N/mm² is 1000 kPa. */
export function kiloPascal(forceN: number | null, sideMm: number | null): number | null {
  return forceN === null || sideMm === null || !(sideMm > 0) ? null : (forceN / (sideMm * sideMm)) * 1000
}
