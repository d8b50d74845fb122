import type { LapsedBy, WelderFact } from '../facts.js'
import type { Instant } from '../instant.js'

/** What the weather does to a clearance by itself, the half-day among it: nobody on the roof has to have done anything. */
const weatherLapses = ['half-day', 'air', 'sheet', 'wind', 'cloud', 'rain'] as const satisfies readonly LapsedBy[]
export type WeatherLapse = (typeof weatherLapses)[number]

/** A clearance that the weather lapsed: whose, by what, and of which coupon. */
export interface LapsedWelder {
  readonly name: string
  readonly lapsedBy: WeatherLapse
  readonly couponAt: Instant
}

/** What was said before: two of a name and a coupon are one. */
export type Told = Pick<LapsedWelder, 'name' | 'couponAt'>

/**
 * Welders that the weather lapsed and of which nothing was said yet, in the order given: `welders` are those of the facts at the
 * instant of the question (`gather(…).welders`), `told` what earlier posts of the day said. A new coupon makes a clearance that can
 * lapse anew, so that each is said once. Pure.
 */
export function lapsedByWeather(welders: readonly WelderFact[], told: readonly Told[]): readonly LapsedWelder[] {
  return welders.flatMap(({ name, status, lapsedBy, at }) => {
    if (status !== 'lapsed' || at === null || !isWeather(lapsedBy)) return []
    const said = told.some((before) => before.name === name && before.couponAt === at)
    return said ? [] : [{ name, lapsedBy, couponAt: at }]
  })
}

function isWeather(by: LapsedBy | null): by is WeatherLapse {
  return (weatherLapses as readonly (LapsedBy | null)[]).includes(by)
}
