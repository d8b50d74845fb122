import { expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { sampleWeather } from '../../../src/adapters/weather/index.js'
import type { Spoken } from '../../../src/bot/answer.js'
import type { Chat } from '../../../src/bot/chat-ports.js'
import { handle } from '../../../src/bot/handle.js'
import type { Paper } from '../../../src/bot/papers/paper.js'
import { exported } from '../../../src/bot/papers/record/export.js'
import { StoreError } from '../../../src/bot/ports.js'
import { posts } from '../../../src/bot/posts/index.js'
import { readSite } from '../../../src/bot/posts/on-site.js'
import { tick } from '../../../src/bot/posts/tick.js'
import type { TickPorts } from '../../../src/bot/posts/tick-ports.js'
import { demoSite, type SiteSettings } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { fakeChat } from '../../support/chat.js'
import { forEachDatabase } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

/** 05:30 of a Monday in Berlin. */
const due = iso('2026-05-04T03:30:00Z')
const key = 'local/demo/morning/2026-05-04'

function ports(database: Database, chat: Chat | null, now: number, change: Partial<TickPorts> = {}): TickPorts {
  const table = outboxTable(database)
  return {
    store: createStore(database),
    weather: sampleWeather(),
    sheets: { byId: () => sheet(), ids: ['common-practice'] },
    slots: table,
    report: () => 'ref',
    lang: 'en',
    units: 'metric',
    channelOf: (site, settings) => settings.channel ?? `room-${site.site}`,
    drain: { outbox: table, draw, chat, clock: () => now, wait: null, note: () => undefined },
    ...change
  }
}

function run(database: Database, now: number, chat: Chat | null = null, change: Partial<TickPorts> = {}) {
  return tick(now, ports(database, chat, now, change))
}

async function addSite(database: Database, site: string, change: Partial<SiteSettings> = {}, workspace = 'local') {
  await createStore(database).createSite({ workspace, site }, { ...demoSite, ...change })
}

forEachDatabase((open) => {
  test('due from the minute on; queued, claimed and sent in one tick; the next one finds nothing to do', async () => {
    const database = await open()
    const chat = fakeChat()
    expect(await run(database, due - 1, chat)).toEqual({ at: '2026-05-04T03:29:59Z', due: [], queued: [], sent: [], skipped: [] })
    expect(await run(database, due, chat)).toEqual({ at: '2026-05-04T03:30:00Z', due: [key], queued: [key], sent: [key], skipped: [] })
    expect(await run(database, due + 60, chat)).toEqual({ at: '2026-05-04T03:31:00Z', due: [], queued: [], sent: [], skipped: [] })
    expect(chat.shown).toHaveLength(1)
    expect(chat.shown[0]).toMatchObject({ workspace: 'local', channel: 'room-demo', key })
    expect(chat.shown[0]?.text).toContain('Weather: invented week, demo')
  })

  test('the picture is drawn when it is sent, from what was kept, and is the one that was meant', async () => {
    const database = await open()
    const chat = fakeChat()
    await run(database, due)
    const view = await createStore(database).view({ workspace: 'local', site: 'demo' })
    if (view === null) throw new Error('no demo')
    const forecast = await sampleWeather().at({ ...demoSite }, due)
    const at = { key: { workspace: 'local', site: 'demo' }, date: '2026-05-04', now: due, forecast, alerts: null, weatherLacks: null, wants: [] }
    const [paper] = posts.morning.speak(await readSite(at, view, { byId: () => sheet(), ids: ['common-practice'] })).papers
    await run(database, due + 600, chat)
    expect(chat.shown[0]?.files).toEqual([await draw(paper as Paper)])
  })

  test('the wrap-up brings the record of the day where something was logged', async () => {
    const database = await open()
    const chat = fakeChat()
    const evening = iso('2026-05-04T16:00:00Z')
    const store = createStore(database)
    const record: TickPorts['drain']['record'] = async (site, date) => {
      const view = await store.view(site)
      const sheets = { byId: () => sheet(), ids: ['common-practice'] }
      return view === null ? null : exported({ view, kept: store, sheets, now: evening, lang: null }, 'pdf', [date])
    }
    const own = ports(database, chat, evening)
    // One message a second in a channel: the evening's goes first.
    for (const now of [evening, evening + 60, evening + 120]) await tick(now, { ...own, drain: { ...own.drain, clock: () => now, record } })
    expect(chat.shown.find((post) => post.key.includes('/wrap-up/'))?.files).toEqual([])
    const day = 86_400
    const draft = { at: '2026-05-05T08:00:00Z', author: 'U1', via: 'ask', type: 'reading', subject: 'day:2026-05-05', data: { airC: 20 } } as const
    await store.append({ workspace: 'local', site: 'demo' }, evening, null, async () => ({
      drafts: [{ ...draft, day: '2026-05-05', touches: ['day:2026-05-05'] }],
      moved: [],
      keepsakes: [],
      posts: [],
      reply: null
    }))
    for (const now of [0, 60, 120, 180].map((later) => evening + day + later)) {
      await tick(now, { ...own, drain: { ...own.drain, clock: () => now, record } })
    }
    const files = chat.shown.filter((post) => post.key.includes('/wrap-up/')).at(-1)?.files
    expect(files).toMatchObject([{ kind: 'record', name: 'demo-2026-05-05.pdf', mime: 'application/pdf' }])
  })

  test('nothing is logged by a post: the chain stays as it was', async () => {
    const database = await open()
    await run(database, due, fakeChat())
    expect((await createStore(database).view({ workspace: 'local', site: 'demo' }))?.head.seq).toBe(0)
  })

  test('without a chat it is queued and stays so until one is there', async () => {
    const database = await open()
    expect(await run(database, due)).toMatchObject({ due: [key], queued: [key], sent: [] })
    expect(await run(database, due + 60)).toMatchObject({ due: [], queued: [], sent: [] })
    expect(await run(database, due + 120, fakeChat())).toMatchObject({ due: [], queued: [], sent: [key] })
  })

  test('many instances that tick at once post once', async () => {
    const database = await open()
    const chat = fakeChat()
    const ticked = await Promise.all(Array.from({ length: 5 }, () => run(database, due, chat)))
    expect(ticked.flatMap(({ queued }) => queued)).toEqual([key])
    expect(ticked.flatMap(({ sent }) => sent)).toEqual([key])
    expect(chat.shown).toHaveLength(1)
  })

  test('a restart catches up within three hours; later it is skipped, noted once, never sent', async () => {
    const chat = fakeChat()
    const database = await open()
    expect(await run(database, due + 3 * 3600, chat)).toMatchObject({ sent: [key], skipped: [] })
    const late = await open()
    const notes: string[] = []
    const table = outboxTable(late)
    const drain = { outbox: table, draw, chat, clock: () => due, wait: null, note: ({ why }: { readonly why: string }) => void notes.push(why) }
    expect(await run(late, due + 3 * 3600 + 60, chat, { drain })).toMatchObject({ due: [], queued: [], sent: [], skipped: [key] })
    expect(await run(late, due + 4 * 3600, chat, { drain })).toMatchObject({ due: [], queued: [], sent: [], skipped: [] })
    expect(notes).toEqual(['stale'])
    expect(chat.shown).toHaveLength(1)
  })

  test('each site by its own zone, times, days, wishes, language and channel; closed ones are left out', async () => {
    const database = await open()
    const chat = fakeChat()
    await addSite(database, 'lunes', { lang: 'es', units: 'us', channel: 'C7' })
    await addSite(database, 'later', { morning: '06:00' })
    await addSite(database, 'west', { zone: 'America/New_York', lat: 40, lon: -74 })
    await addSite(database, 'tuesdays', { days: [2] })
    await addSite(database, 'quiet', { posts: ['evening'] })
    await addSite(database, 'shut', { closed: true })
    await addSite(database, 'demo', {}, 'T2')
    const { sent } = await run(database, due, chat)
    expect(sent).toEqual(['T2/demo/morning/2026-05-04', 'local/demo/morning/2026-05-04', 'local/lunes/morning/2026-05-04'])
    const spanish = chat.shown.find(({ channel }) => channel === 'C7')
    expect(spanish?.text).toMatch(/rociar/)
    expect(spanish?.text).toMatch(/°F/)
    expect((await run(database, due + 1800, chat)).sent).toEqual(['local/later/morning/2026-05-04'])
    expect((await run(database, iso('2026-05-04T09:30:00Z'), chat)).sent).toEqual(['local/west/morning/2026-05-04'])
  })

  test('settings said in chat count: a changed time, then closed', async () => {
    const database = await open()
    const own = ports(database, null, due)
    const say = (text: string, at: number) =>
      handle(
        {
          text,
          at,
          workspace: 'local',
          site: null,
          channel: null,
          user: 'U1',
          role: 'supervisor',
          via: 'ask',
          lang: null,
          units: null,
          log: true,
          claim: null
        },
        { ...own, draw, lang: 'en', units: 'metric' }
      )
    await say('site morning 06:15', due - 3600)
    expect((await run(database, due)).due).toEqual([])
    expect((await run(database, due + 45 * 60)).due).toEqual([key])
    // Posted already: an earlier time of the same day does not post again.
    await say('site morning 05:00', due + 50 * 60)
    expect((await run(database, due + 55 * 60)).due).toEqual([])
    await say('site demo closed', due + 60 * 60)
    expect((await run(database, due + 86_400)).due).toEqual([])
  })

  test('a site whose weather throws is reported and tried again; the others are not silenced', async () => {
    const database = await open()
    await addSite(database, 'zz')
    const reported: string[] = []
    let fail = true
    const weather = {
      at: async (place: { lat: number; lon: number; zone: string; invented: boolean }, now: number) => {
        if (fail) {
          fail = false
          throw new Error('bug')
        }
        return sampleWeather().at(place, now)
      }
    }
    const change = {
      weather,
      report: (_error: unknown, context: Readonly<Record<string, string>>) => {
        reported.push(context.post ?? '')
        return 'ref'
      }
    }
    expect((await run(database, due, null, change)).queued).toEqual(['local/zz/morning/2026-05-04'])
    expect(reported).toEqual([key])
    expect((await run(database, due + 60, null, change)).queued).toEqual([key])
  })

  test('a store that is away is the failure of the tick', async () => {
    const database = await open()
    const own = ports(database, null, due)
    await database.close()
    await expect(tick(due, own)).rejects.toThrow(StoreError)
  })

  test('what is queued is what would be said now, text and blocks', async () => {
    const database = await open()
    await run(database, due)
    const queued = await outboxTable(database).post('local', key)
    const payload = queued?.payload as unknown as Spoken
    expect(payload.text).toMatch(/^△ CAUTION: spray/)
    expect(payload.blocks[0]).toMatchObject({ type: 'header' })
    expect(queued).toMatchObject({ kind: 'morning', site: 'demo', dueAt: due, createdAt: due, state: 'queued' })
  })

  test('once a local day through a week with a change of clocks, ticking every 10 minutes', async () => {
    const database = await open()
    await addSite(database, 'gap', { morning: '02:30', days: [1, 2, 3, 4, 5, 6, 7], posts: ['morning', 'evening', 'wrap-up'] })
    const chat = fakeChat()
    // Berlin: 2026-03-29 01:00Z from +1 to +2, 02:30 does not exist (zdump, IANA 2025b; tests/truth/clock-changes.json).
    for (let at = iso('2026-03-28T00:00:00Z'); at < iso('2026-03-31T00:00:00Z'); at += 600) await run(database, at, chat)
    const days = ['2026-03-28', '2026-03-29', '2026-03-30']
    for (const kind of ['morning', 'evening', 'wrap-up']) {
      expect(chat.shown.map(({ key: own }) => own).filter((own) => own.startsWith(`local/gap/${kind}/`))).toEqual(
        days.map((day) => `local/gap/${kind}/${day}`)
      )
    }
  })
})
