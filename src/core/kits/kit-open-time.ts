import type { LimitsSheet } from '../limits/sheet.js'
import type { KitState } from '../log/states/kit.js'
import { openTimeS } from './open-time.js'

/** A substrate this far from that of the test spray needs a new one. From memory. */
const foamHoldsK = 5

/** Open time on this substrate, scaled by the kit's last test spray while that holds; null outside the formula's range. */
export function kitOpenTimeS(substrateC: number, kit: Pick<KitState, 'foam'>, sheet: LimitsSheet): number | null {
  const plain = openTimeS(substrateC, sheet.foam.openTime)
  return plain === null ? null : plain * (foamScale(substrateC, kit, sheet) ?? 1)
}

/**
 * Seconds of the last test spray over those of the sheet on its substrate; null when it does not hold here. Foam that was rejected may
 * shorten the time, never lengthen it.
 */
function foamScale(substrateC: number, { foam }: Pick<KitState, 'foam'>, sheet: LimitsSheet): number | null {
  const test = foam?.value
  if (!test || test.gelS === undefined || test.substrateC === undefined) return null
  if (!(Math.abs(test.substrateC - substrateC) <= foamHoldsK)) return null
  const plain = openTimeS(test.substrateC, sheet.foam.openTime)
  if (plain === null) return null
  const scale = test.gelS / plain
  return test.verdict === 'good' ? scale : Math.min(1, scale)
}
