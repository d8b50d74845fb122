import type { CouponMark, WelderState } from '../log/states/welder.js'
import type { SiteSettings } from '../site.js'
import { chanceFrom, chanceShort, type IndividualsChart, individualsChart } from './chart.js'
import { type Drift, driftOf } from './drift.js'

/** Everything that the picture of a welder's coupons shows, in JSON units. */
export interface WidthsChart extends IndividualsChart {
  readonly site: string
  readonly invented: boolean
  readonly welder: string
  readonly zone: string
  readonly lang: SiteSettings['lang']
  readonly units: SiteSettings['units']
  /** Oldest first. */
  readonly coupons: readonly CouponMark[]
  readonly minWidthMm: number
  /** Null with too few coupons to say, and while they drift: it takes the next for one of the same kind. */
  readonly chanceShort: number | null
  readonly drift: Drift | null
}

/** The chart of the coupons that are kept of a welder. Pure. */
export function widthsChart(
  { name, trail }: Pick<WelderState, 'name' | 'trail'>,
  site: string,
  settings: Pick<SiteSettings, 'invented' | 'zone' | 'lang' | 'units'>,
  minWidthMm: number
): WidthsChart {
  const widths = trail.map(({ widthMm }) => widthMm)
  const chart = individualsChart(widths)
  const drift = driftOf(widths, minWidthMm)
  const { invented, zone, lang, units } = settings
  return {
    ...{ site, invented, welder: name, zone, lang, units, coupons: trail, minWidthMm },
    ...chart,
    chanceShort: widths.length < chanceFrom || drift !== null ? null : chanceShort(chart.meanMm, chart.sigmaMm, minWidthMm),
    drift
  }
}
