import type { Activity, Finding } from '../../core/finding.js'
import { type Instant, localTime } from '../../core/instant.js'
import type { Limit, LimitsSheet } from '../../core/limits/sheet.js'
import type { Outlook } from '../../core/plan/outlook.js'
import type { Window } from '../../core/plan/windows.js'
import type { RuleId } from '../../core/rules/index.js'
import { convert } from '../../core/units.js'
import type { Text } from '../text/text.js'
import { amount } from '../views/amount.js'
import { barrier } from '../views/barrier.js'
import { findingWords } from '../views/finding.js'
import type { How } from '../views/how.js'
import { shapes } from '../views/outcome.js'
import type { PostOn } from './post.js'

const works = ['spray', 'lay', 'weld'] as const
const mostWindows = 4
const mostHazards = 5

/** One line for each kind of work with its hours; then the readings that no forecast gives; then whether people may be up. */
export function workLines(day: Outlook, { sheet }: PostOn, how: How, text: Text): readonly string[] {
  const lines = works.map(
    (work) => `${shapes[day.activities[work].outcome]} ${text.activities[work]}${text.frame.colon}${hoursOf(day, work, sheet, how, text)}`
  )
  const people = day.hazards.length === 0 ? [`${shapes[day.activities.people.outcome]} ${text.activities.people}`] : []
  return [...lines, ...people, ...(day.known ? beforeWork(day, text) : [])]
}

function hoursOf(day: Outlook, work: Activity, { site }: LimitsSheet, how: How, text: Text): string {
  const { windows } = day.activities[work]
  if (!day.known) return text.outcomesWithin.unknown
  if (windows.length === 0) return text.posts.noWindow(amount(site.minWindowMin, 'min', how))
  const shown = windows.slice(0, mostWindows).map((window) => windowWords(window, how, text))
  const more = windows.length > mostWindows ? [text.frame.more(windows.length - mostWindows)] : []
  return [...shown, ...more].join(' · ')
}

function windowWords({ from, to, outcome, closes }: Window, how: How, text: Text): string {
  const said = text.posts.window(span(from, to, how), text.outcomesWithin[outcome])
  return closes === null ? said : `${said}, ${text.posts.ends(barrier(closes, text, 'after'))}`
}

function span(from: Instant, to: Instant, how: How): string {
  return `${localTime(from, how.zone)}–${localTime(to, how.zone)}`
}

/** Only for work that the weather lets begin. */
function beforeWork(day: Outlook, text: Text): readonly string[] {
  const open = works.filter((work) => day.activities[work].windows.length > 0)
  const fixes = new Set(open.flatMap((work) => day.activities[work].toRead.flatMap(({ fix }) => fix ?? [])))
  return fixes.size === 0 ? [] : [text.posts.beforeWork([...fixes].map((fix) => text.fixes[fix]).join(', '))]
}

/** What binds each of some activities, with its number, its limit and the time of day. */
export function bindingLines(day: Outlook, of: readonly Activity[], how: How, text: Text): readonly string[] {
  return of.flatMap((activity) => {
    const { binding } = day.activities[activity]
    if (binding === null) return []
    return [`${text.activities[activity]}${text.frame.colon}${text.posts.binds(timed(binding, how, text))}`]
  })
}

function timed(finding: Finding<RuleId>, how: How, text: Text): string {
  const words = findingWords(finding, how, text)
  return finding.at === null || typeof finding.value !== 'number' ? words : `${words}, ${text.posts.around(localTime(finding.at, how.zone))}`
}

/** Air, gust and chance of rain of the day. */
export function weatherLines({ airC, gustKmh, rainChancePct }: Outlook, how: How, text: Text): readonly string[] {
  const {
    posts,
    decision: { numbers }
  } = text
  const whole = (value: number, unit: string) => amount(Math.round(value), unit, how)
  const parts = [
    ...(airC === null ? [] : [posts.range(numbers.airC, degrees(airC.min, how), degrees(airC.max, how))]),
    ...(gustKmh === null ? [] : [posts.upTo(numbers.gustKmh, amount(gustKmh.max, 'km/h', how))]),
    ...(rainChancePct === null ? [] : [posts.upTo(numbers.rainChancePct, whole(rainChancePct.max, '%'))])
  ]
  return parts.length === 0 ? [] : [parts.join(' · ')]
}

function degrees(celsius: number, how: How): string {
  return amount(celsius, 'C', how)
}

/** Where the air is beyond what the mixed kit may be: where to keep the kits. */
export function kitLines({ airC }: Outlook, { limits }: LimitsSheet, how: How, text: Text): readonly string[] {
  if (airC === null) return []
  const minC = bound(limits.kitTemperature, 'min')
  const maxC = bound(limits.kitTemperature, 'max')
  return [
    ...(minC !== null && airC.min < minC ? [text.posts.kitCold(degrees(airC.min, how), degrees(minC, how))] : []),
    ...(maxC !== null && airC.max > maxC ? [text.posts.kitHot(degrees(airC.max, how), degrees(maxC, how))] : [])
  ]
}

function bound(limit: Limit, side: 'min' | 'max'): number | null {
  const value = limit[side]
  return value === null ? null : convert(value, limit.unit, 'C')
}

/** What threatens people, at its worst, between which hours, and what to do. */
export function hazardLines({ hazards }: Outlook, how: How, text: Text): readonly string[] {
  return hazards.slice(0, mostHazards).map(({ finding, from, to }) => {
    const fix = finding.fix === null ? '' : ` → ${text.fixes[finding.fix]}`
    return `${shapes[finding.outcome]} ${span(from, to, how)} ${findingWords(finding, how, text)}${fix}`
  })
}
