import { roofOf } from '../../core/gather/roof-of.js'
import type { Instant } from '../../core/instant.js'
import { anchorOf } from '../../core/log/chain.js'
import { nightOf } from '../../core/plan/night.js'
import { wetSpell } from '../../core/roof/series.js'
import { firstInstantAt, nextWorkday } from '../../core/schedule.js'
import type { SiteSettings } from '../../core/site.js'
import { alertNumbers } from '../decision/alert-numbers.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { alertLines } from '../views/alerts.js'
import { amount } from '../views/amount.js'
import { clock, dateOf } from '../views/clock.js'
import { escapeText } from '../views/escape.js'
import { type How, howOf } from '../views/how.js'
import { layOut } from '../views/page.js'
import { openLines } from './open-lines.js'
import type { Post, PostOn, Written } from './post.js'
import { sourceNotes } from './small-print.js'

/** The end of the day: what was done, what still stands open, what the night brings, and where the record stands. */
export const wrapUp: Post = {
  time: ({ hours }) => hours.slice(6),
  wants: ['welder:', 'void:'],
  speak: (on) => speakWrapUp(on, howOf(on.settings))
}

/** The wrap-up post in a language and system of units. */
export function speakWrapUp(on: PostOn, how: How): Written {
  const text = texts[how.lang]
  const open = openLines(on, how, text)
  const about = text.posts.wrapUp(escapeText(on.site, 60), dateOf(on.date, how) ?? on.date)
  const page = {
    head: `${open.count === 0 ? '✓' : '△'} ${about}${text.frame.colon}${open.count === 0 ? text.posts.nothingOpen : text.posts.open(open.count)}`,
    lines: [...doneLines(on, how, text), ...open.lines, ...tonight(on, how, text), ...alertsTonight(on, how, text)],
    details: [],
    notes: [...sourceNotes(on, how, text), text.posts.anchor(anchorOf(escapeText(on.site, 60), on.record.head))]
  }
  return { ...layOut(page, how.lang), papers: [], recordOf: on.date }
}

/** Laid and welded today, and the coupons of the welders in use. */
function doneLines({ memory: { today } }: PostOn, how: How, text: Text): readonly string[] {
  const { areaM2, robotM, handM } = today
  if (!(areaM2 > 0 || robotM > 0 || handM > 0)) return [text.posts.nothingLaid]
  const welded = robotM > 0 || handM > 0 ? [text.laid.welded(amount(robotM, 'm', how), amount(handM, 'm', how))] : []
  return [[text.laid.area(amount(areaM2, 'm2', how)), ...welded].join(' · ')]
}

/** Air, gust and rain until the next work begins, and when dew comes. */
function tonight(on: PostOn, how: How, text: Text): readonly string[] {
  const { forecast, sheet, settings, now, memory, date } = on
  const night = nightOf(forecast, sheet, now, nextWorkAt(date, now, settings))
  const roof = roofOf(memory, forecast, sheet, now, longestNightS / 3600)
  const dewAt = wetSpell(roof, 'sheet', now).dewFromAt
  const { numbers } = text.decision
  const parts = [
    ...(night.airC === null ? [] : [text.posts.range(numbers.airC, amount(night.airC.min, 'C', how), amount(night.airC.max, 'C', how))]),
    ...(night.gustKmh === null ? [] : [text.posts.upTo(numbers.gustKmh, amount(night.gustKmh.max, 'km/h', how))]),
    ...rainParts(night.rainChancePct?.max ?? null, night.rainMm, how, text),
    ...(dewAt === null || dewAt < now ? [] : [text.day.dew(clock(dewAt, now, how))])
  ]
  return [text.posts.tonight(parts.length === 0 ? text.posts.noForecast : parts.join(' · '))]
}

function alertsTonight({ alerts, now, settings, date }: PostOn, how: How, text: Text): readonly string[] {
  const numbers = alertNumbers(alerts, { now, from: now, to: nextWorkAt(date, now, settings) })
  return alertLines(numbers, now, now, how, text)
}

/** When the next work begins, at most a long night away. */
function nextWorkAt(date: string, now: Instant, { days, hours, zone }: SiteSettings): Instant {
  const next = firstInstantAt(nextWorkday(date, days), hours.slice(0, 5), zone) ?? now
  return Math.min(next, now + longestNightS)
}

const longestNightS = 16 * 3600

/** The chance where the source has one, else the amount. */
function rainParts(chancePct: number | null, rainMm: number | null, how: How, text: Text): readonly string[] {
  if (chancePct !== null) return [text.posts.upTo(text.decision.numbers.rainChancePct, amount(Math.round(chancePct), '%', how))]
  return rainMm === null ? [] : [text.posts.rainAmount(amount(rainMm, 'mm', how))]
}
