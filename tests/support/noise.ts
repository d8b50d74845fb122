/** Numbers in (0, 1) that are the same every time. */
export function random(seed: number): () => number {
  let state = seed * 2654435761
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4294967296
  }
}

/** Of mean 0 and standard deviation 1 (Box and Muller). */
export function normal(next: () => number): number {
  return Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next())
}

/** Hour by hour, one standard deviation wide, forgotten with a time constant of `lastH` hours. */
export function errors(count: number, next: () => number, lastH = 12): readonly number[] {
  const keep = Math.exp(-1 / lastH)
  const out = [normal(next)]
  while (out.length < count) out.push((out.at(-1) as number) * keep + Math.sqrt(1 - keep ** 2) * normal(next))
  return out
}
