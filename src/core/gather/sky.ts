import { type Fact, missing } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { WeatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import { rainAhead, thunderAhead } from '../weather/rain.js'
import { inForce } from './in-force.js'
import { last, type Memory } from './memory.js'

export type SkyFacts = Pick<
  Facts,
  'rainFalling' | 'rainChancePct' | 'rainAmountMm' | 'thunderHeardAt' | 'noThunder' | 'thunderThisHour' | 'thunderWithin2h'
>

/** Rain and thunder, now and until everything open could be closed. */
export function gatherSky(
  memory: Memory,
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
  const said = inForce(last(memory, 'thunder'), age, now, 'statement', missing)
  return {
    rainFalling: inForce(last(memory, 'rainFalling'), age, now, 'statement', expected(weather.rainMm === null ? null : weather.rainMm > 0)),
    rainChancePct: inForce(last(memory, 'rainChancePct'), age, now, 'statement', expected(ahead.chancePct)),
    rainAmountMm: expected(ahead.amountMm),
    thunderHeardAt: memory.today.thunderHeardAt ?? memory.yesterday.thunderHeardAt,
    noThunder: said.value === false ? { ...said, value: true } : { ...missing, stale: said.stale },
    thunderThisHour: thunder.thisHour,
    thunderWithin2h: thunder.within2h
  }
}
