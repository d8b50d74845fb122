import { expect, test } from 'vitest'
import type { Store } from '../../src/bot/ports.js'
import { readConfig } from '../../src/config.js'
import { demoSite } from '../../src/core/site.js'
import { prepare, type Running } from '../../src/wiring/running.js'
import { timedTick } from '../../src/wiring/ticks.js'
import { wire } from '../../src/wiring/tools.js'
import { fakeChat } from '../support/chat.js'
import { temporaryFolder } from '../support/databases.js'
import { iso } from '../support/instant.js'

const folder = temporaryFolder()
/** 05:30 of a Monday in Berlin. */
const due = iso('2026-05-04T03:30:00Z')
const sites = 30

/** The bot over a store of many sites whose morning is due; `append` sees every append of a tick. */
async function running(name: string, seen: () => void): Promise<Running> {
  const config = readConfig({ SEAMHAND_DATA: `${folder()}/${name}`, SEAMHAND_WEATHER: 'none', LOG_LEVEL: 'silent' })
  const terminal = { out: () => undefined, err: () => undefined, lines: async function* () {}, now: () => due }
  const wired = wire(config, terminal, true)
  const made = await prepare(config, wired)
  for (let n = 0; n < sites; n += 1) await made.store.createSite({ workspace: 'local', site: `site-${n}` }, { ...demoSite, posts: ['morning'] })
  const store: Store = {
    ...made.store,
    append: (...args) => {
      seen()
      return made.store.append(...args)
    }
  }
  return { ...made, ports: { ...made.ports, store } }
}

test('between one site and the next whatever else waits has its turn: answers do not wait for thousands of posts', async () => {
  let beats = 0
  let beating = true
  const beat = () => {
    beats += 1
    if (beating) setImmediate(beat)
  }
  const at: number[] = []
  const bot = await running('busy', () => at.push(beats))
  beat()
  await timedTick(bot, fakeChat(), { is: false }, due)
  beating = false
  expect(at.length).toBeGreaterThanOrEqual(sites)
  expect(new Set(at).size).toBe(at.length)
  await bot.store.close()
})

test('told to stop it begins no other site, and the next start goes on', async () => {
  const stopping = { is: false }
  let appends = 0
  const bot = await running('stopping', () => {
    appends += 1
    stopping.is = appends >= 5
  })
  const chat = fakeChat()
  await timedTick(bot, chat, stopping, due)
  expect([appends, chat.shown.length]).toEqual([5, 0])
  appends = -1000
  stopping.is = false
  await timedTick(bot, chat, stopping, due + 60)
  expect(new Set(chat.shown.map(({ key }) => key)).size).toBe(chat.shown.length)
  expect(chat.shown.filter(({ key }) => key.includes('site-'))).toHaveLength(sites)
  await bot.store.close()
})

test('where other alerts are in force than before, the watch looks in the same tick, elsewhere it waits its ten minutes', async () => {
  const config = readConfig({ SEAMHAND_DATA: `${folder()}/alerts`, LOG_LEVEL: 'silent' })
  const terminal = { out: () => undefined, err: () => undefined, lines: async function* () {}, now: () => due }
  const made = await prepare(config, wire(config, terminal, true))
  const base = { ...demoSite, posts: ['watch'], invented: false }
  await made.store.createSite({ workspace: 'local', site: 'here' }, { ...base, lat: 33.521, lon: -86.81 })
  await made.store.createSite({ workspace: 'local', site: 'there' }, { ...base, lat: 34, lon: -86.81 })
  let changed: readonly string[] = []
  const bot: Running = { ...made, live: { ...made.live, refreshAlerts: async () => new Set(changed) } }
  const at = iso('2026-05-04T08:00:00Z')
  const lookedAt = () => ['here', 'there'].map((site) => (bot.looked.get(`local ${site}`)?.at ?? 0) - at)
  await timedTick(bot, fakeChat(), { is: false }, at)
  await timedTick(bot, fakeChat(), { is: false }, at + 60)
  expect(lookedAt()).toEqual([0, 0])
  changed = ['33.52,-86.81']
  await timedTick(bot, fakeChat(), { is: false }, at + 120)
  expect(lookedAt()).toEqual([120, 0])
  await made.store.close()
})
