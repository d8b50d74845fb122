import type { Instant } from '../instant.js'

/** Points of what is left by which the two parts of a kit may differ before the ratio is off. Common practice, no source. */
const unevenPct = 5

/** What is left of each part of a kit, % of full. */
export interface PartsLeft {
  readonly isoPct: number
  readonly resinPct: number
}

/** Parts that empty unevenly were sprayed off ratio, whatever the foam looked like. */
export function offRatio({ isoPct, resinPct }: PartsLeft): boolean {
  return Math.abs(isoPct - resinPct) > unevenPct
}

/** A kit that was said to be empty: only of these is it known what they gave. */
export interface EmptiedKit {
  readonly usedM2: number
  readonly lot: string | null
  readonly emptiedAt: Instant
}

/** m² a kit, and of how many kits. */
export interface Yield {
  readonly m2PerKit: number
  readonly kits: number
}

/** Mean area of kits; null of none. */
export function meanYield(kits: readonly Pick<EmptiedKit, 'usedM2'>[]): Yield | null {
  if (kits.length === 0) return null
  return { m2PerKit: kits.reduce((sum, { usedM2 }) => sum + usedM2, 0) / kits.length, kits: kits.length }
}

/** Yields by whatever the kits have in common, in the order of its name; a kit without it (a lot nobody read) is left out. */
export function yieldsBy(kits: readonly EmptiedKit[], nameOf: (kit: EmptiedKit) => string | null): readonly (Yield & { readonly name: string })[] {
  const groups = new Map<string, EmptiedKit[]>()
  for (const kit of kits) {
    const name = nameOf(kit)
    if (name !== null) groups.set(name, [...(groups.get(name) ?? []), kit])
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([name, group]) => {
      const mean = meanYield(group)
      return mean === null ? [] : [{ name, ...mean }]
    })
}
