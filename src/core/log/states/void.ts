import type { Instant } from '../../instant.js'
import type { VoidData } from '../data.js'
import type { Step } from './noted.js'

export interface VoidState {
  readonly number: number
  readonly state: 'open' | 'repaired' | 'passed'
  readonly found: VoidData
  readonly openedAt: Instant
  /** Times it was re-probed and failed. */
  readonly failures: number
  readonly changedAt: Instant
}

export function stepVoid(before: VoidState | null, step: Step): VoidState | null {
  if (step.type === 'void') {
    const found = step.data as unknown as VoidData
    return { number: Number(step.subject.slice('void:'.length)), state: 'open', found, openedAt: step.at, failures: 0, changedAt: step.at }
  }
  if (before === null) return null
  if (step.type === 'repair') return { ...before, state: 'repaired', changedAt: step.at }
  if (step.type !== 'probe') return before
  if (step.data.passed === true) return { ...before, state: 'passed', changedAt: step.at }
  return { ...before, state: 'open', failures: before.failures + 1, changedAt: step.at }
}
