import { type Activity, activities, type Finding } from '../finding.js'
import type { Memory } from '../gather/memory.js'
import { roofOf } from '../gather/roof-of.js'
import { type Instant, localDate } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { type Outcome, rank, worst } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import { workEndsAt } from '../schedule.js'
import { type Alert, type Alerts, isSevere, standing, type ToldAlert } from '../weather/alert.js'
import type { Forecast } from '../weather/forecast.js'
import { ageOf } from '../weather/lookup.js'
import { type LapsedWelder, lapsedByWeather } from '../welds/lapsed-by-weather.js'
import { findingsAt, type Moment, moments, quarterS } from './quarters.js'
import { alertNews, alertsSaid } from './watch-alerts.js'

/** What the watch warns of when it is close, whatever the answers are. */
export const warnings = ['rain', 'gust', 'thunder'] as const
export type Warning = (typeof warnings)[number]

export interface Warned {
  readonly warning: Warning
  /** When it is there by what is known; null: not told to the hour. */
  readonly at: Instant | null
  readonly finding: Finding<RuleId>
}

/** A site as the watch sees it: weather and people, no checklist. */
export interface Look {
  readonly now: Instant
  /** False: no forecast that still says something. */
  readonly sees: boolean
  readonly outcomes: Readonly<Record<Activity, Outcome>>
  /** The worst of now and the next half hour: what a turn for the better must hold. */
  readonly held: Readonly<Record<Activity, Outcome>>
  readonly binding: Readonly<Record<Activity, Finding<RuleId> | null>>
  readonly warned: readonly Warned[]
  /** Welders whose clearance the weather ended, each with the coupon it was cleared by. */
  readonly lapsed: readonly LapsedWelder[]
  /** Bad ones of weather services that touch the working hours. */
  readonly alerts: readonly Alert[]
}

/** What was last said, kept from look to look. */
export interface Said {
  /** Unknown only where it never was known. */
  readonly outcomes: Readonly<Record<Activity, Outcome>>
  readonly warned: readonly Warning[]
  readonly sees: boolean
  /** `NAME@INSTANT` of welders and their coupons. */
  readonly lapsed: readonly string[]
  /** Alerts that were told; absent until one is. */
  readonly alerts?: readonly ToldAlert[]
}

export interface Turn {
  readonly activity: Activity
  readonly was: Outcome
  readonly is: Outcome
}

/** What there is to say now; `worse`: it must not be missed. */
export interface News {
  readonly worse: boolean
  readonly turns: readonly Turn[]
  readonly warned: readonly Warned[]
  readonly lapsed: readonly LapsedWelder[]
  readonly alerts: readonly Alert[]
  /** Alerts that are over. */
  readonly over: readonly ToldAlert[]
  /** The forecast came or went since; null: neither. */
  readonly sees: boolean | null
}

const holdS = 2 * quarterS
const longestWorkS = 12 * 3600

/** Looks at a site at an instant, as far ahead as it takes to close up. Pure. */
export function look(memory: Memory, forecast: Forecast | null, sheet: LimitsSheet, now: Instant, alerts: Alerts | null = null): Look {
  const aheadS = Math.max(holdS, sheet.site.closeUpMin * 60)
  const instants = [now, ...Array.from({ length: Math.ceil(aheadS / quarterS) }, (_, index) => now + (index + 1) * quarterS)]
  const roof = roofOf(memory, forecast, sheet, now, Math.ceil(aheadS / 3600) + 1)
  const all = moments(memory, forecast, sheet, localDate(now, memory.settings.zone), now, instants, roof)
  const [first] = all
  if (first === undefined) throw new Error('a look without an instant')
  const of = <T>(get: (activity: Activity) => T) => Object.fromEntries(activities.map((activity) => [activity, get(activity)])) as Record<Activity, T>
  return {
    now,
    sees: forecast !== null && ageOf(forecast, now) !== 'dead',
    outcomes: of((activity) => first.of[activity].outcome),
    held: of((activity) => worst(all.filter(({ facts }) => facts.at <= now + holdS).map((moment) => moment.of[activity].outcome))),
    binding: of((activity) => first.of[activity].binding),
    warned: warnings.flatMap((warning) => warnedOf(warning, all, sheet)),
    lapsed: lapsedByWeather(first.facts.welders, []),
    alerts: standing(alerts, now, now, workEndsAt(now, memory.settings.hours, memory.settings.zone) ?? now + longestWorkS).filter(isSevere)
  }
}

