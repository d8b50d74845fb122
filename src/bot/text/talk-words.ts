import type { FormId } from '../forms/form-id.js'
import type { ClosingWords } from './closing-words.js'
import type { SetFieldWords } from './set-field-words.js'

/** Labels of a form's fields and choices: every one that a form may use. */
export interface FieldWords {
  readonly surfaces: string
  readonly dry: string
  readonly fleeceDry: string
  readonly clean: string
  readonly relaxed: string
  readonly noRain: string
  readonly noThunder: string
  readonly kit: string
  readonly mixed: string
  readonly expiry: string
  readonly startUp: string
  readonly tight: string
  readonly purged: string
  readonly nozzle: string
  readonly tested: string
  readonly intakes: string
  readonly intakesNone: string
  readonly intakesShut: string
  readonly intakesOpen: string
  readonly contact: string
  readonly compatible: string
  readonly touches: string
  readonly askMaker: string
  readonly weather: string
  readonly air: string
  readonly deck: string
  readonly humidity: string
  readonly wind: string
  readonly gust: string
  readonly rainChance: string
  readonly iso: string
  readonly resin: string
  readonly welder: string
  readonly robot: string
  readonly hand: string
  readonly widths: string
  readonly peel: string
  readonly film: string
  readonly parted: string
  readonly scorched: string
  readonly glossy: string
  readonly uneven: string
  readonly wrinkled: string
  readonly warm: string
  readonly warmYes: string
  readonly course: string
  readonly on: string
  readonly lap: string
  readonly end: string
  readonly strip: string
  readonly patch: string
  readonly distance: string
  readonly length: string
  readonly cause: string
  readonly wet: string
  readonly dirty: string
  readonly cold: string
  readonly photos: string
  readonly foam: string
  readonly edge: string
  readonly method: string
  readonly tape: string
  readonly mastic: string
  readonly welded: string
  readonly weighed: string
  readonly checks: string
  readonly drainsOpen: string
  readonly rolled: string
  readonly by: string
  readonly details: string
  readonly corners: string
  readonly pipes: string
  readonly drains: string
  readonly terminations: string
  readonly cutEdges: string
  readonly tSteps: string
  readonly text: string
}

/** What a conversation says beside answers: buttons, forms, home, and what goes wrong on the way. */
export interface TalkWords {
  readonly buttons: Readonly<Record<FormId | 'undo' | 'details' | 'punchList' | 'fixed' | 'passed' | 'failed' | 'spray' | 'list', string>> &
    ClosingWords['buttons']
  /** At most 24 characters each. */
  readonly forms: Readonly<Record<FormId, string>>
  readonly send: string
  readonly cancel: string
  readonly fields: FieldWords & SetFieldWords
  readonly working: string
  failed(ref: string): string
  readonly gone: string
  home(sites: number): string
  readonly noSites: string
  /** A form in which nothing was said. */
  readonly nothingStated: string
  readonly howToBegin: string
  openVoids(count: number): string
  readonly inventedSite: string
  readonly askNow: string
}
