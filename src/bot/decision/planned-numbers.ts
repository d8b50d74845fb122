import { sunEvents } from '../../core/gather/daylight.js'
import type { Memory } from '../../core/gather/memory.js'
import type { Instant } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { JsonObject } from '../../core/log/entry.js'
import { dayPlan } from '../../core/plan/day-plan.js'
import type { Outlook } from '../../core/plan/outlook.js'
import type { SiteSettings } from '../../core/site.js'
import type { Forecast } from '../../core/weather/forecast.js'
import { dayNumbers } from './day-numbers.js'
import { warmMinOf } from './warm-min.js'

/** What a plan hangs on besides the outlook. */
export interface PlanningOn {
  readonly memory: Memory
  readonly settings: SiteSettings
  readonly sheet: LimitsSheet
  readonly forecast: Forecast | null
  readonly now: Instant
}

/** The numbers of a day with its plan: the same for `day`, the posts and whoever else says them. */
export function plannedNumbers({ memory, settings, sheet, forecast, now }: PlanningOn, day: Outlook): JsonObject {
  const warmMin = warmMinOf(memory.kit, { settings, sheet, forecast, boxC: null, learned: memory.site.learned ?? null, now })
  const plan = dayPlan(day, { memory, sheet, now, warmMin })
  return dayNumbers({ day, plan, sun: sunEvents(settings, day.date) }, sheet)
}
