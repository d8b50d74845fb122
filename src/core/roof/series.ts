import { type Fact, missing } from '../fact.js'
import type { Instant } from '../instant.js'

/** One surface, at the start and every step after it. */
export interface SurfaceSeries {
  readonly surfaceC: Float64Array
  /** One standard deviation. */
  readonly spreadK: Float64Array
  readonly filmMm: Float64Array
  readonly filmSpreadMm: Float64Array
}

export interface RoofSeries {
  readonly startAt: Instant
  readonly endAt: Instant
  readonly stepS: number
  /** Made of a forecast issued more than 3 h ago. */
  readonly stale: boolean
  /** That falls in each step. */
  readonly rainMm: Float64Array
  readonly substrate: SurfaceSeries
  readonly sheet: SurfaceSeries
}

export interface SurfaceAt {
  readonly surfaceC: Fact
  readonly filmMm: number | null
  /** True or false only where 1.645 standard deviations do not change it. */
  readonly wet: Fact<boolean>
}

/** A film thinner than this is not felt, and gone at the next breath of sun, mm. Source: from memory. */
const dampMm = 0.01
const oneSided = 1.645
/** A spell is looked for this far from an instant, s. */
export const spellReachS = 36 * 3600

const nothing: SurfaceAt = { surfaceC: missing, filmMm: null, wet: missing }

/** Both surfaces at an instant; nothing known outside the series. */
export function roofAt(series: RoofSeries | null, at: Instant): { readonly substrate: SurfaceAt; readonly sheet: SurfaceAt } {
  if (series === null || !(at >= series.startAt && at <= series.endAt)) return { substrate: nothing, sheet: nothing }
  return { substrate: surfaceAt(series, series.substrate, at), sheet: surfaceAt(series, series.sheet, at) }
}

function surfaceAt({ startAt, stepS, stale }: RoofSeries, surface: SurfaceSeries, at: Instant): SurfaceAt {
  const place = (at - startAt) / stepS
  const row = Math.min(Math.floor(place), surface.surfaceC.length - 2)
  const share = place - row
  const between = (values: Float64Array) => (values[row] as number) * (1 - share) + (values[row + 1] as number) * share
  const filmMm = between(surface.filmMm)
  const reachMm = oneSided * between(surface.filmSpreadMm)
  const wet = filmMm - reachMm > dampMm ? true : filmMm + reachMm <= dampMm ? false : null
  return {
    surfaceC: { value: between(surface.surfaceC), at, origin: 'model', spread: between(surface.spreadK), stale },
    filmMm,
    wet: { value: wet, at, origin: 'model', spread: 0, stale }
  }
}

/** When a surface was or will be wet: the spell that holds an instant, else the next one. Null for an end that is not in sight. */
export interface WetSpell {
  readonly dewFromAt: Instant | null
  readonly dryAt: Instant | null
}

/** The spell of wetness of `surface` at `at`, or else the next to come within 36 h; both null where there is none. */
export function wetSpell(series: RoofSeries | null, surface: 'substrate' | 'sheet', at: Instant): WetSpell {
  if (series === null || !(at >= series.startAt && at <= series.endAt)) return { dewFromAt: null, dryAt: null }
  const { startAt, stepS } = series
  const film = series[surface].filmMm
  const isWet = (row: number) => (film[row] as number) > dampMm
  const most = Math.ceil(spellReachS / stepS)
  const here = Math.floor((at - startAt) / stepS)
  let from = here
  if (isWet(here)) while (from > 0 && here - from < most && isWet(from - 1)) from -= 1
  else while (from + 1 < film.length && from - here < most && !isWet(from)) from += 1
  if (!isWet(from)) return { dewFromAt: null, dryAt: null }
  let dry = Math.max(from, here)
  while (dry < film.length && isWet(dry)) dry += 1
  const inSight = from > 0 && !isWet(from - 1)
  return { dewFromAt: inSight ? startAt + from * stepS : null, dryAt: dry < film.length ? startAt + dry * stepS : null }
}

/** A surface that is wet when the series ends: nobody sees when it will be dry. */
export function endsWet({ filmMm }: SurfaceSeries): boolean {
  return (filmMm.at(-1) ?? 0) > dampMm
}

/** Rain this long before counts as what made a surface wet, s. */
const rainCountsS = 3600

/** The first instant in (from, to] at which a surface is wet beyond doubt, and by what; null where it is at none. */
export function wetSince(
  series: RoofSeries | null,
  surface: 'substrate' | 'sheet',
  from: Instant,
  to: Instant
): { readonly at: Instant; readonly by: 'rain' | 'dew' } | null {
  if (series === null) return null
  const { startAt, stepS, rainMm } = series
  const { filmMm, filmSpreadMm } = series[surface]
  const last = Math.min(filmMm.length - 1, Math.floor((to - startAt) / stepS))
  for (let row = Math.max(0, Math.floor((from - startAt) / stepS) + 1); row <= last; row += 1) {
    if (!((filmMm[row] as number) - oneSided * (filmSpreadMm[row] as number) > dampMm)) continue
    const rained = rainMm.subarray(Math.max(0, row - rainCountsS / stepS), row).some((mm) => mm > 0)
    return { at: startAt + row * stepS, by: rained ? 'rain' : 'dew' }
  }
  return null
}
