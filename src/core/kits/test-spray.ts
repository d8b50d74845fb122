import type { FoamSign, FoamVerdict } from '../log/data.js'

/**
 * What a test spray says: dark or brittle is rich in isocyanate, soft or tacky rich in resin, streaks means stop, flat or a
 * gel slower than half as long again as the sheet's open time is cold. Both kinds of rich at once: stop. From memory.
 */
export function judgeTestSpray(signs: readonly FoamSign[], gelS: number | null, openTimeS: number | null): FoamVerdict {
  const has = (...any: readonly FoamSign[]) => any.some((sign) => signs.includes(sign))
  const isoRich = has('dark', 'brittle')
  const resinRich = has('soft', 'tacky')
  if (has('streaks') || (isoRich && resinRich)) return 'stop'
  if (isoRich) return 'iso-rich'
  if (resinRich) return 'resin-rich'
  const slow = gelS !== null && openTimeS !== null && gelS > 1.5 * openTimeS
  return slow || has('flat') ? 'cold' : 'good'
}
