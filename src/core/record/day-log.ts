import type { Entry, JsonObject } from '../log/entry.js'
import { amendments } from '../log/fold.js'

/** An entry of a day as it counts in the end: with what was corrected and undone since. */
export interface LoggedLine {
  readonly entry: Entry
  readonly hash: string
  /** What counts: corrected data where there is a correction that was not undone itself. */
  readonly data: JsonObject
  /** Seq of the entry that undid it; null: it counts. */
  readonly undoneBy: number | null
  readonly correctedBy: number | null
}

interface Logged {
  readonly entry: Entry
  readonly hash: string
  readonly day: string
}

/** The lines of a local day in order of `at`, then of arrival. `logged` may hold undos and corrections of other days. Pure. */
export function dayLog(logged: readonly Logged[], day: string): readonly LoggedLine[] {
  const { undone, corrected } = amendments(logged.map(({ entry }) => entry))
  return logged
    .filter((each) => each.day === day)
    .map(({ entry, hash }) => {
      const correction = corrected.get(entry.seq) ?? null
      return {
        entry,
        hash,
        data: correction?.data ?? entry.data,
        undoneBy: undone.get(entry.seq) ?? null,
        correctedBy: correction?.seq ?? null
      }
    })
    .sort((a, b) => (a.entry.at === b.entry.at ? a.entry.seq - b.entry.seq : a.entry.at < b.entry.at ? -1 : 1))
}

/** What counts of one or several types. */
export function counting(lines: readonly LoggedLine[], ...types: readonly Entry['type'][]): readonly LoggedLine[] {
  return lines.filter(({ entry, undoneBy }) => undoneBy === null && types.includes(entry.type))
}
