import type { Instant } from '../../instant.js'
import { offRatio } from '../../kits/yield.js'
import { metresByWelder, weldedM } from '../../welds/metres.js'
import type { CouponData, FoamVerdict, KitData, LaidData, ReadingData, StatementData, WelderData } from '../data.js'
import { type Closing, emptyClosing, stepClosing } from './closing.js'
import { type Extremes, markExtremes } from './extremes.js'
import { type Noted, noteAll, type Step } from './noted.js'

type Latest = { readonly [K in keyof (ReadingData & StatementData)]?: Noted<NonNullable<(ReadingData & StatementData)[K]>> }

/** Readings whose change lapses a welder's clearance. */
export type WatchedReading = 'airC' | 'sheetC' | 'windKmh'
const watched = ['airC', 'sheetC', 'windKmh'] as const satisfies readonly WatchedReading[]

/** One local day of a site: what was last said of everything that lapses, which welders were in use, what was laid. */
export interface DayState {
  readonly latest: Latest
  readonly rainFellAt: Instant | null
  /** When rain last fell in a spell that is over, as stated. */
  readonly rainOverFellAt?: Instant | null
  /** How far readings went that lapse a clearance. */
  readonly extremes?: { readonly [K in WatchedReading]?: Extremes }
  readonly thunderHeardAt: Instant | null
  readonly welders: Readonly<Record<string, { readonly off: boolean }>>
  readonly laidAt: Instant | null
  /** A test spray was bad, or a kit emptied unevenly: only a good test spray or a new start-up takes it back. Absent while none was. */
  readonly rejected?: { readonly at: Instant; readonly seq: number }
  readonly areaM2: number
  readonly robotM: number
  readonly handM: number
  /** By welders of other names; absent while there were none. */
  readonly othersM?: number
  /** Absent while nothing of it was said: days folded by earlier versions have none. */
  readonly closing?: Closing
}

export const emptyDay: DayState = { latest: {}, rainFellAt: null, thunderHeardAt: null, welders: {}, laidAt: null, areaM2: 0, robotM: 0, handM: 0 }

const readingKeys = [
  'airC',
  'substrateC',
  'sheetC',
  'rhPct',
  'dewPointC',
  'windKmh',
  'gustKmh',
  'sunWm2'
] as const satisfies readonly (keyof ReadingData)[]
const statementKeys = [
  'rainFalling',
  'rainChancePct',
  'thunder',
  'substrateDry',
  'fleeceDry',
  'lapDry',
  'substrateClean',
  'lapClean',
  'intakes',
  'sheet',
  'tight',
  'purged',
  'nozzle',
  'tested',
  'thumbTest',
  'lead',
  'toolV'
] as const satisfies readonly (keyof StatementData)[]
const keys: ReadonlySet<string> = new Set([...readingKeys, ...statementKeys])
const startUpKeys = ['tight', 'purged', 'nozzle', 'tested'] as const

export function stepDay(state: DayState, step: Step): DayState {
  const next = stepWork(state, step)
  const before = state.closing ?? emptyClosing
  const closing = stepClosing(before, step)
  return closing === before ? next : { ...next, closing }
}

function stepWork(state: DayState, step: Step): DayState {
  switch (step.type) {
    case 'reading':
      return { ...state, latest: noteAll(state.latest, step, keys), extremes: marked(state.extremes, step) }
    case 'statement':
      return stepStatement(state, step)
    case 'kit':
      return stepFoam(stepRatio(state, step), step)
    case 'coupon':
      return (step.data as unknown as CouponData).cut ? state : inUse(state, welderOf(step), true)
    case 'welder':
      return stepEvent(state, welderOf(step), step.data as unknown as WelderData)
    case 'laid':
      return stepLaid(state, step.data as unknown as LaidData, step.at)
    default:
      return state
  }
}

