import { expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { type Watched, watchSites } from '../../../src/bot/posts/watch-tick.js'
import { demoSite, type SiteSettings } from '../../../src/core/site.js'
import type { Forecast } from '../../../src/core/weather/forecast.js'
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
  look(time: string, forecast: Forecast | null): Promise<readonly string[]>
  payload(of: string): Promise<{ readonly text: string; readonly edits?: string } | null>
}

function dayOf(database: Database, change: Partial<SiteSettings> = {}, looked: Parameters<typeof watchSites>[2]['looked'] = null): Day {
  const slots = outboxTable(database)
  const site: Watched = { key, settings: { ...demoSite, ...change }, seq: 0 }
  return {
    look: (time, forecast) =>
      watchSites(berlin(time), [site], {
        store: createStore(database),
        weather: fixedWeather(forecast),
        sheets: { byId: () => sheet(), ids: ['common-practice'] },
        report: (error) => {
          throw error
        },
        slots,
        channelOf: () => 'C1',
        looked,
        clock: () => 0
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
