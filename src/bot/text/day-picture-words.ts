import type { Activity } from '../../core/finding.js'

export type LineName = 'airC' | 'dewPointC' | 'substrateC' | 'windKmh' | 'gustKmh'

/** Words on the picture of a day, short enough to be read on it, and those of its alt text. */
export interface DayPictureWords {
  readonly inventedWeek: string
  readonly activities: Readonly<Record<Activity, string>>
  readonly lines: Readonly<Record<LineName, string>>
  readonly rain: string
  readonly chance: string
  now(time: string): string
  /** First words of the alt text. */
  title(site: string, date: string): string
  /** An amount and when it is reached. */
  at(amount: string, time: string): string
  /** The share of the day that nothing was judged for. */
  readonly notJudged: string
  readonly notKnown: string
  readonly noRain: string
  sunrise(time: string): string
  sunset(time: string): string
  readonly sunUp: string
  readonly sunDown: string
}
