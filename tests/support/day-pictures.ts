import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { drawDay } from '../../src/adapters/pictures/day.js'
import { toPng } from '../../src/adapters/pictures/png.js'
import { sampleForecast } from '../../src/adapters/weather/sample/index.js'
import { sunEvents } from '../../src/core/gather/daylight.js'
import { dayMarks, type Instant } from '../../src/core/instant.js'
import { type DayChart, type DayChartParts, type DaySeries, dayChart } from '../../src/core/plan/day-chart.js'
import { daySeries } from '../../src/core/plan/day-series.js'
import { outlook } from '../../src/core/plan/outlook.js'
import { firstInstantAt } from '../../src/core/schedule.js'
import { demoSite, type SiteSettings } from '../../src/core/site.js'
import { sheet } from './facts.js'
import { emptyMemory } from './memory.js'

/** A local day of the invented week as the morning post knows it: at 00:30, or when said. */
export function sampleDay(date: string, settings: Partial<SiteSettings> = {}, part: Partial<DayChartParts> = {}): DayChart {
  const own = { ...demoSite, ...settings }
  const from = firstInstantAt(date, '00:00', own.zone) ?? 0
  const now = part.now ?? from + 1800
  const forecast = sampleForecast(now, own.zone)
  const on = sheet()
  const { activities } = outlook(emptyMemory(settings), forecast, on, date, now)
  return chartOf({
    site: 'demo',
    settings: own,
    date,
    now,
    bands: {
      spray: activities.spray.bands,
      lay: activities.lay.bands,
      weld: activities.weld.bands,
      people: activities.people.bands
    },
    series: daySeries(forecast, null, now, from, dayMarks(date, own.zone).midnight, on.spread),
    sun: sunEvents(own, date),
    sample: true,
    ...part
  })
}

export const noSeries: DaySeries = { airC: [], dewPointC: [], substrateC: null, windKmh: [], gustKmh: [], rain: [] }
export const noBands = { spray: [], lay: [], weld: [], people: [] } as const

/** A day of which nothing is known, with what is said of it. */
export function emptyDayChart(part: Partial<DayChartParts> = {}): DayChart {
  const nothing = { bands: noBands, series: noSeries, sun: { sunriseAt: null, sunsetAt: null, always: null }, sample: false } as const
  return chartOf({ site: 'demo', settings: { ...demoSite, invented: false }, date: '2026-05-04', now: null, ...nothing, ...part })
}

export function chartOf(parts: DayChartParts): DayChart {
  const chart = dayChart(parts)
  if (chart === null) throw new Error(`no such day: ${parts.date}`)
  return chart
}

/** An invented surface: the air with a swing of its own. */
export function surfaceOver(chart: DayChart, swingK: number): DaySeries['substrateC'] {
  const noon = (chart.from + chart.to) / 2
  return chart.airC.map(({ at, value }) => ({
    at,
    value: value === null ? null : value - 3 + swingK * Math.max(0, Math.cos(((at - noon) / 3600 / 14) * Math.PI)),
    spread: 2
  }))
}

/** Puts pictures into a folder to be looked at by a person. */
export function putPictures(folder: string, charts: Readonly<Record<string, DayChart>>): void {
  mkdirSync(folder, { recursive: true })
  for (const [name, chart] of Object.entries(charts)) writeFileSync(join(folder, `${name}.png`), toPng(drawDay(chart)))
}

export function at(date: string, time: string, zone: string): Instant {
  const found = firstInstantAt(date, time, zone)
  if (found === null) throw new Error(`no such time: ${date} ${time}`)
  return found
}

/** Monday to Saturday of the invented week, each with its own language, units and hour. */
export function sixDays(): Readonly<Record<string, DayChart>> {
  const zone = demoSite.zone
  return {
    monday: sampleDay('2026-05-04'),
    tuesday: sampleDay('2026-05-05', { lang: 'es' }, { now: at('2026-05-05', '08:20', zone) }),
    wednesday: sampleDay('2026-05-06', { lang: 'fr', units: 'us' }),
    thursday: sampleDay('2026-05-07', { units: 'us' }, { now: at('2026-05-07', '05:30', zone) }),
    friday: sampleDay('2026-05-08', { lang: 'fr' }, { now: at('2026-05-08', '23:50', zone) }),
    saturday: sampleDay('2026-05-09', { lang: 'es', units: 'us' })
  }
}
