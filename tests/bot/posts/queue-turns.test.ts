import { expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import { StoreError } from '../../../src/bot/ports.js'
import { posts } from '../../../src/bot/posts/index.js'
import { manyTurns } from '../../../src/bot/posts/queue-turns.js'
import type { Speaker } from '../../../src/bot/posts/speaker.js'
import { tick } from '../../../src/bot/posts/tick.js'
import type { TickPorts } from '../../../src/bot/posts/tick-ports.js'
import { demoSite } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { forEachDatabase } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

const due = iso('2026-05-04T03:30:00Z')
const names = Array.from({ length: manyTurns + 4 }, (_, n) => `s${String(n).padStart(2, '0')}`)
const keys = names.map((name) => `local/${name}/morning/2026-05-04`)
const day = '2026-05-04'

/** As many sites as it takes to have help, and one fewer than that for those that say so. */
async function fill(database: Database, sites: readonly string[] = names): Promise<void> {
  const store = createStore(database)
  for (const site of sites) await store.createSite({ workspace: 'local', site }, { ...demoSite, posts: ['morning'] })
}

function ports(database: Database, speaker: Speaker | null, change: Partial<TickPorts> = {}): TickPorts {
  const table = outboxTable(database)
  return {
    store: createStore(database),
    weather: fixedWeather(null),
    sheets: { byId: () => sheet(), ids: ['common-practice'] },
    slots: { ...table, keptSites: async () => (await table.keptSites()).filter(({ key: { site } }) => site !== 'demo') },
    report: () => 'ref',
    lang: 'en',
    units: 'metric',
    channelOf: ({ site }) => site,
    drain: { outbox: table, draw, chat: null, clock: () => due, wait: null, note: () => undefined },
    speaker: () => speaker,
    ...change
  }
}

interface Helper extends Speaker {
  readonly asked: string[]
  readonly closed: number[]
}

/** Says the same as would be said here, marked; null for a site that `knows` not. */
function helper(before: (site: string) => Promise<boolean> = async () => true): Helper {
  const asked: string[] = []
  const closed: number[] = []
  return {
    asked,
    closed,
    width: 3,
    // As from a thread: an answer comes when this one has nothing else to do.
    letIn: () => new Promise((go) => setImmediate(go)),
    speak: async (kind, on) => {
      asked.push(on.site)
      await new Promise((go) => setImmediate(go))
      return (await before(on.site)) ? { ...posts[kind].speak(on), text: `ahead ${on.site}` } : null
    },
    close: async () => void closed.push(asked.length)
  }
}

async function textsOf(database: Database): Promise<readonly string[]> {
  const table = outboxTable(database)
  const kept = await Promise.all(keys.map((key) => table.post('local', key)))
  return kept.map((post) => (post?.payload as { readonly text: string } | undefined)?.text ?? '')
}

forEachDatabase((open) => {
  test('of many posts some are put into words elsewhere; each is queued once, and the help ends with them', async () => {
    const database = await open()
    await fill(database)
    const speaker = helper()
    const { queued } = await tick(due, ports(database, speaker))
    expect(queued).toEqual(keys)
    // Half of them and more: one lane speaks here, three there.
    expect(speaker.asked.length).toBeGreaterThan(names.length / 2)
    expect(speaker.closed).toEqual([speaker.asked.length])
    const texts = await textsOf(database)
    for (const [index, name] of names.entries()) {
      if (speaker.asked.includes(name)) expect(texts[index]).toBe(`ahead ${name}`)
      else expect(texts[index]).toContain(name)
    }
    expect((await tick(due + 60, ports(database, helper()))).queued).toEqual([])
  })

  test('what was logged in the meantime is in the post, and what nobody could tell elsewhere is told here', async () => {
    const database = await open()
    await fill(database)
    const store = createStore(database)
    const speaker = helper(async (site) => {
      if (site.endsWith('1')) return false
      const draft = { at: '2026-05-04T03:29:00Z', author: 'U1', via: 'ask', type: 'note', subject: `day:${day}`, data: {}, day, touches: [] } as const
      if (site.endsWith('2'))
        await store.append({ workspace: 'local', site }, due, null, async () => ({
          drafts: [draft],
          moved: [],
          keepsakes: [],
          posts: [],
          reply: null
        }))
      return true
    })
    expect((await tick(due, ports(database, speaker))).queued).toEqual(keys)
    const texts = await textsOf(database)
    for (const [index, name] of names.entries()) {
      const ahead = speaker.asked.includes(name) && !/[12]$/.test(name)
      expect(texts[index]?.startsWith('ahead')).toBe(ahead)
    }
  })

  test('a store that fails ends every lane, and the help with them; the next tick has the rest', async () => {
    const database = await open()
    await fill(database)
    const speaker = helper()
    const own = ports(database, speaker)
    let appended = 0
    const failing: TickPorts['store'] = {
      ...own.store,
      append: (...args) => {
        appended += 1
        return appended === 9 ? Promise.reject(new StoreError('it is gone')) : own.store.append(...args)
      }
    }
    await expect(tick(due, { ...own, store: failing })).rejects.toThrow(StoreError)
    expect(speaker.closed).toHaveLength(1)
    expect(appended).toBeLessThan(9 + 3 + 1)
    const before = (await textsOf(database)).filter((text) => text !== '').length
    const { queued } = await tick(due + 60, ports(database, null))
    expect(before + queued.length).toBe(names.length)
  })

  test('few are not worth the help', async () => {
    const database = await open()
    await fill(database, names.slice(0, manyTurns))
    const speaker = helper()
    expect((await tick(due, ports(database, speaker))).queued).toHaveLength(manyTurns)
    expect([speaker.asked, speaker.closed]).toEqual([[], []])
  })
})
