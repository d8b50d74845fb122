import type { Compatibility } from '../../facts.js'
import type { SiteSettings } from '../../site.js'
import type { LaidData } from '../data.js'
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
}

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
      return { ...state, kit: step.subject.slice('kit:'.length) }
    case 'void':
    case 'repair':
    case 'probe':
      return { ...state, voids: stepVoids(state.voids, step) }
    case 'laid':
      return stepLaid(state, step.data as unknown as LaidData)
    default:
      return state
  }
}

/** Numbers given out by entries since undone stay given out. */
export function keepNumbers(state: SiteState, everySubject: readonly string[]): SiteState {
  const numbers = everySubject.filter((subject) => subject.startsWith('void:')).map((subject) => Number(subject.slice('void:'.length)))
  return { ...state, voids: { ...state.voids, highest: Math.max(state.voids.highest, ...numbers) } }
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
    weldedM: state.weldedM + (laid.robotM ?? 0) + (laid.handM ?? 0),
    laidSheets: state.laidSheets + (laid.sheets ?? 0)
  }
}
