import type { Instant } from '../../instant.js'
import { offRatio, type PartsLeft } from '../../kits/yield.js'
import type { KitData, Place } from '../data.js'
import type { Noted, Step } from './noted.js'

/** A temperature of one part, and when the kit had last been mixed by then: a reading of an unmixed kit says nothing of its mean. */
export interface PartReading extends Noted<number> {
  readonly mixedAt: Instant | null
}

export interface KitState {
  readonly name: string
  readonly isoC: PartReading | null
  readonly resinC: PartReading | null
  readonly mixed: Noted<boolean> | null
  readonly mixedAt: Instant | null
  readonly expiresOn: Noted<string> | null
  readonly place: Noted<Place> | null
  readonly placeC: number | null
  readonly lot: string | null
  /** Said of it and laid with it, added up. */
  readonly usedM2: number
  /** Of these, laid with it; absent while nothing was. */
  readonly laidM2?: number
  readonly empty: boolean
  /** Absent while it is not. */
  readonly emptiedAt?: Instant
  /** Absent while nothing of it was said. */
  readonly left?: Noted<PartsLeft>
  readonly foam: Noted<NonNullable<KitData['foam']>> | null
}

export function emptyKit(name: string): KitState {
  return {
    name,
    isoC: null,
    resinC: null,
    mixed: null,
    mixedAt: null,
    expiresOn: null,
    place: null,
    placeC: null,
    lot: null,
    usedM2: 0,
    empty: false,
    foam: null
  }
}

export function stepKit(state: KitState, step: Step): KitState {
  if (step.type === 'laid') return stepLaid(state, Number(step.data.areaM2))
  const said = step.data as KitData
  const note = <T>(value: T | undefined, before: Noted<T> | null): Noted<T> | null =>
    value === undefined ? before : { value, at: step.at, seq: step.seq }
  // Stated not mixed takes an earlier mixing back.
  const mixedAt = said.mixed === undefined ? state.mixedAt : said.mixed ? step.at : null
  const part = (value: number | undefined, before: PartReading | null): PartReading | null =>
    value === undefined ? before : { value, at: step.at, seq: step.seq, mixedAt }
  return {
    ...state,
    isoC: part(said.isoC, state.isoC),
    resinC: part(said.resinC, state.resinC),
    mixed: note(said.mixed, state.mixed),
    mixedAt,
    expiresOn: note(said.expiresOn, state.expiresOn),
    place: note(said.place, state.place),
    placeC: said.place === undefined ? state.placeC : (said.placeC ?? null),
    lot: said.lot ?? state.lot,
    usedM2: state.usedM2 + (said.usedM2 ?? 0),
    empty: said.empty ?? state.empty,
    foam: note(said.foam, state.foam),
    ...(said.empty === true && state.emptiedAt === undefined ? { emptiedAt: step.at } : {}),
    ...leftOf(said, step)
  }
}

function stepLaid(state: KitState, areaM2: number): KitState {
  return { ...state, usedM2: state.usedM2 + areaM2, laidM2: (state.laidM2 ?? 0) + areaM2 }
}

/** m² it went for: what was said of it and what was laid with it tell of the same area, so that the larger holds, not both. */
export function areaOf({ usedM2, laidM2 = 0 }: Pick<KitState, 'usedM2' | 'laidM2'>): number {
  return Math.max(laidM2, usedM2 - laidM2)
}

/** Its parts emptied unevenly, and no test spray since was good. */
export function isOffRatio({ left, foam }: Pick<KitState, 'left' | 'foam'>): boolean {
  if (left === undefined || !offRatio(left.value)) return false
  const retested = foam?.value.verdict === 'good' && (foam.at > left.at || (foam.at === left.at && foam.seq > left.seq))
  return !retested
}

function leftOf({ isoLeftPct, resinLeftPct }: KitData, { at, seq }: Step): Pick<KitState, 'left'> {
  if (isoLeftPct === undefined || resinLeftPct === undefined) return {}
  return { left: { value: { isoPct: isoLeftPct, resinPct: resinLeftPct }, at, seq } }
}
