import { describe, expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { StoreError } from '../../../src/bot/ports.js'
import { tick } from '../../../src/bot/posts/tick.js'
import type { TickPorts } from '../../../src/bot/posts/tick-ports.js'
import { demoSite } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { type FakeChat, fakeChat, type Turn } from '../../support/chat.js'
import { forEachDatabase } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { type Fate, lifeOf } from '../../support/mortal.js'

const key = { workspace: 'local', site: 'every' }
const first = iso('2026-01-05T05:30:00Z')
const daySeconds = 86_400
const unharmed: Fate = { at: 0, when: 'before', failure: null }

/** A site that posts each morning and nothing else; each run below has a day of its own on one database. */
async function everyMorning(database: Database): Promise<void> {
  await createStore(database).createSite(key, { ...demoSite, zone: 'UTC', posts: ['morning'], days: [1, 2, 3, 4, 5, 6, 7], channel: 'C1' })
}

function ports(database: Database, chat: FakeChat, now: () => number): TickPorts {
  const table = outboxTable(database)
  return {
    store: createStore(database),
    weather: fixedWeather(null),
    sheets: { byId: () => sheet(), ids: ['common-practice'] },
    slots: { ...table, keptSites: async () => (await table.keptSites()).filter(({ key: { site } }) => site === key.site) },
    report: () => 'ref',
    lang: 'en',
    units: 'metric',
    channelOf: () => 'C1',
    drain: { outbox: table, draw, chat, clock: now, wait: null, note: () => undefined }
  }
}

interface Run {
  readonly calls: readonly string[]
  readonly shown: number
  readonly state: string | undefined
}

/** A day: lives one after the other, a minute or two apart, the last ones unharmed. */
async function day(database: Database, index: number, fates: readonly Fate[], turns: readonly Turn[]): Promise<Run> {
  const due = first + index * daySeconds
  const chat = fakeChat(...turns)
  const calls: string[] = []
  const times = [0, 60, 200, 320]
  for (const [life, seconds] of times.entries()) {
    const { ports: mortal, calls: own } = lifeOf(
      ports(database, chat, () => due + seconds),
      fates[life] ?? unharmed
    )
    await tick(due + seconds, mortal).catch(() => undefined)
    if (life === 0) calls.push(...own)
  }
  const slot = `local/every/morning/${new Date(due * 1000).toISOString().slice(0, 10)}`
  const post = await outboxTable(database).post('local', slot)
  return { calls, shown: chat.shown.filter((message) => message.key === slot).length, state: post?.state }
}

/** What a chat that does not answer leaves behind. */
const arrived: Turn = { answer: { kind: 'unknown' }, arrives: true }
const lost: Turn = { answer: { kind: 'unknown' }, arrives: false }
const later: Turn = { answer: { kind: 'later', afterS: 20 }, arrives: false }

forEachDatabase((open, kind) => {
  describe('a post each day, and a death at every call of the code', () => {
    test('killed just before or just after each call to store, transaction, weather and chat: there once, in the end', async () => {
      const database = await open()
      await everyMorning(database)
      const { calls, shown } = await day(database, 0, [], [])
      expect(shown).toBe(1)
      // The calls of one tick, by the code itself: none of them is left out below.
      expect(new Set(calls)).toEqual(
        new Set([
          'slots.keptSites',
          'outbox.untold',
          'slots.claimed',
          'weather.at',
          'store.append',
          'view.statesAt',
          'view.state',
          'outbox.skipQueued',
          'outbox.take',
          'chat.post',
          'outbox.settle'
        ])
      )
      const points = calls.flatMap((name, index) =>
        (['before', 'after'] as const).map((when) => ({ name, fate: { at: index + 1, when, failure: null } }))
      )
      for (const [index, { name, fate }] of points.entries()) {
        expect([name, fate.when, await day(database, index + 1, [fate], [])]).toMatchObject([name, fate.when, { shown: 1, state: 'sent' }])
      }
    }, 60_000)

    if (kind === 'postgres') return

    test('the same where the first answer of the chat is lost, and death comes in the second life, at the look or the resend', async () => {
      const database = await open()
      await everyMorning(database)
      let index = 0
      for (const turns of [[arrived], [later, lost]]) {
        for (let at = 1; at <= 9; at += 1) {
          for (const when of ['before', 'after'] as const) {
            index += 1
            const run = await day(database, index, [unharmed, { at, when, failure: null }], turns)
            expect([turns, at, when, run.shown, run.state]).toEqual([turns, at, when, 1, 'sent'])
          }
        }
      }
    }, 60_000)

    test('the database away at each call, and back at the next tick', async () => {
      const database = await open()
      await everyMorning(database)
      const { calls } = await day(database, 0, [], [])
      const ofStore = calls.flatMap((name, index) => (/^(chat|weather)\./.test(name) ? [] : [{ name, at: index + 1 }]))
      for (const [index, { name, at }] of ofStore.entries()) {
        const fate = { at, when: 'before', failure: new StoreError('away') } as const
        expect([name, await day(database, index + 1, [fate], [])]).toMatchObject([name, { shown: 1, state: 'sent' }])
      }
    }, 60_000)
  })
})