function marked(before: DayState['extremes'], { data, at, seq }: Step): NonNullable<DayState['extremes']> {
  const told = watched.filter((key) => key in data)
  return { ...before, ...Object.fromEntries(told.map((key) => [key, markExtremes(before?.[key], { value: data[key] as number, at, seq })])) }
}

function inUse(state: DayState, name: string, on: boolean): DayState {
  return { ...state, welders: { ...state.welders, [name]: { off: !on } } }
}

/** What is done about its metres, or what the weather did, takes no welder into use. */
function stepEvent(state: DayState, name: string, { event, couponAt }: WelderData): DayState {
  return event === 'probed' || event === 'released' || couponAt !== undefined ? state : inUse(state, name, event !== 'off')
}

function stepStatement(state: DayState, step: Step): DayState {
  const said = step.data as StatementData
  const begun = said.start ? begin(state) : state
  return {
    ...begun,
    latest: noteAll(begun.latest, begun.rejected !== undefined && said.tested === true ? without(step, 'tested') : step, keys),
    rainFellAt: said.rainFalling === true ? step.at : state.rainFellAt,
    rainOverFellAt: said.rainFalling === false ? state.rainFellAt : (state.rainOverFellAt ?? null),
    thunderHeardAt: said.thunder === true ? step.at : state.thunderHeardAt
  }
}

/** A new start-up: nothing stated of an earlier one counts, good or bad. */
function begin({ rejected: _earlier, ...state }: DayState): DayState {
  const latest = Object.fromEntries(Object.entries(state.latest).filter(([key]) => !(startUpKeys as readonly string[]).includes(key)))
  return { ...state, latest }
}

/** The word alone does not unsay what a test spray showed. */
function without(step: Step, key: string): Step {
  return { ...step, data: Object.fromEntries(Object.entries(step.data).filter(([name]) => name !== key)) }
}

/** A good test spray states the last step of the start-up; any other verdict takes it back. */
function stepFoam(state: DayState, step: Step): DayState {
  const foam = step.data.foam as { verdict: FoamVerdict } | undefined
  if (foam === undefined) return state
  if (foam.verdict !== 'good') return reject(state, step)
  const { rejected: _over, ...rest } = state
  return { ...rest, latest: { ...state.latest, tested: { value: true, at: step.at, seq: step.seq } } }
}

/** Parts that emptied unevenly were sprayed off ratio: the test spray of before says nothing any more. */
function stepRatio(state: DayState, step: Step): DayState {
  const { offRatio: told, isoLeftPct: isoPct, resinLeftPct: resinPct } = step.data as KitData
  if (told === undefined || isoPct === undefined || resinPct === undefined || !offRatio({ isoPct, resinPct })) return state
  return reject(state, step)
}

function reject(state: DayState, { at, seq }: Step): DayState {
  return { ...state, rejected: { at, seq }, latest: { ...state.latest, tested: { value: false, at, seq } } }
}

/** A welder that welded is in use, unless it was said to be off. */
function stepLaid(state: DayState, laid: LaidData, at: Instant): DayState {
  const welded = [...metresByWelder(laid)].flatMap(([name, metres]) => (metres > 0 ? [[name, { off: false }] as const] : []))
  const { robotM = 0, handM = 0 } = laid
  const othersM = weldedM(laid) - robotM - handM
  return {
    ...state,
    ...(othersM > 0 ? { othersM: (state.othersM ?? 0) + othersM } : {}),
    welders: { ...Object.fromEntries(welded), ...state.welders },
    laidAt: at,
    areaM2: state.areaM2 + laid.areaM2,
    robotM: state.robotM + robotM,
    handM: state.handM + handM
  }
}

/** When metres were last welded on a day, by whatever welder; null: none were. */
export function weldedAt({ laidAt, robotM, handM, othersM = 0 }: Pick<DayState, 'laidAt' | 'robotM' | 'handM' | 'othersM'>): Instant | null {
  return robotM + handM + othersM > 0 ? laidAt : null
}

function welderOf(step: Step): string {
  return step.subject.slice('welder:'.length)
}
