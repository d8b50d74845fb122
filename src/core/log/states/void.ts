import type { Instant } from '../../instant.js'
import type { RepairData, RepairStep } from '../closing-data.js'
import type { VoidData } from '../data.js'
import type { Step } from './noted.js'
import { noPhotos, type Photos, stepPhotos } from './photos.js'

export interface VoidState {
  readonly number: number
  readonly state: 'open' | 'repaired' | 'passed'
  readonly found: VoidData
  readonly openedAt: Instant
  /** Times it was re-probed and failed. */
  readonly failures: number
  readonly changedAt: Instant
  /** The last repair. Absent before the first: states folded by earlier versions have none. */
  readonly repair?: { readonly at: Instant; readonly steps: readonly RepairStep[]; readonly patched: boolean }
  /** The last probe passed it warm. Absent where it did not, or nobody could tell: earlier versions noted none. */
  readonly warm?: true
  /** Absent while no photo was named. */
  readonly pictures?: Photos
}

export function stepVoid(before: VoidState | null, step: Step): VoidState | null {
  const next = moved(before, step)
  if (next === null) return null
  const pictures = stepPhotos(next.pictures ?? noPhotos, step)
  return pictures === (next.pictures ?? noPhotos) ? next : { ...next, pictures }
}

function moved(before: VoidState | null, step: Step): VoidState | null {
  if (step.type === 'void') {
    const found = step.data as unknown as VoidData
    return { number: Number(step.subject.slice('void:'.length)), state: 'open', found, openedAt: step.at, failures: 0, changedAt: step.at }
  }
  if (before === null) return null
  if (step.type === 'repair') return { ...before, state: 'repaired', changedAt: step.at, ...repairOf(step) }
  if (step.type !== 'probe') return before
  if (step.data.passed === true) return { ...before, state: 'passed', changedAt: step.at, ...(step.data.warm === true && { warm: true }) }
  return { ...before, state: 'open', failures: before.failures + 1, changedAt: step.at }
}

/** A repair of which nothing was told leaves nothing: so it was before more could be told. */
function repairOf({ data, at }: Step): Pick<VoidState, 'repair'> | null {
  const { steps = [], patched = false } = data as RepairData
  return steps.length === 0 && !patched ? null : { repair: { at, steps, patched } }
}
