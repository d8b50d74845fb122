import { failedBonds } from '../../core/closing/failed-bonds.js'
import { activities } from '../../core/finding.js'
import { localTime } from '../../core/instant.js'
import { rank } from '../../core/outcome.js'
import type { Look, News, Turn, Warned } from '../../core/plan/watch.js'
import type { Spoken } from '../answer.js'
import { alertNumbers } from '../decision/alert-numbers.js'
import { texts } from '../text/index.js'
import type { Caution, Text } from '../text/text.js'
import { alertLines } from '../views/alerts.js'
import { escapeText } from '../views/escape.js'
import { findingWords } from '../views/finding.js'
import { bondFirst, ledBy } from '../views/first.js'
import type { How } from '../views/how.js'
import { shapes } from '../views/outcome.js'
import { layOut } from '../views/page.js'
import { welderName } from '../views/welder.js'
import type { PostOn } from './post.js'
import { sourceNotes } from './small-print.js'

/** The watch in the words of the site: what turned and why first, then how all stands now. */
export function speakWatch(on: PostOn, seen: Look, news: News, how: How): Spoken {
  const text = texts[how.lang]
  const page = {
    head: headOf(on, seen, news, how, text),
    lines: [...alertsNew(on, seen, news, how, text), ...newLines(seen, news, how, text), ...standing(seen, news, text)],
    details: [],
    notes: [...cautions(news, text), ...sourceNotes(on, how, text)]
  }
  const { yesterday, today } = on.memory
  return layOut(ledBy(page, gluing(news) ? bondFirst(failedBonds([yesterday, today]), text) : [], text), how.lang)
}

/** A turn of what glues: who is told that spray goes again must not miss that it does not hold. */
function gluing({ turns }: News): boolean {
  return turns.some(({ activity }) => activity === 'spray' || activity === 'lay')
}

/** "✕ NO-GO: spray, demo, 14:15": a new alert of a weather service, else the worst turn, else what is close, else what else is new. */
function headOf({ site }: PostOn, seen: Look, { turns, warned, alerts, sees }: News, how: How, text: Text): string {
  const about = (of: string) => text.posts.about(of, escapeText(site, 60), localTime(seen.now, how.zone))
  if (alerts.length > 0) return `${shapes.caution} ${about(text.alerts.head)}`
  const [turn] = [...turns].sort((a, b) => rank[b.is] - rank[b.was] - (rank[a.is] - rank[a.was]))
  if (turn !== undefined) return `${shapes[turn.is]} ${text.outcomes[turn.is]}${text.frame.colon}${about(text.activities[turn.activity])}`
  const [near] = warned
  if (near !== undefined) return `${shapes[near.finding.outcome]} ${about(text.posts.near[near.warning])}`
  if (sees === false) return `${shapes.unknown} ${about(text.posts.noForecast)}`
  return about(text.posts.watch)
}

/** Alerts that are new, and those that are over; the others were told. */
function alertsNew({ alerts }: PostOn, { now }: Look, news: News, how: How, text: Text): readonly string[] {
  const own = alerts === null ? null : { ...alerts, all: news.alerts }
  const numbers = alertNumbers(own, { now, from: now, to: Number.MAX_SAFE_INTEGER })
  return [
    ...alertLines({ ...numbers, alertsKnown: null }, now, now, how, text),
    ...news.over.map(({ event }) => text.alerts.over(escapeText(event, 120)))
  ]
}

function newLines(seen: Look, { turns, warned, lapsed, sees }: News, how: How, text: Text): readonly string[] {
  return [
    ...turns.map((turn) => turnLine(turn, seen, how, text)),
    ...warned.map((near) => nearLine(near, how, text)),
    ...(warned.some(({ warning }) => warning === 'rain') ? [text.decision.closeUp] : []),
    ...lapsed.map(({ name, lapsedBy }) => {
      const why = text.coupon.notClearedBy(text.coupon.lapsedBy[lapsedBy])
      return `${welderName(name, text)}${text.frame.colon}${why} → ${text.fixes['weld:coupon']}`
    }),
    ...(sees === false ? [text.posts.noForecast] : [])
  ]
}

/** "✕ spray: no-go, was go: gust 41 km/h (forecast), at most 35 km/h". */
function turnLine({ activity, was, is }: Turn, seen: Look, how: How, text: Text): string {
  const said = text.posts.turned(text.activities[activity], text.outcomesWithin[is], text.outcomesWithin[was])
  const binding = seen.binding[activity]
  return `${shapes[is]} ${said}${binding === null ? '' : `${text.frame.colon}${findingWords(binding, how, text)}`}`
}

function nearLine({ warning, at, finding }: Warned, how: How, text: Text): string {
  const when = at === null ? '' : `, ${text.posts.around(localTime(at, how.zone))}`
  return `${shapes[finding.outcome]} ${text.posts.near[warning]}${text.frame.colon}${findingWords(finding, how, text)}${when}`
}

/** How the other activities stand, in one line. */
function standing(seen: Look, { turns }: News, text: Text): readonly string[] {
  const rest = activities.filter((activity) => !turns.some((turn) => turn.activity === activity))
  const parts = rest.map((activity) => `${shapes[seen.outcomes[activity]]} ${text.activities[activity]}`)
  return parts.length === 0 ? [] : [parts.join(' · ')]
}

function cautions({ warned }: News, text: Text): readonly string[] {
  const near: Readonly<Record<string, Caution>> = { thunder: 'thunder', gust: 'edges' }
  return [...new Set(warned.flatMap(({ warning }) => near[warning] ?? []))].map((caution) => text.cautions[caution])
}
