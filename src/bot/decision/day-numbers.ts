import { activities } from '../../core/finding.js'
import type { SunEvents } from '../../core/gather/daylight.js'
import { openTimeS as openTimeOn } from '../../core/kits/open-time.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { Json, JsonObject } from '../../core/log/entry.js'
import type { DayPlan } from '../../core/plan/day-plan.js'
import type { Outlook } from '../../core/plan/outlook.js'
import { iso, toJsonObject } from '../json.js'
import { runNumbers } from './run-numbers.js'

/** What is known of a day. */
export interface DayKnown {
  readonly day: Outlook
  readonly plan: DayPlan
  readonly sun: Pick<SunEvents, 'sunriseAt' | 'sunsetAt'>
}

/** The numbers of `day`: windows of all activities, last sheet by, what fits, what to stage. */
export function dayNumbers({ day, plan, sun }: DayKnown, sheet: LimitsSheet): JsonObject {
  const { lastSheet, fits, stage, backlog, deck, firstSprayAt } = plan
  // Where the substrate is hottest the foam stays open shortest.
  const openTimeS = day.sprayedC === null ? null : openTimeOn(day.sprayedC.max, sheet.foam.openTime)
  return toJsonObject({
    date: day.date,
    known: day.known,
    windows: activities.flatMap((activity) => windowsOf(day, activity)),
    sunriseAt: sun.sunriseAt,
    sunsetAt: sun.sunsetAt,
    lastSheetBy: iso(lastSheet?.at ?? null),
    closeBy: iso(lastSheet?.closeAt ?? null),
    closing: lastSheet?.closing ?? null,
    bindingPath: lastSheet?.path ?? null,
    dryAt: deck.dryAt,
    dewFrom: iso(deck.dewFromAt),
    firstSprayAt,
    deckNow: { wet: day.wetFirst, raining: null, of: 'model', today: false },
    rainKnown: day.rain.known,
    rainFrom: iso(day.rain.fromAt),
    rainToPct: day.rainChancePct?.max ?? null,
    gustToKmh: day.gustKmh?.max ?? null,
    airToC: day.airC?.max ?? null,
    fitsM2: fits?.areaM2 ?? null,
    unsure: unsureOf(plan),
    bindingWork: fits?.work ?? null,
    backlogRobotM: backlog.robotM,
    backlogHandM: backlog.handM,
    stage: stage.map(({ what, count, warming }) => (what === 'kits' ? { what, count, warming } : { what, count })),
    openTimeS,
    ...runNumbers(openTimeS, sheet),
    gangs: sheet.crew.gangs,
    minWindowMin: sheet.site.minWindowMin,
    toRead: [...new Set((['spray', 'lay', 'weld'] as const).flatMap((work) => day.activities[work].toRead.flatMap(({ fix }) => fix ?? [])))],
    hazards: day.hazards.map(({ finding, from, to }) => ({ rule: finding.rule, outcome: finding.outcome, from: iso(from), to: iso(to) }))
  })
}

function unsureOf({ unsure }: DayPlan): Json {
  if (unsure === null) return null
  const hours = unsure.hours.map(({ from, to }) => ({ from: iso(from), to: iso(to) }))
  return { hours, fitsM2: unsure.fitsM2, kits: unsure.kits, firstSprayAt: iso(unsure.firstSprayAt), all: unsure.all }
}

function windowsOf(day: Outlook, activity: (typeof activities)[number]): readonly Json[] {
  return day.activities[activity].windows.map(({ from, to, outcome, opens, closes }) => ({
    activity,
    from: iso(from),
    to: iso(to),
    outcome,
    opens,
    closes
  }))
}
