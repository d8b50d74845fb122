import type { DayState } from '../log/states/day.js'

/**
 * Substrates whose test square failed on one of the days (oldest first) with no good one since: gluing on over them is for nobody to
 * decide by the weather. A square that is not judged yet does not make a failed one good. Common practice, no source.
 */
export function failedBonds(days: readonly (Pick<DayState, 'closing'> | null)[]): readonly string[] {
  const failed = new Set<string>()
  for (const day of days) {
    for (const { value } of Object.values(day?.closing?.bonds ?? {})) {
      if (value.passed === false) failed.add(value.substrate)
      if (value.passed === true) failed.delete(value.substrate)
    }
  }
  return [...failed].sort()
}
