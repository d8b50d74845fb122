import type { Instant } from '../../core/instant.js'
import { type Forecast, makeForecast } from '../../core/weather/forecast.js'
import { mergeHours } from '../../core/weather/hours.js'
import type { LiveSource } from './live-source.js'
import type { FetchedForecast, WeatherStore } from './weather-store.js'

/** How far back kept hours are put before a forecast: the surfaces need last night. */
const historyS = 48 * 3600
/** A question asked while a fetch was under way may still use it; one about the past may not use what came later. */
const slackS = 300

/** What was issued last, of two alike the one of the earlier source. How old it may be is for those who use it: `ageOf` of the core. */
export async function newest(sources: readonly LiveSource[], store: WeatherStore, cell: string, now: Instant): Promise<Forecast | null> {
  let best: FetchedForecast | null = null
  for (const source of sources) {
    const kept = await store.latest(cell, source.name)
    if (kept !== null && kept.fetchedAt <= now + slackS && (best === null || issued(kept) > issued(best))) best = kept
  }
  if (best === null) return null
  const { forecast } = best
  const firstAt = forecast.hours[0]?.at ?? now
  const history = await store.hours(cell, firstAt - historyS, firstAt)
  return history.length === 0 ? forecast : makeForecast({ ...forecast, hours: mergeHours(history, forecast.hours) })
}

/** Nothing was issued after it was fetched, whatever the clock of a source says: else it would stay the newest for ever. */
function issued({ issuedAt, fetchedAt }: FetchedForecast): Instant {
  return Math.min(issuedAt, fetchedAt)
}
