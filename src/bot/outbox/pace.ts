import type { Instant } from '../../core/instant.js'

/** When a message was last posted to each channel, which workspaces are left alone, and whether a post was put off for its channel. */
export interface Pace {
  readonly last: Map<string, Instant>
  readonly pausedUntil: Map<string, Instant>
  putOff: boolean
}

/** True when a channel had its message of this second; else its second is taken. */
export function tooSoon(pace: Pace, place: string, at: Instant): boolean {
  const last = pace.last.get(place)
  // After the clock went back the last one may lie ahead: that holds nothing up.
  if (last !== undefined && at >= last && at - last < 1) {
    pace.putOff = true
    return true
  }
  pace.last.set(place, at)
  return false
}

/** Leaves a workspace alone for so many seconds. */
export function pause(pace: Pace, workspace: string, at: Instant, seconds: number): void {
  pace.pausedUntil.set(workspace, Math.max(at + seconds, pace.pausedUntil.get(workspace) ?? 0))
}
