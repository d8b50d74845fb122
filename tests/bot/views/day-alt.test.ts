import { describe, expect, test } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { dayAlt, inPictureUnit, pictureAmount, pictureDate } from '../../../src/bot/views/day-alt.js'
import type { Outcome } from '../../../src/core/outcome.js'
import { demoSite } from '../../../src/core/site.js'
import { hows, langs } from '../../support/answers.js'
import { at, emptyDayChart, noBands, noSeries, sampleDay, surfaceOver } from '../../support/day-pictures.js'

const date = '2026-05-06'
const zone = 'Europe/Berlin'
const hour = (time: string) => at(date, time, zone)
const bands = { ...noBands, weld: [{ from: hour('06:00'), to: hour('15:00'), outcome: 'go' as Outcome }] }
const series = {
  ...noSeries,
  airC: [
    { at: hour('05:00'), value: -10 },
    { at: hour('15:00'), value: 20 }
  ],
  dewPointC: [
    { at: hour('04:00'), value: -20 },
    { at: hour('16:00'), value: 10 }
  ],
  substrateC: [
    { at: hour('03:00'), value: 0, spread: 2 },
    { at: hour('13:00'), value: 50, spread: 2 }
  ],
  windKmh: [{ at: hour('12:00'), value: 16.09344 }],
  gustKmh: [{ at: hour('12:30'), value: 80.4672 }],
  rain: [{ from: hour('15:00'), to: hour('16:00'), mmPerHour: 25.4, chancePct: 70 }]
}
const sun = { sunriseAt: hour('05:56'), sunsetAt: hour('20:54'), always: null }

describe('the picture of a day in words', () => {
  // °F = 1.8 °C + 32, 1 mile = 1.609344 km, 1 in = 25.4 mm: NIST SP 811, appendix B.8.
  const shown = {
    metric: ['-10 °C', '20 °C', '-20 °C', '10 °C', '0 °C', '50 °C', '16 km/h', '80 km/h', '25.4 mm/h'],
    us: ['14 °F', '68 °F', '-4 °F', '50 °F', '32 °F', '122 °F', '10 mph', '50 mph', '1 in/h']
  } as const

  test.each(hows)('$lang, $units: bands, extremes with their times, rain, sun, now', (how) => {
    const text = texts[how.lang]
    const alt = dayAlt(emptyDayChart({ date, settings: { ...demoSite, ...how, invented: false }, bands, series, sun, now: hour('08:20') }))
    const plain = alt.replaceAll('\u00a0', ' ')
    for (const amount of shown[how.units]) expect(plain.replace(/(\d),(\d)/g, '$1.$2')).toContain(amount)
    for (const time of ['05:00', '15:00', '04:00', '16:00', '03:00', '13:00', '12:00', '12:30', '05:56', '20:54', '08:20'])
      expect(alt).toContain(time)
    expect(alt).toContain(`06:00–15:00 ${text.outcomesWithin.go}`)
    expect(plain).toContain('70 %')
    for (const words of Object.values(text.activities)) expect(alt.toLowerCase()).toContain(words.toLowerCase())
    expect(alt).toContain('demo')
    expect(alt).not.toMatch(/undefined|null|NaN/)
    expect(alt.length).toBeLessThan(2000)
  })

  test.each(langs)('%s: a day of the invented week says so', (lang) => {
    const chart = sampleDay(date, { lang })
    expect(dayAlt(chart)).toContain(texts[lang].dayPicture.inventedWeek)
    expect(dayAlt(chart)).toContain(texts[lang].frame.invented)
    expect(dayAlt({ ...chart, sample: false, invented: false })).not.toMatch(/invent/)
  })

  test.each(langs)('%s: without a forecast it says that, and nothing of the weather', (lang) => {
    const alt = dayAlt(emptyDayChart({ settings: { ...demoSite, lang, invented: false } }))
    expect(alt.toLowerCase()).toContain(texts[lang].posts.noForecast)
    expect(alt).toContain(texts[lang].dayPicture.notJudged)
    expect(alt).not.toMatch(/°|km|mph/)
  })

  test('a surface that nothing is known of is named as such', () => {
    expect(dayAlt(sampleDay(date))).toContain('Substrate: not known')
    const chart = sampleDay(date)
    expect(dayAlt({ ...chart, substrateC: surfaceOver(chart, 10) })).toMatch(/Substrate -?\d+\u00a0°C at \d\d:\d\d to /)
  })

  test('no rain is told apart from rain that is not known', () => {
    const rain = (mmPerHour: number | null) => [{ from: hour('15:00'), to: hour('16:00'), mmPerHour, chancePct: null }]
    expect(dayAlt(emptyDayChart({ date, series: { ...series, rain: rain(0) } }))).toContain('No rain')
    expect(dayAlt(emptyDayChart({ date, series: { ...series, rain: rain(null) } }))).toContain('Rain: not known')
  })

  test('polar day and night', () => {
    expect(dayAlt(emptyDayChart({ sun: { sunriseAt: null, sunsetAt: null, always: 'up' } }))).toContain('The sun stays up')
    expect(dayAlt(emptyDayChart({ sun: { sunriseAt: null, sunsetAt: null, always: 'down' } }))).toContain('The sun stays down')
  })

  test('a day in pieces stays below the 2,000 characters of an alt text', () => {
    const outcomes = ['go', 'caution', 'unknown', 'no-go'] as const
    const pieces = Array.from({ length: 96 }, (_, index) => ({
      from: hour('00:00') + index * 900,
      to: hour('00:00') + (index + 1) * 900,
      outcome: outcomes[index % 4] ?? 'go'
    }))
    const all = { spray: pieces, lay: pieces, weld: pieces, people: pieces }
    for (const lang of langs) {
      const alt = dayAlt({ ...emptyDayChart({ date, settings: { ...demoSite, lang }, bands: all, series, sun, sample: true }), site: 'x'.repeat(80) })
      expect(alt.length).toBeLessThan(2000)
      expect(alt).toContain(texts[lang].frame.more(88))
    }
    expect(dayAlt(emptyDayChart({ date, bands: { ...noBands, lay: pieces.slice(-1) }, series }))).toContain('23:45–24:00')
  })
})

describe('amounts of the picture', () => {
  const us = { lang: 'en', units: 'us' } as const
  const metric = { lang: 'en', units: 'metric' } as const

  test('drizzle is never told as nothing', () => {
    expect(pictureAmount(0.1, 'mm', us)).toBe('< 0.01\u00a0in/h')
    expect(pictureAmount(0.01, 'mm', metric)).toBe('< 0.1\u00a0mm/h')
    expect(pictureAmount(0, 'mm', us)).toBe('0\u00a0in/h')
  })

  test('degrees and speeds are whole, without a minus before nothing', () => {
    expect(pictureAmount(-0.3, 'C', metric)).toBe('0\u00a0°C')
    expect(pictureAmount(24.6, 'km/h', metric)).toBe('25\u00a0km/h')
    expect(inPictureUnit(100, 'C', us)).toBeCloseTo(212, 9)
  })

  // 4 May 2026 is a Monday: ISO 8601 week date 2026-W19-1.
  test.each([
    ['en', /^Mon 4 May 2026$/],
    ['es', /^lun\.? 4 may\.? 2026$/],
    ['fr', /^lun\. 4 mai 2026$/]
  ] as const)('the date in %s', (lang, expected) => {
    expect(pictureDate({ date: '2026-05-04', lang })).toMatch(expected)
  })
})
