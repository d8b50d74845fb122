import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readSheets } from '../../src/adapters/limits/files.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { outboxTable } from '../../src/adapters/store/outbox-table.js'
import { createStore } from '../../src/adapters/store/store.js'
import { sampleWeather } from '../../src/adapters/weather/index.js'
import type { Chat } from '../../src/bot/chat-ports.js'
import { tick } from '../../src/bot/posts/tick.js'
import type { Looked } from '../../src/bot/posts/watch-tick.js'
import { createTalk } from '../../src/bot/talk/create-talk.js'
import { verifySite } from '../../src/bot/verify.js'
import { defaultSettings } from '../../src/core/site.js'
import { draw } from '../../src/wiring/papers.js'
import { random as randomOf } from '../support/noise.js'
import { type Held, heldNow, resources, slopeOf } from './soak/heap.js'

const seed = Number(process.env.SEED ?? 1)
/** Invented days, and minutes between ticks. */
const days = Number(process.env.DAYS ?? 60)
const everyMin = Number(process.env.EVERY_MIN ?? 10)
/**
 * Data may grow by no more than this a day in the second half: one object of 56 bytes left behind by each tick and site would be 24 KiB. Not
 * nothing: the engine lists weakly what its machine code depends on (in heap snapshots of days 12 and 40 some 4 KiB a day, and nothing else
 * but machine code), and suns and slots of the days are kept up to a bound. Measured over 60 days: 8 KiB a day, 28 KiB in thirty days from
 * the first to the last; machine code, which is not counted, 13 KiB a day.
 */
const mostBytesADay = 16 * 1024
const sites = ['north', 'south', 'east']
const start = Date.parse('2026-03-01T00:00:00Z') / 1000

function kib(bytes = 0): number {
  return Math.round(bytes / 1024)
}

/** A day's work as a crew types it. */
const work = [
  'spray air 14 deck 16 rh 60 wind 8 gust 12 rain 10 % dry clean',
  'kit K1 25 mixed',
  'foam 45 s even',
  'weld robot 41 39 40 mm film',
  'probe course 4 end 3.2 m 40 mm',
  'laid 40 m2 sheets 2 course 4 kit K1 robot 20 hand 3',
  'no such words at all',
  'day',
  'probe list',
  'air',
  'seal 12 m tape drains open rolled'
] as const

/** A service that limits, fails, loses answers and loses messages; it remembers only the last messages, as a page of history does. */
function flakyChat(random: () => number): Chat & { readonly sent: () => number } {
  const history = new Map<string, string>()
  let sent = 0
  const show = (key: string) => {
    sent += 1
    history.set(key, `${sent}.0`)
    if (history.size > 200) history.delete(history.keys().next().value as string)
    return `${sent}.0`
  }
  return {
    sent: () => sent,
    post: async ({ key }) => {
      const luck = random()
      if (luck < 0.05) return { kind: 'later', afterS: 30 }
      if (luck < 0.1) return { kind: 'unknown' }
      const ts = show(key)
      return luck < 0.15 ? { kind: 'unknown' } : { kind: 'sent', ts }
    },
    edit: async (_, ts) => (random() < 0.1 ? { kind: 'unknown' } : { kind: 'sent', ts }),
    find: async (_workspace, _channel, key) => {
      const ts = history.get(key)
      return ts === undefined ? { kind: 'absent' } : { kind: 'found', ts }
    }
  }
}

it(`seed ${seed}: ${days} days of ticks and work, memory flat`, async () => {
  const random = randomOf(seed)
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-soak-'))
  const database = await openSqlite(folder, { server: false })
  const store = createStore(database)
  for (const site of sites) {
    const settings = {
      ...defaultSettings,
      lat: 50,
      lon: 8,
      zone: 'Europe/Berlin',
      posts: ['evening', 'morning', 'watch', 'wrap-up'] as const,
      days: [1, 2, 3, 4, 5, 6, 7]
    }
    await store.createSite({ workspace: 'local', site }, { ...settings, channel: `C-${site}` })
  }
  const table = outboxTable(database)
  const chat = flakyChat(random)
  const bugs: unknown[] = []
  const ports = {
    store,
    weather: sampleWeather(),
    sheets: readSheets(null),
    draw,
    lang: 'en',
    units: 'metric',
    report: (error: unknown) => `bug-${bugs.push(error)}`
  } as const
  const talk = createTalk(ports, { siteOfChannel: (workspace, channel) => store.siteOfChannel(workspace, channel) })
  const looked: Looked = new Map()
  const pausedUntil = new Map<string, number>()
  const held: Held[] = []
  let now = start
  let asked = 0
  async function oneTick(): Promise<void> {
    await tick(now, {
      ...ports,
      slots: { ...table, keptSites: async () => (await table.keptSites()).filter(({ key }) => key.site !== 'demo') },
      looked,
      channelOf: (_, { channel }) => channel,
      drain: { outbox: table, draw, chat, clock: () => now, wait: null, note: () => undefined, pausedUntil }
    })
  }
  async function say(): Promise<void> {
    asked += 1
    const text = work[Math.floor(random() * work.length)] as string
    const site = sites[Math.floor(random() * sites.length)] as string
    // Now and then a delivery comes twice.
    const claim = `D${random() < 0.05 ? asked - 1 : asked}`
    const who = {
      workspace: 'local',
      user: `U${Math.floor(random() * 40)}`,
      channel: `C-${site}`,
      via: 'slack',
      at: now,
      lang: null,
      units: null
    } as const
    await talk.say({ ...who, claim }, text)
    if (random() < 0.1) await talk.home({ ...who, claim: null })
  }
  for (let day = 0; day < days; day += 1) {
    for (let minute = 0; minute < 1440; minute += everyMin) {
      now = start + day * 86_400 + minute * 60
      await oneTick()
      if (minute >= 360 && minute < 1080 && random() < (20 * everyMin) / 720) await say()
    }
    held.push(await heldNow())
    if (day % 10 === 0)
      process.stdout.write(
        `day ${day}: ${kib(held.at(-1)?.bytes)} KiB and ${kib(held.at(-1)?.codeBytes)} of code, ${asked} said, ${chat.sent()} posts, ${resources()} resources\n`
      )
  }
  const settled = held.slice(Math.floor(days / 2))
  const bytesADay = slopeOf(settled.map(({ bytes }) => bytes))
  const report = {
    seed,
    days,
    asked,
    posts: chat.sent(),
    firstKiB: kib(settled[0]?.bytes),
    lastKiB: kib(settled.at(-1)?.bytes),
    bytesADay: Math.round(bytesADay),
    codeBytesADay: Math.round(slopeOf(settled.map(({ codeBytes }) => codeBytes))),
    looked: looked.size,
    resources: resources()
  }
  process.stdout.write(`${JSON.stringify(report)}\n`)
  const verdicts = await Promise.all(sites.map((site) => verifySite(store, { workspace: 'local', site }, [])))
  await store.close()
  rmSync(folder, { recursive: true, force: true })
  expect(bugs).toEqual([])
  expect(verdicts.map((verdict) => verdict?.firstBad)).toEqual(sites.map(() => null))
  expect(bytesADay).toBeLessThan(mostBytesADay)
  expect(looked.size).toBeLessThanOrEqual(sites.length)
  expect(chat.sent()).toBeGreaterThan(days * sites.length)
})
