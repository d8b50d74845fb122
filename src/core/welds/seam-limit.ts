import type { Limit, LimitsSheet } from '../limits/sheet.js'
import { convert } from '../units.js'

/** What a weld must reach: robot and hand may differ; any other welder, and what either may weld, is held to the wider. */
export function seamLimit(welder: string | null, { limits }: LimitsSheet): Limit {
  const { seamWidthRobot, seamWidthHand } = limits
  if (welder === 'robot') return seamWidthRobot
  if (welder === 'hand') return seamWidthHand
  return leastMm(seamWidthRobot) >= leastMm(seamWidthHand) ? seamWidthRobot : seamWidthHand
}

/** The least width of a limit, mm; 0 where it has none. */
export function leastMm({ min, unit }: Limit): number {
  return convert(min ?? 0, unit, 'mm') ?? 0
}
