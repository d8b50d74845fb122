import { describe, expect, it } from 'vitest'
import { pictures } from '../../../src/adapters/pictures/index.js'
import { toPng } from '../../../src/adapters/pictures/png.js'
import { escapeXml } from '../../../src/adapters/pictures/svg.js'
import { drawWidths } from '../../../src/adapters/pictures/widths.js'
import { texts } from '../../../src/bot/text/index.js'
import { widthsAlt } from '../../../src/bot/views/widths-alt.js'
import { demoSite, type SiteSettings } from '../../../src/core/site.js'
import { type WidthsChart, widthsChart } from '../../../src/core/welds/widths-chart.js'
import { hows } from '../../support/answers.js'
import { now } from '../../support/facts.js'
import { elementsOf, wordsOf } from '../../support/xml.js'

function chartOf(widths: readonly number[], settings: Partial<SiteSettings> = {}, apartS = 3600, site = 'demo'): WidthsChart {
  const trail = widths.map((widthMm, index) => ({ at: now + index * apartS, widthMm, minWidthMm: 38, passed: widthMm >= 38 }))
  return widthsChart({ name: 'robot', trail }, site, { ...demoSite, ...settings }, 38)
}

const numbersIn = (svg: string) => [...svg.matchAll(/ (?:cx|cy|x|y|x1|x2|y1|y2)="([^"]*)"/g)].map(([, value]) => Number(value))

describe('the picture of coupons', () => {
  it('is in the map of pictures, and the same bytes twice', () => {
    const chart = chartOf([41, 40])
    const { mime, bytes } = pictures.widths({ kind: 'widths', name: 'x.png', alt: '', data: chart })
    expect(mime).toBe('image/png')
    expect(Buffer.from(bytes).equals(toPng(drawWidths(chart)))).toBe(true)
  })

  it.each(hows)('$lang, $units: names every line with its amount, whole, and the invented site', (how) => {
    const svg = drawWidths(chartOf([42, 41, 36, 40, 41.5], how))
    const said = wordsOf(svg)
    const { widths, frame } = texts[how.lang]
    for (const name of [widths.least, widths.mean, widths.low, widths.high])
      expect(
        said.some((words) => words.startsWith(`${name} `) && !words.endsWith('…')),
        name
      ).toBe(true)
    expect(said.join()).toContain(frame.invented)
    expect(said.join()).toContain(how.units === 'us' ? 'in' : 'mm')
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    expect(svg).toContain(escapeXml(widthsAlt(chartOf([42, 41, 36, 40, 41.5], how))))
  })

  it('tells a failed coupon from a passed one by its shape', () => {
    const svg = drawWidths(chartOf([42, 36, 41]))
    expect(elementsOf(svg).filter(({ attributes }) => attributes['data-coupon'] === 'passed')).toHaveLength(2)
    expect(elementsOf(svg).filter(({ attributes }) => attributes['data-coupon'] === 'failed')).toHaveLength(1)
  })

  it.each([[[]], [[41]], [[40, 40, 40]], [[0, 300]], [Array.from({ length: 30 }, (_, index) => 36 + (index % 9))]])(
    'keeps %j inside, whatever they are',
    (widths) => {
      const svg = drawWidths(chartOf(widths, {}, 40_000))
      for (const value of numbersIn(svg)) {
        expect(value).toBeGreaterThanOrEqual(0)
        expect(value).toBeLessThanOrEqual(1000)
      }
    }
  )

  it('escapes what people named', () => {
    const svg = drawWidths(chartOf([41], {}, 1, '<script>&"'))
    expect(svg).not.toContain('<script>')
  })
})

describe('its alt text', () => {
  it('tells lines, coupons with day and time, and the drift', () => {
    const alt = widthsAlt(chartOf([43, 42, 41, 40, 39]))

    expect(alt).toContain('Least 38 mm')
    expect(alt).toContain('mean 41 mm')
    expect(alt).toContain('5 coupons: Mon 4 May 12:00 43 mm passed, 13:00 42 mm passed')
    expect(alt).toContain('Widths are falling from coupon to coupon, at this rate short in 2 coupons')
    // A chance takes the next for one of the same kind, which a drift says it is not.
    expect(alt).not.toContain('Chance')
    expect(widthsAlt(chartOf([43, 40, 41, 40, 42]))).toMatch(/Chance that the next is short \d/)
  })

  it('says that there are none, and stays short with many', () => {
    expect(widthsAlt(chartOf([]))).toContain('No coupons yet')
    expect(widthsAlt(chartOf([41, 41, 41, 41]))).not.toContain('hance')
    for (const how of hows)
      expect(
        widthsAlt(
          chartOf(
            Array.from({ length: 30 }, () => 41.25),
            how,
            90_000
          )
        ).length
      ).toBeLessThan(2000)
  })
})
