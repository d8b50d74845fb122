import { describe, expect, test } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { tick } from '../../../src/bot/posts/tick.js'
import type { TickPorts } from '../../../src/bot/posts/tick-ports.js'
import { demoSite } from '../../../src/core/site.js'
import type { Alert } from '../../../src/core/weather/alert.js'
import { draw } from '../../../src/wiring/papers.js'
import { alertOf } from '../../support/alerts.js'
import { type FakeChat, fakeChat, type Turn } from '../../support/chat.js'
import { temporaryFolder } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { type Fate, lifeOf } from '../../support/mortal.js'

const folder = temporaryFolder()
const key = { workspace: 'local', site: 'every' }
const first = iso('2026-01-05T09:00:00Z')
const daySeconds = 86_400
const unharmed: Fate = { at: 0, when: 'before', failure: null }

/** A store with a site of some kinds of posts and one supervisor; each run below has a day of its own on it. */
async function storeOf(name: string, posts: readonly string[]): Promise<Database> {
  const database = await openSqlite(`${folder()}/${name}`, { server: false })
  const store = createStore(database)
  await store.createSite(key, { ...demoSite, zone: 'UTC', posts, morning: '09:01', days: [1, 2, 3, 4, 5, 6, 7], channel: 'C1' })
  await store.savePerson('local', 'U1', { role: 'supervisor' })
  return database
}

function ports(database: Database, chat: FakeChat, now: () => number, alerts: readonly Alert[]): TickPorts {
  const table = outboxTable(database)
  return {
    store: createStore(database),
    weather: { ...fixedWeather(null), alerts: async () => ({ source: 'nws', asOf: now(), all: alerts }) },
    sheets: { byId: () => sheet(), ids: ['common-practice'] },
    slots: { ...table, keptSites: async () => (await table.keptSites()).filter(({ key: { site } }) => site === key.site) },
    report: () => 'ref',
    lang: 'en',
    units: 'metric',
    channelOf: () => 'C1',
    drain: { outbox: table, draw, chat, clock: now, wait: null, note: () => undefined }
  }
}

interface Ticking {
  readonly database: Database
  readonly index: number
  /** Of the tick at `at[1]`; the others are unharmed. */
  readonly fate: Fate
  readonly turns: readonly Turn[]
  readonly at: readonly number[]
  /** Alerts from the second tick on. */
  readonly alerts: (start: number) => readonly Alert[]
}

/** Ticks of a day, the second of which meets its fate: the calls of that one, and what is shown at its end. */
async function day({ database, index, fate, turns, at, alerts }: Ticking) {
  const start = first + index * daySeconds
  const chat = fakeChat(...turns)
  let calls: readonly string[] = []
  for (const [life, seconds] of at.entries()) {
    const own = ports(database, chat, () => start + seconds, life === 0 ? [] : alerts(start))
    const mortal = lifeOf(own, life === 1 ? fate : unharmed)
    await tick(start + seconds, mortal.ports).catch(() => undefined)
    if (life === 1) calls = mortal.calls
  }
  return { calls, shown: chat.shown.map(({ channel, text }) => `${channel} ${text.split('\n')[0]}`) }
}

async function atEveryCall(run: Omit<Ticking, 'index' | 'fate'>): Promise<readonly string[]> {
  const { calls, shown } = await day({ ...run, index: 0, fate: unharmed })
  expect(shown).toHaveLength(1)
  const points = calls.flatMap((name, index) => (['before', 'after'] as const).map((when) => ({ name, when, at: index + 1 })))
  for (const [index, { name, when, at }] of points.entries()) {
    const one = await day({ ...run, index: index + 1, fate: { at, when, failure: null } })
    expect([name, when, one.shown.length, one.shown.at(-1)?.slice(0, 2)]).toEqual([name, when, shown.length, shown.at(-1)?.slice(0, 2)])
  }
  await run.database.close()
  return [...new Set(calls)]
}

describe('a death at every call of a tick', () => {
  test('that has a severe alert to tell: told once, in the end', async () => {
    const database = await storeOf('watch', ['watch'])
    const alerts = (start: number) => [alertOf({ id: `of ${start}`, from: start, to: start + 7200, expiresAt: start + 7200 })]
    const calls = await atEveryCall({ database, turns: [], at: [0, 600, 1200, 1320, 1440], alerts })
    expect(calls).toEqual(expect.arrayContaining(['weather.alerts', 'slots.lastClaim', 'store.append', 'chat.post', 'outbox.settle']))
  }, 60_000)

  test('that tells the supervisor of a channel that is gone: told once, in the end', async () => {
    const database = await storeOf('dead', ['morning'])
    const gone: Turn = { answer: { kind: 'refused', code: 'channel_not_found' }, arrives: false }
    const calls = await atEveryCall({ database, turns: [gone], at: [60, 120, 240, 360, 480], alerts: () => [] })
    expect(calls).toEqual(expect.arrayContaining(['outbox.untold', 'store.supervisors', 'store.append', 'chat.post', 'outbox.settle']))
  }, 60_000)
})

test('the clock goes back by hours, or ahead and back: what was posted is not posted again', async () => {
  const database = await storeOf('clock', ['morning'])
  const chat = fakeChat()
  for (const seconds of [0, 60, 120, -7200, -3600, 60, 3 * 3600 + 61, 120, 180]) {
    await tick(
      first + seconds,
      ports(database, chat, () => first + seconds, [])
    )
  }
  expect(chat.shown).toHaveLength(1)
  await database.close()
})
