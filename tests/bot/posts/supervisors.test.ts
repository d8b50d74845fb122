import { describe, expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { type Row, speakSummary } from '../../../src/bot/posts/summary.js'
import { tick } from '../../../src/bot/posts/tick.js'
import { homeView } from '../../../src/bot/talk/home.js'
import { demoSite, type SiteSettings } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { type FakeChat, fakeChat, type Turn } from '../../support/chat.js'
import { forEachDatabase } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

/** 05:30 of a Monday in Berlin. */
const due = iso('2026-05-04T03:30:00Z')
const refused: Turn = { answer: { kind: 'refused', code: 'channel_not_found' }, arrives: false }
const sheets = { byId: () => sheet(), ids: ['common-practice'] } as const

async function sitesOf(database: Database, names: readonly string[], change: Partial<SiteSettings> = {}): Promise<void> {
  const store = createStore(database)
  for (const site of names) await store.createSite({ workspace: 'T1', site }, { ...demoSite, posts: ['morning'], channel: `C-${site}`, ...change })
  await store.savePerson('T1', 'U1', { role: 'supervisor' })
  await store.savePerson('T1', 'U2', { role: 'supervisor', lang: 'es' })
  await store.savePerson('T1', 'U3', { role: 'crew' })
}

function run(database: Database, now: number, chat: FakeChat) {
  const table = outboxTable(database)
  const slots = { ...table, keptSites: async () => (await table.keptSites()).filter(({ key }) => key.workspace === 'T1') }
  return tick(now, {
    store: createStore(database),
    weather: fixedWeather(null),
    sheets,
    report: () => 'ref',
    lang: 'en',
    units: 'metric',
    slots,
    channelOf: (_site, { channel }) => channel,
    drain: { outbox: table, draw, chat, clock: () => now, wait: null, note: () => undefined }
  })
}

forEachDatabase((open) => {
  describe('posts that were given up', () => {
    test('each supervisor is told once, in one message, in their language; nobody else', async () => {
      const database = await open()
      await sitesOf(database, ['north', 'south'])
      const chat = fakeChat(refused, refused)
      for (let minute = 0; minute < 6; minute += 1) await run(database, due + minute * 60, chat)
      expect(chat.shown.map(({ channel }) => channel).sort()).toEqual(['U1', 'U2'])
      const [english, spanish] = ['U1', 'U2'].map((id) => chat.shown.find(({ channel }) => channel === id)?.text ?? '')
      expect(english).toMatch(/^2 posts did not get out\nnorth: morning, 4 May 2026\nsouth: morning, 4 May 2026\n/)
      expect(spanish).toMatch(/^2 avisos no salieron/)
    })

    test('what is given up later is told by itself; a message to a person that is given up is told to nobody', async () => {
      const database = await open()
      await sitesOf(database, ['north'])
      const chat = fakeChat(refused, refused, refused)
      for (let minute = 0; minute < 8; minute += 1) await run(database, due + minute * 60, chat)
      expect(chat.shown).toEqual([])
      expect(chat.calls).toHaveLength(3)
    })

    test('the home of a supervisor shows them, that of a crew does not', async () => {
      const database = await open()
      await sitesOf(database, ['north'])
      await run(database, due, fakeChat(refused))
      const ports = {
        store: createStore(database),
        weather: fixedWeather(null),
        sheets,
        lang: 'en',
        units: 'metric',
        report: () => 'ref',
        draw
      } as const
      const home = async (user: string) => {
        const delivery = { workspace: 'T1', user, channel: null, via: 'slack', at: due + 60, claim: null, lang: null, units: null } as never
        return JSON.stringify((await homeView(delivery, { lang: 'en', units: 'metric' }, ports)).blocks)
      }
      expect(await home('U1')).toContain('*1 post did not get out*\\nnorth: morning, 4 May 2026')
      expect(await home('U3')).not.toContain('did not get out')
    })
  })

  describe('the summary', () => {
    test('only who asked for it, once a morning, after the posts of the sites', async () => {
      const database = await open()
      await sitesOf(database, ['north', 'south'])
      await createStore(database).savePerson('T1', 'U2', { summary: 'on' })
      const chat = fakeChat()
      await run(database, due, chat)
      expect(chat.shown.map(({ channel }) => channel).sort()).toEqual(['C-north', 'C-south'])
      for (let minute = 1; minute < 5; minute += 1) await run(database, due + minute * 60, chat)
      const direct = chat.shown.filter(({ channel }) => channel === 'U2')
      expect(direct.map(({ key }) => key)).toEqual(['T1/@U2 Europe/Berlin/summary/2026-05-04'])
      expect(direct[0]?.text).toMatch(/^2 obras, 4 may 2026: \? 2\n\? north: sin dato/)
      expect(chat.shown.filter(({ channel }) => channel === 'U1')).toEqual([])
    })

    test('one site alone needs none; nor does a morning long past', async () => {
      const database = await open()
      await sitesOf(database, ['north'])
      await createStore(database).savePerson('T1', 'U1', { summary: 'on' })
      const chat = fakeChat()
      for (const seconds of [0, 180, 300]) await run(database, due + seconds, chat)
      expect(chat.shown).toHaveLength(1)
      await sitesOf(database, ['south'])
      await run(database, due + 4 * 3600, chat)
      expect(chat.shown).toHaveLength(1)
    })
  })
})

describe('the words of the summary', () => {
  const rows: readonly Row[] = [
    { site: 'a', brief: { outcome: 'go', from: '2026-05-04T05:00:00Z', to: '2026-05-04T13:30:00Z', binding: 'humidity' } },
    { site: 'b', brief: { outcome: 'no-go', from: null, to: null, binding: 'wind-gust' } },
    { site: 'c', brief: null }
  ]

  test('the worst first, each with its hours or what stops it', () => {
    expect(speakSummary(rows, '2026-05-04', metric).text.split('\n').slice(0, 4)).toEqual([
      '3 sites, 4 May 2026: ✓ 1 · ? 1 · ✕ 1',
      '✕ b: no-go, gust',
      '? c: unknown',
      '✓ a: 07:00–15:30 go'
    ])
  })

  test('thousands of sites and names at their worst stay inside the limits of a message', () => {
    const many = Array.from({ length: 3000 }, (_, n) => ({ ...(rows[n % 3] as Row), site: `<!channel>*${'x'.repeat(80)}${n}` }))
    for (const how of hows) expect(blockProblems(speakSummary(many, '2026-05-04', how))).toEqual([])
  })
})
