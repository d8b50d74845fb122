import type { Instant } from '../../instant.js'
import type { BondData, FireData, SealData } from '../closing-data.js'
import { type Noted, noteAll, type Step } from './noted.js'
import { noPhotos, type Photos, stepPhotos } from './photos.js'

type SealNoted = { readonly [K in Exclude<keyof SealData, 'files'>]?: Noted<NonNullable<SealData[K]>> }

/** What was said of closing a day up: test squares by substrate, night seal, fire watch, their photos. */
export interface Closing {
  readonly bonds: Readonly<Record<string, Noted<BondData>>>
  readonly seal: SealNoted
  readonly fire: {
    /** Heat that no coupon and no laid metres tell of: a repair, an unjudged coupon, or stated. */
    readonly heatAt: Instant | null
    readonly watchMin: number | null
    readonly doneAt: Instant | null
    readonly by: string | null
  }
  readonly pictures: Photos
}

export const emptyClosing: Closing = { bonds: {}, seal: {}, fire: { heatAt: null, watchMin: null, doneAt: null, by: null }, pictures: noPhotos }

const sealKeys: ReadonlySet<string> = new Set(['openEdgeM', 'method', 'drainsOpen', 'sheetsSafe', 'cut', 'wetM', 'by'])

/** Hands back the same object where the step is about something else. */
export function stepClosing(before: Closing, step: Step): Closing {
  const next = told(before, step)
  const pictures = stepPhotos(next.pictures, step)
  return pictures === next.pictures ? next : { ...next, pictures }
}

function told(before: Closing, step: Step): Closing {
  const { type, data, at, seq } = step
  switch (type) {
    case 'bond': {
      const bond = data as unknown as BondData
      // A square that is not judged yet hides none that failed.
      if (bond.passed === null && before.bonds[bond.substrate]?.value.passed === false) return before
      return { ...before, bonds: { ...before.bonds, [bond.substrate]: { value: bond, at, seq } } }
    }
    case 'seal':
      return { ...before, seal: noteAll(before.seal, step, sealKeys) }
    case 'repair':
      return heat(before, at)
    case 'coupon':
      return data.passed === null ? heat(before, at) : before
    case 'note':
      return 'fire' in data ? stepFire(before, data.fire as FireData, at) : before
    default:
      return before
  }
}

function stepFire(before: Closing, said: FireData, at: Instant): Closing {
  const { fire } = said.heat ? heat(before, at) : before
  return {
    ...before,
    fire: {
      ...fire,
      watchMin: said.watchMin ?? fire.watchMin,
      doneAt: said.done ? at : fire.doneAt,
      by: said.by ?? fire.by
    }
  }
}

function heat(before: Closing, at: Instant): Closing {
  return { ...before, fire: { ...before.fire, heatAt: Math.max(at, before.fire.heatAt ?? at) } }
}
