/** A clock that all processes of a campaign share: it starts at an instant and runs faster than ours. */
export interface SharedClock {
  readonly from: number
  readonly realMs: number
  readonly speed: number
  /** Epoch seconds. */
  now(): number
}

/** Tomorrow at 05:25 UTC: a request from the future is taken, one from the past is not. */
export function sharedClock(speed: number): SharedClock {
  const realMs = Date.now()
  const from = (Math.floor(realMs / 86_400_000) + 1) * 86_400 + 5 * 3600 + 25 * 60
  return { from, realMs, speed, now: () => Math.floor(from + ((Date.now() - realMs) / 1000) * speed) }
}
