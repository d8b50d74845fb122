/** A bucket a channel: null when a post may go, else the whole seconds to wait. */
export function createRate(now: () => number, perS: number, burst: number): (channel: string) => number | null {
  const buckets = new Map<string, { left: number; at: number }>()
  return (channel) => {
    const bucket = buckets.get(channel) ?? { left: burst, at: now() }
    const left = Math.min(burst, bucket.left + ((now() - bucket.at) / 1000) * perS)
    const may = left >= 1
    buckets.set(channel, { left: may ? left - 1 : left, at: now() })
    return may ? null : Math.max(1, Math.ceil((1 - left) / perS))
  }
}
