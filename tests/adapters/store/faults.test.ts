import type { AddressInfo } from 'node:net'
import { createServer, connect as dial, type Server } from 'node:net'
import { sql } from 'kysely'
import { afterEach, describe, expect, test } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { openPostgres } from '../../../src/adapters/store/open-postgres.js'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import { asStoreError, isAway } from '../../../src/adapters/store/outside.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import type { Ask } from '../../../src/bot/ask.js'
import { StoreError } from '../../../src/bot/ports.js'
import { respond } from '../../../src/bot/respond.js'
import { verifySite } from '../../../src/bot/verify.js'
import { temporaryPostgres } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

const urlOf = temporaryPostgres()
const open: Database[] = []
const proxies: Server[] = []
afterEach(async () => {
  for (const database of open.splice(0)) await database.close()
  for (const proxy of proxies.splice(0)) proxy.close()
})

async function opened(url: string): Promise<Database> {
  const database = await openPostgres(url)
  open.push(database)
  return database
}

/** Ends every connection but the one that asks, as a server does that stops so that another takes over. */
async function endOthers(database: Database): Promise<void> {
  await sql`select pg_terminate_backend(pid) from pg_stat_activity where pid <> pg_backend_pid() and backend_type = 'client backend'`.execute(
    database.read
  )
}

/** A way to the server that is cut, once, when a commit has gone through it and before its answer comes back. */
async function cutAfterCommit(url: string): Promise<{ readonly url: string; arm(): void; cuts(): number }> {
  const { hostname, port } = new URL(url)
  let [armed, cuts] = [false, 0]
  const proxy = createServer((client) => {
    const server = dial(Number(port), hostname)
    for (const side of [client, server]) side.on('error', () => undefined)
    client.on('data', (chunk) => {
      server.write(chunk)
      if (!armed || !chunk.toString('latin1').includes('commit')) return
      armed = false
      cuts += 1
      server.unpipe(client)
      // Time enough for the server to commit, with nobody there to hear of it.
      setTimeout(() => client.destroy(), 100)
    })
    server.pipe(client)
    client.on('close', () => server.destroy())
    server.on('close', () => client.destroy())
  })
  proxies.push(proxy)
  await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve))
  return {
    url: url.replace(`:${port}`, `:${(proxy.address() as AddressInfo).port}`),
    arm: () => {
      armed = true
    },
    cuts: () => cuts
  }
}

