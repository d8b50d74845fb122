import { failedBonds } from '../../core/closing/failed-bonds.js'
import type { Memory } from '../../core/gather/memory.js'

/** Substrates on which the last test square failed, for answers about gluing; nothing where there is none. */
export function bondNumbers({ yesterday, today }: Pick<Memory, 'yesterday' | 'today'>): { readonly bondFailed?: readonly string[] } {
  const failed = failedBonds([yesterday, today])
  return failed.length === 0 ? {} : { bondFailed: failed }
}
