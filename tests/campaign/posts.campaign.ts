import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import type { Database } from '../../src/adapters/store/schema.js'
import { createStore } from '../../src/adapters/store/store.js'
import { localDate, localTime } from '../../src/core/instant.js'
import { defaultSettings, type SiteSettings } from '../../src/core/site.js'
import { random as randomOf } from '../support/noise.js'
import { startLife } from './posts/life.js'
import { startPostService } from './posts/service.js'

/** `SEED` replays the faults and how far each life gets; `COUNT` posts, `KILLS` kills. */
const seed = Number(process.env.SEED ?? 1)
const posts = Number(process.env.COUNT ?? 10_000)
const kills = Number(process.env.KILLS ?? Math.max(1, Math.round(posts / 50)))
const kinds = ['evening', 'morning', 'wrap-up'] as const
/** Posts are stale after three hours. */
const longestMs = 3 * 3_600_000
const sites = Math.ceil(posts / kinds.length)

/** Somewhere it is about noon: no slot is near midnight however long it takes. */
function noonZone(now: number): string {
  const ahead = 12 - new Date(now * 1000).getUTCHours()
  // POSIX signs: Etc/GMT-3 is 3 hours ahead.
  return ahead === 0 ? 'Etc/UTC' : `Etc/GMT${ahead > 0 ? '-' : '+'}${Math.abs(ahead)}`
}

test(
  `seed ${seed}: ${sites * kinds.length} posts, ${kills} kills: none lost, none twice`,
  async () => {
    const random = randomOf(seed)
    const folder = mkdtempSync(join(tmpdir(), 'seamhand-posts-'))
    const began = Math.floor(Date.now() / 1000)
    const zone = noonZone(began)
    const due = localTime(began - 300, zone)
    const service = await startPostService(random, { limited: 2, lostMessage: 8, lostAnswer: 8, slowMs: 20, listedMs: 25_000 })
    const expected = await makeSites(join(folder, 'data'), zone, due, localDate(began, zone))
    const database = await openSqlite(join(folder, 'data'), { server: false })
    const step = (2 * expected.length) / kills
    let killed = 0
    for (; killed < kills; killed += 1) {
      const life = startLife(folder, service.apiUrl)
      await life.ready
      // By what was done, not by time: on a slow machine each life gets as far as on a quick one.
      await advance(database, service, random() * 2 * step)
      await new Promise((resolve) => setTimeout(resolve, random() * 50))
      await life.kill()
    }
    await database.close()
    const last = startLife(folder, service.apiUrl)
    await last.ready
    const states = await untilEnded(join(folder, 'data'), expected.length, service)
    await last.kill()
    await service.close()
    rmSync(folder, { recursive: true, force: true })

    const seen = new Map<string, number>()
    for (const { key } of service.visible) seen.set(key, (seen.get(key) ?? 0) + 1)
    const report = { seed, step, killed, posts: expected.length, seconds: Math.round(Date.now() / 1000) - began, calls: service.counts, states }
    process.stdout.write(`${JSON.stringify(report)}\n`)
    expect(expected.filter((key) => !seen.has(key))).toEqual([])
    expect([...seen].filter(([, times]) => times > 1)).toEqual([])
    expect(seen.size).toBe(expected.length)
    expect(states).toEqual({ sent: expected.length })
    expect(killed).toBe(kills)
  },
  longestMs
)

/** Waits until so many posts more were queued or became visible, or a minute is over: then all may be done. */
async function advance(database: Database, service: { readonly visible: readonly unknown[] }, by: number): Promise<void> {
  const done = async () => {
    const queued = await database.read
      .selectFrom('outbox')
      .select((is) => is.fn.countAll<number>().as('posts'))
      .where('workspace', '=', 'T0')
      .executeTakeFirstOrThrow()
    return Number(queued.posts) + service.visible.length
  }
  const from = await done()
  const until = Date.now() + 60_000
  while (Date.now() < until && (await done()) - from < by) {
    if (from >= 2 * posts) return
    await new Promise((resolve) => setTimeout(resolve, 20))
  }
}

async function makeSites(folder: string, zone: string, due: string, date: string): Promise<readonly string[]> {
  const database = await openSqlite(folder, { server: false })
  const store = createStore(database)
  const keys: string[] = []
  for (let n = 0; n < sites; n += 1) {
    const site = `site-${n}`
    const settings: SiteSettings = {
      ...defaultSettings,
      lat: 50,
      lon: 8,
      zone,
      morning: due,
      evening: due,
      hours: `00:00-${due}`,
      posts: kinds,
      days: [1, 2, 3, 4, 5, 6, 7],
      channel: `C${n}`
    }
    await store.createSite({ workspace: 'T0', site }, settings)
    keys.push(...kinds.map((kind) => `T0/${site}/${kind}/${date}`))
  }
  await store.close()
  return keys
}

/** Waits until every post ended, at most an hour; how many ended how. A wait, no bar: a loaded machine takes long. */
async function untilEnded(
  folder: string,
  count: number,
  service: { readonly visible: readonly unknown[] }
): Promise<Readonly<Record<string, number>>> {
  const database = await openSqlite(folder, { server: false })
  try {
    for (let tries = 0; tries < 1800; tries += 1) {
      const rows = await database.read
        .selectFrom('outbox')
        .select((is) => ['state' as const, is.fn.countAll<number>().as('posts')])
        .where('workspace', '=', 'T0')
        .groupBy('state')
        .execute()
      const states = Object.fromEntries(rows.map(({ state, posts: of }) => [state, Number(of)]))
      const open = (states.queued ?? 0) + (states.sending ?? 0) + (states.unknown ?? 0)
      const all = Object.values(states).reduce((sum, of) => sum + of, 0)
      if (tries % 15 === 0) process.stdout.write(`${JSON.stringify({ states, visible: service.visible.length })}\n`)
      if (open === 0 && all === count) return states
      await new Promise((resolve) => setTimeout(resolve, 2000))
    }
    throw new Error('posts that do not end')
  } finally {
    await database.close()
  }
}
