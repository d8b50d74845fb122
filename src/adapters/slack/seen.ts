/** Deliveries of late, so that one that comes again is not answered aloud twice. What it logs is guarded by its claim in the store. */
export interface Seen {
  /** True the first time; false while it is remembered. */
  first(claim: string | null): boolean
  /** The answer did not get out: the next delivery may try. */
  forget(claim: string | null): void
}

/** Remembers the last `count`, the oldest forgotten first. */
export function createSeen(count = 20_000): Seen {
  const claims = new Set<string>()
  return {
    first: (claim) => {
      if (claim === null) return true
      if (claims.has(claim)) return false
      claims.add(claim)
      if (claims.size > count)
        for (const oldest of claims) {
          claims.delete(oldest)
          break
        }
      return true
    },
    forget: (claim) => {
      if (claim !== null) claims.delete(claim)
    }
  }
}
