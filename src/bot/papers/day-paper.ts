import { sunEvents } from '../../core/gather/daylight.js'
import { localOf } from '../../core/gather/local-of.js'
import type { Memory } from '../../core/gather/memory.js'
import { dayMarks, type Instant } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { dayChart } from '../../core/plan/day-chart.js'
import { daySeries } from '../../core/plan/day-series.js'
import type { Outlook } from '../../core/plan/outlook.js'
import type { RoofSeries } from '../../core/roof/series.js'
import { firstInstantAt } from '../../core/schedule.js'
import type { SiteSettings } from '../../core/site.js'
import type { Forecast } from '../../core/weather/forecast.js'
import { dayAlt } from '../views/day-alt.js'
import type { How } from '../views/how.js'
import type { Paper } from './paper.js'

/** What the picture of a day is made of. */
export interface DayOn {
  readonly site: string
  readonly settings: SiteSettings
  readonly memory: Memory
  readonly sheet: LimitsSheet
  readonly forecast: Forecast | null
  readonly roof: RoofSeries | null
  readonly now: Instant
}

/** The picture of the day of an outlook; none for a date that the zone does not have. */
export function dayPaper({ site, settings, memory, sheet, forecast, roof, now }: DayOn, day: Outlook, { lang, units }: How): readonly Paper<'day'>[] {
  const from = firstInstantAt(day.date, '00:00', settings.zone)
  if (from === null) return []
  const { spray, lay, weld, people } = day.activities
  const midnight = dayMarks(day.date, settings.zone).midnight
  const local = localOf(memory, forecast, sheet.spread, now)
  const chart = dayChart({
    site,
    settings: { ...settings, lang, units },
    date: day.date,
    now,
    bands: { spray: spray.bands, lay: lay.bands, weld: weld.bands, people: people.bands },
    series: daySeries(forecast, roof, now, from, midnight, sheet.spread, local),
    sun: sunEvents(settings, day.date),
    sample: forecast?.sample ?? false
  })
  return chart === null ? [] : [{ kind: 'day', name: `${site}-${day.date}.png`, alt: dayAlt(chart), data: chart }]
}