/** Rain within the time of closing up, gusts beyond laying sheets in that time, thunder by the forecast: each stands in one rule. */
function warnedOf(warning: Warning, all: readonly Moment[], sheet: LimitsSheet): readonly Warned[] {
  const first = all[0] as Moment
  if (warning === 'thunder') {
    const finding = findingOf(first, 'people', 'thunder', sheet)
    return finding !== null && (finding.outcome === 'no-go' || finding.outcome === 'caution') ? [{ warning, at: null, finding }] : []
  }
  if (warning === 'gust') return firstStop(all, 'wind-gust', warning, sheet)
  const falling = firstStop(all, 'rain-now', warning, sheet)
  const coming = findingOf(first, 'lay', 'rain-coming', sheet)
  if (falling.length > 0) return falling
  return coming?.outcome === 'no-go' ? [{ warning, at: null, finding: coming }] : []
}

/** The first moment at which a rule stops the laying of sheets. */
function firstStop(all: readonly Moment[], rule: RuleId, warning: Warning, sheet: LimitsSheet): readonly Warned[] {
  for (const moment of all) {
    const finding = findingOf(moment, 'lay', rule, sheet)
    if (finding?.outcome === 'no-go') return [{ warning, at: moment.facts.at, finding }]
  }
  return []
}

function findingOf(moment: Moment, activity: Activity, rule: RuleId, sheet: LimitsSheet): Finding<RuleId> | null {
  return findingsAt(moment, activity, sheet, rule)[0] ?? null
}

/** What is taken as said when the first look of a day is taken: the answers as they are, no warning yet, the alerts that the morning told. */
export function firstSaid({ outcomes, sees }: Look, told: readonly ToldAlert[] = []): Said {
  return { outcomes, warned: [], sees, lapsed: [], ...(told.length === 0 ? {} : { alerts: told }) }
}

/**
 * What is new since what was said (null: nothing), and what counts as said from then on. What becomes unknown is no news: it waits
 * for a reading. A turn for the worse counts at once, one for the better only where it holds for half an hour. Pure.
 */
export function newsOf(said: Said, seen: Look): { readonly news: News | null; readonly said: Said } {
  const turns = activities.flatMap((activity) => turnOf(activity, said, seen))
  const warned = seen.warned.filter(({ warning }) => !said.warned.includes(warning))
  const { alerts, over } = alertNews(said.alerts ?? [], seen.alerts)
  const passed = said.warned.filter((warning) => !seen.warned.some((one) => one.warning === warning))
  const lapsed = seen.lapsed.filter((welder) => !said.lapsed.includes(couponOf(welder)))
  const sees = seen.sees === said.sees ? null : seen.sees
  const worse = turns.some(({ was, is }) => rank[is] > rank[was]) || warned.length + lapsed.length + alerts.length > 0 || sees === false
  const any = turns.length + warned.length + passed.length + lapsed.length + alerts.length + over.length > 0 || sees !== null
  return { news: any ? { worse, turns, warned, lapsed, alerts, over, sees } : null, said: saidAfter(said, seen, turns, lapsed) }
}

function turnOf(activity: Activity, said: Said, seen: Look): readonly Turn[] {
  const was = said.outcomes[activity]
  const is = seen.outcomes[activity]
  if (is === 'unknown') return []
  // Cautions of people come and go with the sun: the morning told their hours.
  if (activity === 'people' && is !== 'no-go' && was !== 'no-go') return []
  if (rank[is] > rank[was]) return [{ activity, was, is }]
  const held = seen.held[activity]
  return was !== 'unknown' && held !== 'unknown' && rank[held] < rank[was] ? [{ activity, was, is: held }] : []
}

function saidAfter(said: Said, seen: Look, turns: readonly Turn[], lapsed: readonly LapsedWelder[]): Said {
  const outcomes = { ...said.outcomes }
  for (const activity of activities) if (outcomes[activity] === 'unknown') outcomes[activity] = seen.outcomes[activity]
  for (const { activity, is } of turns) outcomes[activity] = is
  const warned = seen.warned.map(({ warning }) => warning)
  return { outcomes, warned, sees: seen.sees, lapsed: [...said.lapsed, ...lapsed.map(couponOf)], ...alertsSaid(said.alerts ?? [], seen.alerts) }
}

function couponOf({ name, couponAt }: LapsedWelder): string {
  return `${name}@${couponAt}`
}
