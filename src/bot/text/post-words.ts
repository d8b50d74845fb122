import type { Warning } from '../../core/plan/watch.js'
import type { StillWords } from './still-words.js'

/** What the posts say besides what answers say. */
export interface PostWords {
  /** What the first line is about: what is judged, where, on which day. */
  about(activity: string, site: string, date: string): string
  /** Hours and outcome of a window. */
  window(hours: string, outcome: string): string
  /** The rule that ends a window. */
  ends(rule: string): string
  noWindow(least: string): string
  readonly noForecast: string
  binds(finding: string): string
  /** Follows a finding: when it is like that. */
  around(at: string): string
  range(name: string, low: string, high: string): string
  upTo(name: string, high: string): string
  /** Readings that the forecast cannot give. */
  beforeWork(readings: string): string
  kitCold(air: string, limit: string): string
  kitHot(air: string, limit: string): string
  /** The first line of an evening post: the head of the next working day. */
  tomorrow(head: string): string
  nextDay(head: string): string
  /** Follows the name of a kit that no time can be given for. */
  readonly boxNow: string
  wrapUp(site: string, date: string): string
  /** How many things still stand open. */
  open(count: number): string
  readonly nothingOpen: string
  readonly nothingLaid: string
  tonight(list: string): string
  rainAmount(amount: string): string
  /** Where the record stands: `SITE:SEQ:HASH`. */
  anchor(anchor: string): string
  /** What is close, as the watch says it. */
  readonly near: Readonly<Record<Warning, string>>
  /** A change of an answer. */
  turned(activity: string, is: string, was: string): string
  /** The watch where nothing else heads it. */
  readonly watch: string
  readonly still: StillWords
  /** To a supervisor: posts that were given up. */
  notSent(count: number): string
  readonly whyNotSent: string
  /** One message for so many sites. */
  summary(sites: number, date: string): string
  readonly summaryOff: string
}
