import type { WelderState } from '../../core/log/states/welder.js'
import type { SiteSettings } from '../../core/site.js'
import { widthsChart } from '../../core/welds/widths-chart.js'
import type { How } from '../views/how.js'
import { widthsAlt } from '../views/widths-alt.js'
import type { Paper } from './paper.js'

/** The picture of a welder's coupons. */
export function widthsPaper(welder: WelderState, site: string, settings: SiteSettings, minWidthMm: number, { lang, units }: How): Paper<'widths'> {
  const chart = widthsChart(welder, site, { ...settings, lang, units }, minWidthMm)
  return { kind: 'widths', name: `${site}-${welder.name.toLowerCase()}-widths.png`, alt: widthsAlt(chart), data: chart }
}
