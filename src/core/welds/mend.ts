import type { VoidData } from '../log/data.js'

/** Longer than this a void is not welded again but covered; from memory, the manufacturer's sheet comes first. */
const weldUpToMm = 150
/** How far a patch passes the void all round; from memory. */
const patchPastMm = 75
/** How far past the void it is probed again on either side; from memory. */
const probePastMm = 50

export type MendWhy = 'char' | 'failed' | 'long' | 'foam'

export interface Mend {
  /** `cut-and-patch`: foam cured in the lap comes out first. */
  readonly how: 'weld' | 'patch' | 'cut-and-patch'
  readonly why: MendWhy | null
  /** Length of the patch along the seam; null where it is welded. */
  readonly patchMm: number | null
  /** Length that is probed again. */
  readonly probeMm: number
}

/**
 * How a void is mended: lifted, cleaned, dried and re-heated, or covered by a patch where it is charred, longer than 150 mm or
 * failed again after a repair; where foam cured in the lap it is cut out and patched. Common practice; lengths from memory.
 * `failures`: re-probes that failed, 0 and up.
 */
export function mendOf({ lengthMm, causes }: Pick<VoidData, 'lengthMm' | 'causes'>, failures: number): Mend {
  const why = whyPatch(lengthMm, causes, failures)
  const probeMm = lengthMm + 2 * probePastMm
  if (why === null) return { how: 'weld', why, patchMm: null, probeMm }
  return { how: why === 'foam' ? 'cut-and-patch' : 'patch', why, patchMm: lengthMm + 2 * patchPastMm, probeMm }
}

function whyPatch(lengthMm: number, causes: VoidData['causes'], failures: number): MendWhy | null {
  if (causes.includes('foam')) return 'foam'
  if (causes.includes('scorched')) return 'char'
  if (failures >= 1) return 'failed'
  return lengthMm > weldUpToMm ? 'long' : null
}
