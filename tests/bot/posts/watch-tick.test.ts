import { expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { type Watched, watchSites } from '../../../src/bot/posts/watch-tick.js'
import { demoSite, type SiteSettings } from '../../../src/core/site.js'
import type { Alert } from '../../../src/core/weather/alert.js'
import type { Forecast } from '../../../src/core/weather/forecast.js'
import { alertOf } from '../../support/alerts.js'
import { forEachDatabase } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { weatherOf } from '../../support/post-on.js'

const key = { workspace: 'local', site: 'demo' }
const slot = 'local/demo/watch/2026-05-04'

/** Local clock of 2026-05-04 in Berlin. */
const berlin = (time: string) => iso(`2026-05-04T${time}:00+02:00`)

interface Day {
  /** One look with a forecast; the keys queued. */
  look(time: string, forecast: Forecast | null, alerts?: readonly Alert[]): Promise<readonly string[]>
  payload(of: string): Promise<{ readonly text: string; readonly edits?: string } | null>
}

function dayOf(database: Database, change: Partial<SiteSettings> = {}, looked: Parameters<typeof watchSites>[2]['looked'] = null): Day {
  const slots = outboxTable(database)
  const site: Watched = { key, settings: { ...demoSite, ...change }, seq: 0 }
  return {
    look: (time, forecast, alerts) =>
      watchSites(berlin(time), [site], {
        store: createStore(database),
        weather: {
          ...fixedWeather(forecast),
          alerts: async () => (alerts === undefined ? null : { source: 'nws', asOf: berlin(time), all: alerts })
        },
        sheets: { byId: () => sheet(), ids: ['common-practice'] },
        report: (error) => {
          throw error
        },
        slots,
        channelOf: () => 'C1',
        looked,
        clock: () => 0,
        goOn: async () => true
      }),
    payload: async (of) => ((await slots.post('local', of))?.payload ?? null) as never
  }
}

const mild = (issued: string) => weatherOf(undefined, issued)
const stormy = (from: string) => weatherOf((hour) => (hour > berlin(from) ? { gustKmh: 95, windKmh: 60 } : {}), '2026-05-04T08:00:00Z')

forEachDatabase((open) => {
  test('quiet all day while nothing changes', async () => {
    const day = dayOf(await open())
    const said: string[] = []
    for (const time of ['06:00', '08:10', '10:20', '12:30', '14:40']) said.push(...(await day.look(time, mild('2026-05-04T04:00:00Z'))))
    expect(said).toEqual([])
  })

  test('a turn for the worse is a new message, one for the better edits it, the next worse one is new again', async () => {
    const day = dayOf(await open())
    expect(await day.look('10:00', mild('2026-05-04T08:00:00Z'))).toEqual([])
    // Within the hour of closing up first the warning, then the answers themselves.
    expect(await day.look('11:30', stormy('12:00'))).toEqual([`${slot}/01`])
    expect((await day.payload(`${slot}/01`))?.text).toMatch(/^✕ gusts now due, demo, 11:30\n/)
    expect(await day.look('12:10', stormy('12:00'))).toEqual([`${slot}/02`])
    const worse = await day.payload(`${slot}/02`)
    expect(worse?.text).toMatch(/^✕ NO-GO: .*, demo, 12:10$/m)
    expect(worse?.text).toMatch(/^✕ lay sheets: no-go, was go: gust/m)
    expect(worse?.edits).toBeUndefined()
    expect(await day.look('12:20', stormy('12:00'))).toEqual([])
    expect(await day.look('12:40', mild('2026-05-04T10:30:00Z'))).toEqual([`${slot}/03`])
    const better = await day.payload(`${slot}/03`)
    expect(better?.edits).toBe(`${slot}/02`)
    expect(better?.text).toMatch(/^✓ lay sheets: go, was no-go/m)
    expect(await day.look('13:00', stormy('12:00'))).toEqual([`${slot}/04`])
    expect((await day.payload(`${slot}/04`))?.edits).toBeUndefined()
  })

  test('a severe alert that touches the hours of work is a new message, once, also where an update takes its place', async () => {
    const day = dayOf(await open())
    // Overcast: the sun on the deck turns nothing.
    const fine = weatherOf(() => ({ cloudPct: 100, airC: 12 }), '2026-05-04T06:00:00Z')
    const storm = alertOf({ id: 'storm', from: berlin('13:00'), to: berlin('15:00'), expiresAt: berlin('15:00') })
    expect(await day.look('10:00', fine, [])).toEqual([])
    expect(
      await day.look('10:10', fine, [
        { ...storm, severity: 'moderate' },
        { ...storm, id: 'night', from: berlin('18:00') }
      ])
    ).toEqual([])
    expect(await day.look('10:20', fine, [storm])).toEqual([`${slot}/01`])
    const told = await day.payload(`${slot}/01`)
    expect(told?.edits).toBeUndefined()
    expect(told?.text).toMatch(
      /^△ severe-weather alert, demo, 10:20\n△ Severe Thunderstorm Warning, 13:00–15:00 \(US National Weather Service\): follow/
    )
    const update = { ...storm, id: 'update', replaces: ['storm'], to: berlin('14:30') }
    expect(await day.look('10:30', fine, [storm])).toEqual([])
    expect(await day.look('10:40', fine, [update])).toEqual([])
    // A claim was taken to keep the id of the update. It got worse: that must be seen.
    expect(await day.look('10:50', fine, [{ ...update, severity: 'extreme' }])).toEqual([`${slot}/03`])
    expect((await day.payload(`${slot}/03`))?.edits).toBeUndefined()
    // Cancelled before its time: the message that stands there says so; the same one again is no news.
    expect(await day.look('11:00', fine, [])).toEqual([`${slot}/04`])
    expect(await day.payload(`${slot}/04`)).toMatchObject({ edits: `${slot}/03`, text: expect.stringContaining('over: Severe Thunderstorm Warning') })
    expect(await day.look('11:10', fine, [])).toEqual([])
    await day.look('11:20', fine, [{ ...update, severity: 'extreme' }])
    expect(await day.look('11:30', fine, [{ ...update, severity: 'extreme' }])).toEqual([])
    expect(
      await day.look('11:40', fine, [
        { ...update, severity: 'extreme' },
        { ...storm, id: 'other' }
      ])
    ).toEqual([`${slot}/06`])
  })

  test('what a warning says is shown as text, whatever it holds', async () => {
    const day = dayOf(await open())
    await day.look('10:20', mild('2026-05-04T06:00:00Z'), [alertOf({ event: '<!channel> & *bold*', from: 0, to: berlin('15:00') })])
    const { text } = (await day.payload(`${slot}/00`)) ?? { text: '' }
    expect(text).toContain('&lt;!channel&gt; &amp;')
    expect(text).toContain('until 15:00')
  })

  test('another instance, or a restart, says nothing twice', async () => {
    const database = await open()
    await dayOf(database).look('10:00', mild('2026-05-04T08:00:00Z'))
    const both = await Promise.all([dayOf(database).look('12:10', stormy('12:00')), dayOf(database).look('12:10', stormy('12:00'))])
    expect(both.flat()).toEqual([`${slot}/01`])
    expect(await dayOf(database).look('12:20', stormy('12:00'))).toEqual([])
  })

  test('without a forecast it says once that it does not see, and then that it does', async () => {
    const day = dayOf(await open())
    await day.look('08:00', mild('2026-05-04T05:00:00Z'))
    expect(await day.look('17:30', mild('2026-05-04T03:00:00Z'))).toEqual([`${slot}/01`])
    expect((await day.payload(`${slot}/01`))?.text).toMatch(/^\? no forecast that can be used, demo, 17:30$/m)
    expect(await day.look('17:40', null)).toEqual([])
    expect((await day.look('17:50', mild('2026-05-04T15:30:00Z'))).length).toBe(1)
    expect((await day.payload(`${slot}/02`))?.edits).toBe(`${slot}/01`)
  })

  test('only at work: hours, days, wishes, closed; hours over midnight', async () => {
    const database = await open()
    const storm = stormy('00:00')
    const baseline = async (change: Partial<SiteSettings>, time: string) => {
      const fresh = dayOf(database, change)
      await fresh.look(time, storm)
      return (await outboxTable(database).lastClaim('local', `post/${slot}/`)) !== null
    }
    expect(await baseline({}, '05:59')).toBe(false)
    expect(await baseline({}, '18:00')).toBe(false)
    expect(await baseline({ days: [2] }, '10:00')).toBe(false)
    expect(await baseline({ posts: ['morning'] }, '10:00')).toBe(false)
    expect(await baseline({ closed: true }, '10:00')).toBe(false)
    expect(await baseline({ hours: '22:00-05:00' }, '10:00')).toBe(false)
    expect(await baseline({ hours: '22:00-05:00' }, '23:00')).toBe(true)
  })

  test('looks are spared for ten minutes, but not where something was logged, nor after the clock went back', async () => {
    const database = await open()
    const looked = new Map([['local demo', { at: berlin('10:00'), seq: 0 }]])
    const day = dayOf(database, {}, looked)
    await day.look('10:09', mild('2026-05-04T08:00:00Z'))
    expect(looked.get('local demo')?.at).toBe(berlin('10:00'))
    await day.look('10:10', mild('2026-05-04T08:00:00Z'))
    expect(looked.get('local demo')?.at).toBe(berlin('10:10'))
    looked.set('local demo', { at: berlin('10:10'), seq: -1 })
    await day.look('10:11', mild('2026-05-04T08:00:00Z'))
    expect(looked.get('local demo')).toEqual({ at: berlin('10:11'), seq: 0 })
    await day.look('09:00', mild('2026-05-04T06:00:00Z'))
    expect(looked.get('local demo')?.at).toBe(berlin('09:00'))
  })
})
