import { describe, expect, test } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { speakMorning } from '../../../src/bot/posts/morning.js'
import type { PostOn } from '../../../src/bot/posts/post.js'
import type { How } from '../../../src/bot/views/how.js'
import { demoSite } from '../../../src/core/site.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { sheet } from '../../support/facts.js'
import { forecastOf } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { emptyMemory, emptyRecord } from '../../support/memory.js'

const date = '2026-05-04'
const now = iso('2026-05-04T03:30:00Z')

function on(change: Partial<PostOn> = {}): PostOn {
  return {
    site: 'demo',
    settings: demoSite,
    memory: emptyMemory(),
    record: emptyRecord,
    forecast: sampleForecast(now, 'Europe/Berlin'),
    alerts: null,
    weatherLacks: null,
    sheet: sheet(),
    date,
    now,
    ...change
  }
}

/** The same hour all day and the day before, issued at 03:00Z: a roof that has been dry all along. */
function weather(hour: Partial<Hour>): PostOn['forecast'] {
  const hours: Hour[] = []
  for (let at = iso('2026-05-02T15:00:00Z'); at <= iso('2026-05-05T00:00:00Z'); at += 3600) {
    hours.push({ ...emptyHour(at), airC: 14, rhPct: 50, windKmh: 2, gustKmh: 4, cloudPct: 60, rainMm: 0, rainChancePct: 0, thunder: false, ...hour })
  }
  return forecastOf('2026-05-04T03:00:00Z', hours)
}

function text(change: Partial<PostOn> = {}, how: How = metric): string {
  return speakMorning(on(change), how).text
}

describe('the morning post', () => {
  test('every language, system of units and day of the invented week stays inside the limits of a message', () => {
    for (const how of hows) {
      for (let day = 4; day <= 10; day += 1) {
        const own = `2026-05-${String(day).padStart(2, '0')}`
        const at = iso(`${own}T03:30:00Z`)
        const spoken = speakMorning(on({ date: own, now: at, forecast: sampleForecast(at, how.zone) }), how)
        expect([how.lang, how.units, own, ...blockProblems(spoken)]).toEqual([how.lang, how.units, own])
      }
    }
  })

  test('so do the worst weather, no weather and names of people at their worst', () => {
    const rows: readonly Partial<PostOn>[] = [
      { forecast: null },
      { forecast: weather({ airC: 43, rhPct: 60, windKmh: 70, gustKmh: 110, rainMm: 20, rainChancePct: 100, thunder: true }) },
      { forecast: weather({ airC: -35, rhPct: 90, windKmh: 70, gustKmh: 110 }) },
      { forecast: weather({ airC: null, rhPct: null, windKmh: null, gustKmh: null, rainMm: null, rainChancePct: null, thunder: null }) },
      { site: `<!channel> *${'x'.repeat(500)} https://a.b <@U1>` }
    ]
    for (const how of hows) for (const row of rows) expect(blockProblems(speakMorning(on(row), how))).toEqual([])
  })

  test('the first line is the answer for the day; what is only forecast says so', () => {
    expect(text({ forecast: weather({}) }).split('\n')[0]).toBe('✓ GO: spray (forecast), demo, 4 May 2026')
    expect(text({ forecast: weather({ gustKmh: 100, windKmh: 80 }) }).split('\n')[0]).toMatch(/^✕ NO-GO: spray/)
    expect(text({ forecast: null }).split('\n').slice(0, 2)).toEqual(['? UNKNOWN: spray, demo, 4 May 2026', 'no forecast that can be used'])
  })

  test('hours, what ends them, what binds with number and limit, and when', () => {
    const said = text()
    expect(said).toMatch(/^△ spray: .*17:00–20:00 caution, after: too little daylight to close up$/m)
    expect(said).toMatch(/^spray: binds: mean wind 1\d(\.5)? km\/h \(forecast\), at most 25 km\/h, about \d\d:00$/m)
    expect(text({ forecast: weather({ windKmh: 80, gustKmh: 100 }) })).toContain('✕ spray: no window of 60 min')
  })

  test('readings that no forecast gives are asked for', () => {
    expect(text()).toContain('Before work: read both parts of the mixed kit\n')
    // A substrate that the limits sheet does not know cannot be simulated.
    expect(text({ memory: emptyMemory({ substrate: 'slate' }) })).toContain(
      'Before work: read the substrate temperature, read both parts of the mixed kit, read the sheet temperature'
    )
    expect(text({ forecast: weather({ windKmh: 80, gustKmh: 100 }) })).not.toContain('Before work')
  })

  test('kits: warm box below the limit of the kit, shade above it, nothing between', () => {
    expect(text({ forecast: weather({ airC: 6 }) })).toContain('air down to 6 °C, kit at least 21 °C: keep them in the warm box')
    expect(text({ forecast: weather({ airC: 35 }) })).toContain('air up to 35 °C, kit at most 32 °C: keep them in the shade')
    expect(text({ forecast: weather({ airC: 25 }) })).not.toContain('Kits:')
    // 21 °C = 69.8 °F, 6 °C = 42.8 °F: exact by definition of the scales.
    expect(text({ forecast: weather({ airC: 6 }) }, { ...metric, units: 'us' })).toContain('air down to 42.8 °F, kit at least 69.8 °F')
  })

  test('people: heat, cold, wind and thunder have their hours, what to do and the usual deferral', () => {
    const rows = [
      [{ airC: 43, rhPct: 60 }, 'too hot|heat index', 'Heat:'],
      [{ airC: -15, windKmh: 10 }, 'feels like', 'Cold:'],
      [{ windKmh: 60, gustKmh: 95 }, 'gust', 'Edges and wind:'],
      [{ thunder: true }, 'thunder', 'Lightning:']
    ] as const
    for (const [hour, words, caution] of rows) {
      const said = text({ forecast: weather(hour) })
      expect(said).toMatch(new RegExp(`[△?✕] 05:30–21:00 (${words})`))
      expect(said).toContain(caution)
      expect(said).toContain('Local rules and licensed practice come first.')
    }
    expect(text({ forecast: weather({}) })).toContain('✓ people on the roof')
    expect(text({ forecast: weather({}) })).toContain('Isocyanates:')
  })

  test('invented weather and an invented site say so, with the limits sheet', () => {
    expect(text()).toMatch(/Weather: invented week, demo · issued 05:00 · invented site · limits sheet common-practice v1$/)
    const real = text({ settings: { ...demoSite, invented: false }, forecast: weather({}) })
    expect(real).not.toContain('invented')
    expect(real).toContain('Data from MET Norway')
  })

  test('the same site gives the same bytes', () => {
    expect(JSON.stringify(speakMorning(on(), metric))).toBe(JSON.stringify(speakMorning(on(), metric)))
  })
})
