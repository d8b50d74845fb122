import { type Fact, missing } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { WeatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import { rainAhead, thunderAhead } from '../weather/rain.js'
import { inForce } from './in-force.js'
import type { Memory, Said } from './memory.js'

export type SkyFacts = Pick<
  Facts,
  'rainFalling' | 'rainChancePct' | 'rainAmountMm' | 'thunderHeardAt' | 'noThunder' | 'thunderThisHour' | 'thunderWithin2h'
>

/** Rain and thunder, now and until everything open could be closed. */
export function gatherSky(
  memory: Memory,
  said: Said,
  weather: WeatherAt,
  forecast: Forecast | null,
  sheet: LimitsSheet,
  now: Instant,
  knownAt: Instant
): SkyFacts {
  const age = sheet.maxAgeMin.rain
  const ahead = rainAhead(forecast, knownAt, now, sheet.site.closeUpMin)
  const thunder = thunderAhead(forecast, knownAt, now)
  const stale = weather.airC.stale
  const expected = <T>(value: T | null): Fact<T> =>
    value === null ? { ...missing, stale } : { value, at: now, origin: 'forecast', spread: 0, stale }
  const heard = inForce(said.thunder, age, now, 'statement', missing)
  return {
    rainFalling: inForce(said.rainFalling, age, now, 'statement', expected(weather.rainMm === null ? null : weather.rainMm > 0)),
    rainChancePct: inForce(said.rainChancePct, age, now, 'statement', expected(ahead.chancePct)),
    rainAmountMm: expected(ahead.amountMm),
    thunderHeardAt: memory.today.thunderHeardAt ?? memory.yesterday.thunderHeardAt,
    noThunder: heard.value === false ? { ...heard, value: true } : heard.stale ? { ...missing, stale: true } : missing,
    thunderThisHour: thunder.thisHour,
    thunderWithin2h: thunder.within2h
  }
}
