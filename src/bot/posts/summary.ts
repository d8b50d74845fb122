import { fromIso, localTime } from '../../core/instant.js'
import { type Outcome, rank } from '../../core/outcome.js'
import type { RuleId } from '../../core/rules/index.js'
import type { ToldAlert } from '../../core/weather/alert.js'
import type { Spoken } from '../answer.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { dateOf } from '../views/clock.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import { shapes } from '../views/outcome.js'
import { layOut } from '../views/page.js'

/** A morning in short, as its post kept it: instants are ISO text. */
export interface Brief {
  readonly outcome: Outcome
  /** The best hours to spray; null: none. */
  readonly from: string | null
  readonly to: string | null
  /** What stands most in the way, or would first. */
  readonly binding: RuleId | null
  /** Alerts that it told of: the watch does not tell them again. Absent: none. */
  readonly alerts?: readonly ToldAlert[]
}

/** One site of a summary; null: its morning was not judged. */
export interface Row {
  readonly site: string
  readonly brief: Brief | null
}

const mostRows = 40

/** One message for all sites of a supervisor: which can go, when, what stops them; the worst first. */
export function speakSummary(rows: readonly Row[], date: string, how: How): Spoken {
  const text = texts[how.lang]
  const order = (brief: Brief | null) => (brief === null ? rank.unknown + 0.5 : rank[brief.outcome])
  const sorted = [...rows].sort((a, b) => order(b.brief) - order(a.brief) || (a.site < b.site ? -1 : 1))
  const lines = sorted.slice(0, mostRows).map((row) => rowLine(row, how, text))
  const more = rows.length > mostRows ? [text.frame.more(rows.length - mostRows)] : []
  const counts = (['go', 'caution', 'unknown', 'no-go'] as const).flatMap((outcome) => {
    const count = rows.filter(({ brief }) => (brief?.outcome ?? 'unknown') === outcome).length
    return count === 0 ? [] : [`${shapes[outcome]} ${count}`]
  })
  const head = `${text.posts.summary(rows.length, dateOf(date, how) ?? date)}${text.frame.colon}${counts.join(' · ')}`
  return layOut({ head, lines: [...lines, ...more], details: [], notes: [text.posts.summaryOff] }, how.lang)
}

/** "✕ north: no-go, wind gust" or "✓ south: 07:00–15:30 go". */
function rowLine({ site, brief }: Row, how: How, text: Text): string {
  const name = escapeText(site, 60)
  if (brief === null) return `${shapes.unknown} ${name}${text.frame.colon}${text.outcomesWithin.unknown}`
  const { outcome, binding } = brief
  const [from, to] = [brief.from, brief.to].map((iso) => (iso === null ? null : fromIso(iso)))
  const hours = from == null || to == null ? '' : `${localTime(from, how.zone)}–${localTime(to, how.zone)} `
  const why = binding === null || outcome === 'go' ? '' : `, ${text.findings[binding].name}`
  return `${shapes[outcome]} ${name}${text.frame.colon}${hours}${text.outcomesWithin[outcome]}${why}`
}
