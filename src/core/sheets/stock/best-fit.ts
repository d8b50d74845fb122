interface Open {
  readonly leftUm: number
  readonly roll: number
}

/** Longest first, each into the fullest roll that still takes it: indexes of the pieces by roll. At most 11/9 of the least, and a bit. */
export function bestFit(lengthsUm: readonly number[], rollUm: number): readonly (readonly number[])[] {
  const order = lengthsUm.map((_, index) => index).sort((a, b) => (lengthsUm[b] as number) - (lengthsUm[a] as number) || a - b)
  const rolls: number[][] = []
  // Open rolls, the fullest first: kept in order, so that looking one up costs no more than the sort did.
  const open: Open[] = []
  for (const piece of order) {
    const um = lengthsUm[piece] as number
    const at = firstFrom(open, um)
    const found = open[at]
    if (found === undefined) rolls.push([])
    else open.splice(at, 1)
    const { leftUm, roll } = found ?? { leftUm: rollUm, roll: rolls.length - 1 }
    rolls[roll]?.push(piece)
    open.splice(firstFrom(open, leftUm - um), 0, { leftUm: leftUm - um, roll })
  }
  return rolls
}

/** Index of the first open roll with at least so much left. */
function firstFrom(open: readonly Open[], um: number): number {
  let [low, high] = [0, open.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((open[middle] as Open).leftUm < um) low = middle + 1
    else high = middle
  }
  return low
}
