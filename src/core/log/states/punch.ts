import type { Instant } from '../../instant.js'
import type { PunchData } from '../closing-data.js'
import type { Step } from './noted.js'
import { noPhotos, type Photos, stepPhotos } from './photos.js'

/** One thing that is left to mend before the roof is handed over. */
export interface PunchState {
  readonly number: number
  readonly text: string
  readonly state: 'open' | 'done'
  readonly openedAt: Instant
  readonly changedAt: Instant
  readonly pictures: Photos
}

export function stepPunch(before: PunchState | null, step: Step): PunchState | null {
  const next = moved(before, step)
  return next === null ? null : { ...next, pictures: stepPhotos(next.pictures, step) }
}

function moved(before: PunchState | null, { type, subject, data, at }: Step): PunchState | null {
  const { text, done } = data as PunchData
  if (type === 'note' && before === null && text !== undefined)
    return { number: Number(subject.slice('punch:'.length)), text, state: 'open', openedAt: at, changedAt: at, pictures: noPhotos }
  if (before === null || type !== 'note' || done === undefined) return before
  return { ...before, state: done ? 'done' : 'open', changedAt: at }
}
