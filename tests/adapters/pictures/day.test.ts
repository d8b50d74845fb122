import { describe, expect, test } from 'vitest'
import { drawDay } from '../../../src/adapters/pictures/day.js'
import { pictures } from '../../../src/adapters/pictures/index.js'
import { toPng } from '../../../src/adapters/pictures/png.js'
import { escapeXml } from '../../../src/adapters/pictures/svg.js'
import { texts } from '../../../src/bot/text/index.js'
import { dayAlt, pictureDate } from '../../../src/bot/views/day-alt.js'
import type { Outcome } from '../../../src/core/outcome.js'
import { demoSite } from '../../../src/core/site.js'
import { hows } from '../../support/answers.js'
import { contrast } from '../../support/contrast.js'
import { at, emptyDayChart, noBands, noSeries, sampleDay, sixDays, surfaceOver } from '../../support/day-pictures.js'
import { elementsOf, wordsOf } from '../../support/xml.js'

const zone = 'Europe/Berlin'

describe('the picture of a day', () => {
  test('is in the map of pictures', () => {
    const chart = sampleDay('2026-05-06')
    const { mime, bytes } = pictures.day({ kind: 'day', name: 'x.png', alt: '', data: chart })
    expect(mime).toBe('image/png')
    expect(Buffer.from(bytes).equals(toPng(drawDay(chart)))).toBe(true)
  })

  test.each(hows)('$lang, $units: every name, unit, time and the invented week are on it', (how) => {
    const date = '2026-05-06'
    const plain = sampleDay(date, how, { now: at(date, '08:20', zone) })
    const chart = { ...plain, substrateC: surfaceOver(plain, 15) }
    const svg = drawDay(chart)
    const said = wordsOf(svg)
    const { dayPicture, frame } = texts[how.lang]
    for (const name of [...Object.values(dayPicture.activities), ...Object.values(dayPicture.lines), dayPicture.rain, dayPicture.chance])
      expect(said).toContain(name)
    expect(said).toContain(`${frame.invented} · ${dayPicture.inventedWeek}`)
    expect(said).toContain('demo')
    expect(said).toContain(pictureDate(chart))
    expect(said).toContain(dayPicture.now('08:20'))
    for (const time of ['05:56', '20:54']) expect(said).toContain(time)
    for (const hour of ['00', '03', '06', '12', '18', '21', '24']) expect(said).toContain(hour)
    const units = how.units === 'us' ? [/°F$/, /mph$/, /in\/h$/] : [/°C$/, /km\/h$/, /mm\/h$/]
    for (const unit of units)
      expect(
        said.some((words) => unit.test(words)),
        String(unit)
      ).toBe(true)
    expect(said.join()).not.toMatch(/undefined|null|NaN/)
    expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    expect(svg).toContain(escapeXml(dayAlt(chart)))
  })

  test.each(Object.entries(sixDays()))('%s: well-formed, every line and bar drawn, the same bytes again', (_, chart) => {
    const svg = drawDay(chart)
    const elements = elementsOf(svg)
    expect(elements[0]).toMatchObject({ name: 'svg', attributes: { width: '1000', lang: chart.lang } })
    const lines = elements.flatMap(({ attributes }) => attributes['data-line'] ?? [])
    expect(lines.sort()).toEqual(['airC', 'dewPointC', 'gustKmh', 'windKmh'])
    const bands = elements.flatMap(({ attributes }) => attributes['data-outcome'] ?? [])
    expect(bands).toEqual(chart.rows.flatMap((row) => row.bands.map(({ outcome }) => outcome)))
    expect(drawDay(structuredClone(chart))).toBe(svg)
  })

  test('each outcome has a sign, and differs from the others without colour', () => {
    const outcomes: readonly Outcome[] = ['go', 'caution', 'unknown', 'no-go']
    const date = '2026-05-04'
    const weld = outcomes.map((outcome, index) => ({
      from: at(date, `0${index * 2}:00`, zone),
      to: at(date, `0${index * 2 + 2}:00`.slice(-5), zone),
      outcome
    }))
    const elements = elementsOf(drawDay(emptyDayChart({ date, bands: { ...noBands, weld } })))
    expect(elements.flatMap(({ attributes }) => attributes['data-sign'] ?? [])).toEqual(outcomes)
    const looks = elements
      .filter(({ attributes }) => attributes['data-outcome'] !== undefined)
      .map(({ attributes: { height, fill, 'stroke-dasharray': dash } }) => [height, /url/.test(fill ?? ''), dash].join())
    expect(new Set(looks).size).toBe(4)
    const dashes = elementsOf(drawDay(sampleDay(date))).filter(({ attributes }) => attributes['data-line'] !== undefined)
    const dashOf = (name: string) => dashes.find(({ attributes }) => attributes['data-line'] === name)?.attributes['stroke-dasharray']
    expect(dashOf('airC')).not.toBe(dashOf('dewPointC'))
    expect(dashOf('windKmh')).not.toBe(dashOf('gustKmh'))
  })

  // Contrast ratio and its bounds, 7:1 for words and 3:1 for graphics: W3C, WCAG 2.2, success criteria 1.4.6 and 1.4.11.
  test('words are dark on light or light on dark, lines stand out from the ground', () => {
    const plain = sampleDay('2026-05-06')
    const elements = elementsOf(drawDay({ ...plain, substrateC: surfaceOver(plain, 10) }))
    for (const { name, attributes } of elements) {
      if (name === 'text') expect(['#111111', '#ffffff']).toContain(attributes.fill)
      if (attributes['data-line'] !== undefined) expect(contrast(attributes.stroke ?? '', '#ffffff')).toBeGreaterThan(3)
      if (attributes['data-outcome'] === 'go') expect(contrast(attributes.fill ?? '', '#ffffff')).toBeGreaterThan(7)
    }
  })

  // 30 px of 1000 are 11 px on a phone 380 px wide: common practice, no source.
  test('no words are too small for a phone, none begin off the picture', () => {
    const plain = sampleDay('2026-05-06', { lang: 'fr', units: 'us' })
    for (const { name, attributes } of elementsOf(drawDay({ ...plain, substrateC: surfaceOver(plain, 10) }))) {
      if (name !== 'text') continue
      expect(Number(attributes['font-size'])).toBeGreaterThanOrEqual(30)
      expect(Number(attributes.x)).toBeGreaterThanOrEqual(0)
      expect(Number(attributes.x)).toBeLessThanOrEqual(1000)
    }
  })

  test('words of people cannot break out of their place', () => {
    const svg = drawDay(emptyDayChart({ site: `</text><script>"&'\u0000` }))
    expect(elementsOf(svg).map(({ name }) => name)).not.toContain('script')
    expect(wordsOf(svg)).toContain(`</text><script>"&'`)
  })

  test('a day of which nothing is known says so, and draws nothing', () => {
    const elements = elementsOf(drawDay(emptyDayChart()))
    const said = wordsOf(drawDay(emptyDayChart()))
    expect(said.filter((words) => words === texts.en.posts.noForecast)).toHaveLength(3)
    expect(said).toContain(texts.en.dayPicture.notJudged)
    expect(elements.filter(({ attributes }) => 'data-line' in attributes || 'data-bar' in attributes || 'data-outcome' in attributes)).toEqual([])
    expect(said.join()).not.toMatch(/invent/)
  })

  test('a part that is missing is missing alone', () => {
    const date = '2026-05-06'
    const full = sampleDay(date)
    const said = wordsOf(drawDay({ ...full, windKmh: [], gustKmh: noSeries.gustKmh }))
    expect(said.filter((words) => words === texts.en.posts.noForecast)).toHaveLength(1)
    expect(wordsOf(drawDay(full))).not.toContain(texts.en.dayPicture.lines.substrateC)
  })

  test.each([
    ['one value', [{ at: at('2026-05-06', '12:00', zone), value: 12 }]],
    ['a flat line', [6, 12, 18].map((hour) => ({ at: at('2026-05-06', `${hour}:00`.padStart(5, '0'), zone), value: 0 }))],
    ['gaps', [6, 8, 10, 12].map((hour, index) => ({ at: at('2026-05-06', `${hour}:00`.padStart(5, '0'), zone), value: index === 1 ? null : hour }))],
    [
      'the coldest and the hottest',
      [
        { at: at('2026-05-06', '01:00', zone), value: -60 },
        { at: at('2026-05-06', '12:00', zone), value: 60 }
      ]
    ]
  ] as const)('%s can be drawn', (_, points) => {
    const svg = drawDay(
      emptyDayChart({ date: '2026-05-06', series: { ...noSeries, airC: points, windKmh: points.map((each) => ({ ...each, value: 0 })) } })
    )
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    elementsOf(svg)
  })

  test.each(['up', 'down', null] as const)('sun always %s', (always) => {
    const up = elementsOf(drawDay(emptyDayChart({ sun: { sunriseAt: null, sunsetAt: null, always } }))).filter(
      ({ attributes }) => attributes['data-sun'] === 'up'
    )
    expect(up).toHaveLength(always === 'up' ? 1 : 0)
  })

  test('on a short winter day the times stand beside the light, on a day of 25 hours everything fits', () => {
    const winter = emptyDayChart({ date: '2026-12-21', settings: { ...demoSite, lang: 'fr', units: 'us' } })
    const sun = { sunriseAt: at('2026-12-21', '11:00', zone), sunsetAt: at('2026-12-21', '13:00', zone), always: null }
    expect(wordsOf(drawDay({ ...winter, ...sun }))).toEqual(expect.arrayContaining(['11:00', '13:00']))
    expect(wordsOf(drawDay(emptyDayChart({ date: '2026-10-25' }))).filter((words) => words === '03')).toHaveLength(2)
  })
})
