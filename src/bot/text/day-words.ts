import type { Closing, Path } from '../../core/plan/last-sheet.js'
import type { Staged } from '../../core/plan/stage.js'
import type { Work } from '../../core/plan/what-fits.js'

/** What the plan of a day says. */
export interface DayWords {
  /** The rule that stood against a window until it began. */
  opens(rule: string): string
  /** Want of daylight before hours of work, and after them. */
  readonly noLight: Readonly<Record<'before' | 'after', string>>
  /** `close`: when everything is to be closed, with its reason. */
  lastSheet(by: string, close: string): string
  /** The time of the last sheet is over. */
  noMore(by: string, close: string): string
  readonly closing: Readonly<Record<Closing, string>>
  readonly path: Readonly<Record<Path, string>>
  backlog(robot: string, hand: string): string
  fits(area: string, work: string): string
  /** The same should hours that are not known turn out well: what they would add is never counted. */
  ifKnown(hours: string, area: string | null, first: string | null): string
  /** All that is planned stands in hours that are not known. */
  allUnknown(hours: string): string
  readonly works: Readonly<Record<Work, string>>
  stage(list: string): string
  readonly staged: Readonly<Record<Staged['what'], (count: number) => string>>
  warming(count: number): string
  dry(at: string): string
  firstSpray(at: string): string
  dew(at: string): string
  /** What to do before anyone goes up, and who says whether that is enough. */
  readonly start: string
  readonly reminders: readonly string[]
  record(date: string): string
  entries(count: number): string
  /** Where the plan has its rates from. */
  crew(gangs: number): string
}
