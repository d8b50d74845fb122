import type { FoamSign, FoamVerdict } from '../log/data.js'
import type { OpenTimePoint } from './open-time.js'

/** Between which open times the foam may be: both the same where the substrate is known. */
export interface OpenTimeRange {
  readonly fastestS: number
  readonly slowestS: number
}

/** Of a substrate whose temperature is not known: from the quickest to the slowest of the limits sheet. */
export function anyOpenTime(points: readonly OpenTimePoint[]): OpenTimeRange {
  const seconds = points.map(({ s }) => s)
  return { fastestS: Math.min(...seconds), slowestS: Math.max(...seconds) }
}

/**
 * What a test spray says: dark or brittle is rich in isocyanate, soft or tacky rich in resin, streaks means stop, flat or a
 * gel slower than half as long again as the sheet's open time is cold, one in less than a third of it no good test. Both kinds of rich at
 * once: stop. From memory; the third is invented.
 */
export function judgeTestSpray(signs: readonly FoamSign[], gelS: number | null, open: OpenTimeRange | null): FoamVerdict {
  const has = (...any: readonly FoamSign[]) => any.some((sign) => signs.includes(sign))
  const isoRich = has('dark', 'brittle')
  const resinRich = has('soft', 'tacky')
  if (has('streaks') || (isoRich && resinRich)) return 'stop'
  if (isoRich) return 'iso-rich'
  if (resinRich) return 'resin-rich'
  if (gelS !== null && open !== null && gelS < open.fastestS / 3) return 'fast'
  const slow = gelS !== null && open !== null && gelS > 1.5 * open.slowestS
  return slow || has('flat') ? 'cold' : 'good'
}
