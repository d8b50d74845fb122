import type { Compatibility } from '../../facts.js'
import type { SiteSettings } from '../../site.js'
import { weldedM } from '../../welds/metres.js'
import type { DetailKind, DetailStatus, DetailsData, PunchData } from '../closing-data.js'
import type { KitData, LaidData, LearnedMixing } from '../data.js'
import type { Noted, Step } from './noted.js'

/** What holds for a site from day to day. */
export interface SiteState {
  readonly settings: Partial<SiteSettings>
  readonly compatibility: Noted<Compatibility> | null
  readonly deckMoisturePassed: Noted<boolean> | null
  /** The kit last named. */
  readonly kit: string | null
  readonly voids: {
    /** Highest number given out: never reused, not even after an undo. */
    readonly highest: number
    readonly total: number
    readonly passed: number
    readonly unsettled: Readonly<Record<string, 'open' | 'repaired'>>
  }
  readonly areaM2: number
  readonly weldedM: number
  readonly laidSheets: number
  /** How kits of this site warm, as last learned; absent while it was not. */
  readonly learned?: LearnedMixing
  /** What was last said of each kind of detail; absent while nothing was: sites folded by earlier versions have none. */
  readonly details?: { readonly [K in DetailKind]?: Noted<DetailStatus> }
  /** The punch list; absent while it is empty. */
  readonly punch?: PunchList
}

export interface PunchList {
  /** Highest number given out: never reused. */
  readonly highest: number
  readonly total: number
  readonly open: readonly number[]
}

export const emptyPunch: PunchList = { highest: 0, total: 0, open: [] }

export const emptySite: SiteState = {
  settings: {},
  compatibility: null,
  deckMoisturePassed: null,
  kit: null,
  voids: { highest: 0, total: 0, passed: 0, unsettled: {} },
  areaM2: 0,
  weldedM: 0,
  laidSheets: 0
}

export function stepSite(state: SiteState, step: Step): SiteState {
  switch (step.type) {
    case 'setting':
      return { ...state, settings: { ...state.settings, ...step.data } }
    case 'statement':
      return stepStatement(state, step)
    case 'kit':
      return stepKitOf(state, step)
    case 'void':
    case 'repair':
    case 'probe':
      return { ...state, voids: stepVoids(state.voids, step) }
    case 'laid':
      return stepLaid(state, step.data as unknown as LaidData)
    case 'note':
      return stepNote(state, step)
    default:
      return state
  }
}

/** Numbers given out by entries since undone stay given out. */
export function keepNumbers(state: SiteState, everySubject: readonly string[]): SiteState {
  const highest = highestOf(everySubject, 'void:')
  const punched = highestOf(everySubject, 'punch:')
  const { punch = emptyPunch } = state
  return {
    ...state,
    voids: { ...state.voids, highest: Math.max(state.voids.highest, highest) },
    ...(punched > punch.highest ? { punch: { ...punch, highest: punched } } : {})
  }
}

function highestOf(subjects: readonly string[], kind: string): number {
  return subjects.reduce((most, subject) => (subject.startsWith(kind) ? Math.max(most, Number(subject.slice(kind.length))) : most), 0)
}

/** A note of a detail or of an item of the punch list; any other is about something else. */
function stepNote(state: SiteState, { data, at, seq, subject }: Step): SiteState {
  if ('details' in data) {
    const noted = Object.entries(data.details as DetailsData).map(([kind, value]) => [kind, { value, at, seq }] as const)
    return { ...state, details: { ...state.details, ...Object.fromEntries(noted) } }
  }
  if (!subject.startsWith('punch:')) return state
  return { ...state, punch: stepPunchList(state.punch ?? emptyPunch, Number(subject.slice('punch:'.length)), data as PunchData) }
}

function stepPunchList(list: PunchList, number: number, { text, done }: PunchData): PunchList {
  const others = list.open.filter((each) => each !== number)
  const open = (): readonly number[] => [...others, number].sort((a, b) => a - b)
  if (text !== undefined) return { highest: Math.max(list.highest, number), total: list.total + 1, open: open() }
  return done === undefined ? list : { ...list, open: done ? others : open() }
}

function stepKitOf(state: SiteState, { subject, data }: Step): SiteState {
  const kit = subject.slice('kit:'.length)
  const { learned } = data as KitData
  return learned === undefined ? { ...state, kit } : { ...state, kit, learned }
}

function stepStatement(state: SiteState, { data, at, seq }: Step): SiteState {
  return {
    ...state,
    compatibility: 'compatibility' in data ? { value: data.compatibility as Compatibility, at, seq } : state.compatibility,
    deckMoisturePassed: 'deckMoisturePassed' in data ? { value: data.deckMoisturePassed as boolean, at, seq } : state.deckMoisturePassed
  }
}

function stepVoids(voids: SiteState['voids'], step: Step): SiteState['voids'] {
  const number = step.subject.slice('void:'.length)
  if (step.type === 'void') {
    return { ...voids, highest: Math.max(voids.highest, Number(number)), total: voids.total + 1, unsettled: { ...voids.unsettled, [number]: 'open' } }
  }
  if (step.type === 'repair') return { ...voids, unsettled: { ...voids.unsettled, [number]: 'repaired' } }
  if (step.data.passed !== true) return { ...voids, unsettled: { ...voids.unsettled, [number]: 'open' } }
  const { [number]: _settled, ...rest } = voids.unsettled
  return { ...voids, passed: voids.passed + 1, unsettled: rest }
}

function stepLaid(state: SiteState, laid: LaidData): SiteState {
  return {
    ...state,
    areaM2: state.areaM2 + laid.areaM2,
    weldedM: state.weldedM + weldedM(laid),
    laidSheets: state.laidSheets + (laid.sheets ?? 0)
  }
}