describe('another server takes over', () => {
  test('in the middle of a transaction: what has a claim is done, once', async () => {
    const database = await opened(await urlOf('middle'))
    const store = createStore(database)
    let composed = 0
    const done = await store.append(demo, at, { key: 'D1' }, async (view) => {
      composed += 1
      if (composed === 1) await endOthers(database)
      await view.state('site')
      return batch({ drafts: [draft()], reply: composed })
    })
    expect(done).toMatchObject({ kind: 'done', reply: 2 })
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('what has no claim is not tried again, and the store goes on after it', async () => {
    const database = await opened(await urlOf('claimless'))
    const store = createStore(database)
    const ended = store.append(demo, at, null, async (view) => {
      await endOthers(database)
      await view.state('site')
      return batch({ drafts: [draft()], reply: 1 })
    })
    await expect(ended).rejects.toThrow(StoreError)
    expect(await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 2 }))).toMatchObject({ kind: 'done' })
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('after the commit and before its answer: the reply is the one that was stored, and nothing is logged twice', async () => {
    const way = await cutAfterCommit(await urlOf('commit'))
    const store = createStore(await opened(way.url))
    await store.append(demo, at, { key: 'D0' }, async () => batch({ drafts: [draft()], reply: 0 }))
    let composed = 0
    way.arm()
    const done = await store.append(demo, at, { key: 'D1' }, async () => {
      composed += 1
      return batch({ drafts: [draft()], reply: composed })
    })
    expect({ cuts: way.cuts(), done, composed }).toMatchObject({ cuts: 1, done: { kind: 'repeated', reply: 1 }, composed: 1 })
    expect(await store.entriesCount(demo)).toBe(2)
    expect((await verifySite(store, demo, []))?.firstBad?.why ?? 'state').toBe('state')
  })

  test('between two questions: reading goes on as if nothing were', async () => {
    const database = await opened(await urlOf('between'))
    const store = createStore(database)
    await store.sites('local')
    await endOthers(database)
    expect(await Promise.all([store.sites('local'), store.person('local', 'U1'), store.siteOfChannel('local', 'C1')])).toEqual([
      ['demo'],
      { lang: null, units: null, role: null, name: null, summary: null },
      null
    ])
  })
})

describe('two servers race', () => {
  test('for one claim: one does it, the other gets its reply', async () => {
    const url = await urlOf('claim')
    const stores = [createStore(await opened(url)), createStore(await opened(url))]
    for (let n = 0; n < 15; n += 1) {
      const both = await Promise.all(
        stores.map((store, index) => store.append(demo, at, { key: `K${n}` }, async () => batch({ drafts: [draft()], reply: `${n} by ${index}` })))
      )
      expect(both.map((one) => one?.kind).sort()).toEqual(['done', 'repeated'])
      expect(new Set(both.map((one) => one?.reply)).size).toBe(1)
    }
    expect(await stores[0]?.entriesCount(demo)).toBe(15)
  })

  test('for one slot: the post is queued once, and one of them takes it', async () => {
    const url = await urlOf('slot')
    const databases = [await opened(url), await opened(url)]
    const post = { key: 'local/demo/morning/2026-05-04', site: 'demo', kind: 'morning', channel: 'C1', dueAt: at, payload: { text: 'x', blocks: [] } }
    const both = await Promise.all(
      databases.map((database) => createStore(database).append(demo, at, { key: `post/${post.key}` }, async () => batch({ posts: [post], reply: 1 })))
    )
    expect(both.map((one) => one?.kind).sort()).toEqual(['done', 'repeated'])
    const taken = await Promise.all(databases.map((database) => outboxTable(database).take(at, at + 120, 10)))
    expect(taken.flat().map(({ key }) => key)).toEqual([post.key])
  })

  test('for one void: one closes it, the other is told how it stands', async () => {
    const url = await urlOf('void')
    const stores = [createStore(await opened(url)), createStore(await opened(url))] as const
    const say = (text: string, claim: string, index: 0 | 1) => {
      const ports = {
        store: stores[index],
        weather: fixedWeather(null),
        sheets: readSheets(null),
        lang: 'en',
        units: 'metric',
        report: () => 'bug',
        draw: async () => Promise.reject(new Error('none'))
      } as const
      const ask: Ask = {
        text,
        at: at + 20_000,
        workspace: 'local',
        site: 'demo',
        channel: null,
        user: `U${index}`,
        role: 'supervisor',
        via: 'slack',
        lang: null,
        units: null,
        log: true,
        claim
      }
      return respond(ask, ports as never).then(({ reply }) => reply)
    }
    expect((await say('probe course 4 end 3.2 m 40 mm', 'open', 0)).ok).toBe(true)
    const both = await Promise.all([say('probe 1 fixed', 'a', 0), say('probe 1 fixed', 'b', 1)])
    expect(both.map(({ ok, error }) => (ok ? 'done' : error?.code)).sort()).toEqual(['done', 'wrong-state'])
    expect((await verifySite(stores[0], demo, []))?.firstBad).toBeNull()
  })
})

describe('what a driver says, as a sentence', () => {
  test.each([
    [{ code: '53100', message: 'could not extend file' }, 'the disk of the store is full', false],
    [{ code: '55P03', message: 'canceling statement due to lock timeout' }, 'the store is locked by another process', false],
    [{ code: '57P01', message: 'terminating connection due to administrator command' }, 'the store failed', true],
    [{ code: '57P03', message: 'the database system is starting up' }, 'the store failed', true],
    [{ code: '08006', message: 'connection failure' }, 'the store failed', true],
    [{ code: 'ECONNREFUSED', message: 'connect ECONNREFUSED' }, 'the store failed', true],
    [{ message: 'Connection terminated unexpectedly' }, 'the store failed', true],
    [{ code: '23505', message: 'duplicate key' }, 'the store failed', false]
  ])('%o', ({ message, ...rest }, sentence, away) => {
    const told = asStoreError(Object.assign(new Error(message), rest)) as StoreError
    expect(told.message).toContain(sentence)
    expect(isAway(told)).toBe(away)
  })
})
