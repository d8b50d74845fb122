/** Pieces of one size, whole µm. */
export interface Size {
  readonly um: number
  readonly count: number
}

/**
 * At least so many rolls, by Martello & Toth's second bound (Knapsack Problems, 1990, 8.3): for each α ≤ C/2, pieces above C − α
 * have a roll each, the other ones above C/2 too, and what of the rest from α on does not fit beside these needs more. `sizes`
 * largest first, none above the roll C; one pass from the smallest α to the largest.
 */
export function leastRolls(sizes: readonly Size[], rollUm: number): number {
  const half = rollUm / 2
  const large = sizes.filter(({ um, count }) => count > 0 && um > half)
  const small = sizes.filter(({ um, count }) => count > 0 && um <= half)
  const atLeast = large.reduce((sum, { count }) => sum + count, 0)
  let [besideUm, restUm] = [large.reduce((sum, size) => sum + roomBeside(size, rollUm), 0), totalUm(small)]
  let [best, next] = [atLeast + wholeRolls(restUm - besideUm, rollUm), 0]
  for (let index = small.length - 1; index >= 0; index--) {
    const { um, count } = small[index] as Size
    for (; next < large.length && (large[next] as Size).um > rollUm - um; next++) besideUm -= roomBeside(large[next] as Size, rollUm)
    best = Math.max(best, atLeast + wholeRolls(restUm - besideUm, rollUm))
    restUm -= um * count
  }
  return best
}

function totalUm(sizes: readonly Size[]): number {
  return sizes.reduce((sum, { um, count }) => sum + um * count, 0)
}

function roomBeside({ um, count }: Size, rollUm: number): number {
  return count * (rollUm - um)
}

function wholeRolls(um: number, rollUm: number): number {
  return Math.max(0, Math.ceil(um / rollUm))
}
