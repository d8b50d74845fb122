import type { KitState } from '../../core/log/states/kit.js'
import { type KitSurroundings, timesOfKit } from './kit-times.js'

/** Minutes from the reading of a kit that is still too cold until it is ready, by the slow bound; null for any other kit. */
export function warmMinOf(kit: KitState, around: KitSurroundings): number | null {
  const { readyAt } = timesOfKit(kit, around)
  const readAt = Math.min(...[kit.isoC, kit.resinC].flatMap((part) => part?.at ?? []))
  return readyAt === null || !(readyAt > around.now) || !Number.isFinite(readAt) ? null : (readyAt - readAt) / 60
}
