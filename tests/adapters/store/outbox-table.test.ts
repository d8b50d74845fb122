import { expect, test } from 'vitest'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import { createStore } from '../../../src/adapters/store/store.js'
import type { Post } from '../../../src/bot/ports.js'
import { StoreError } from '../../../src/bot/ports.js'
import { settingsOf } from '../../../src/bot/session/session.js'
import { demoSite } from '../../../src/core/site.js'
import { forEachDatabase } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

function post(key: string, change: Partial<Post> = {}): Post {
  return { key, site: 'demo', kind: 'morning', channel: null, dueAt: at, payload: { text: 'é', blocks: [] }, ...change }
}

const ended = { state: 'sent', nextAt: at, attempts: 1, messageTs: '1.0' } as const

forEachDatabase((open) => {
  async function withPosts(...posts: readonly Post[]) {
    const database = await open()
    await createStore(database).append(demo, at, null, async () => batch({ posts, reply: 1 }))
    return { database, table: outboxTable(database) }
  }

  test('posts are taken in order of time, then key, only when their time has come, and by one at a time', async () => {
    const { table } = await withPosts(post('c', { dueAt: at + 2 }), post('b'), post('a'))
    expect((await table.take(at - 1, at + 60, 9)).map(({ key }) => key)).toEqual([])
    expect((await table.take(at, at + 60, 1)).map(({ key, state }) => [key, state])).toEqual([['a', 'queued']])
    expect((await table.take(at + 2, at + 60, 9)).map(({ key }) => key)).toEqual(['b', 'c'])
    expect(await table.take(at + 59, at + 90, 9)).toEqual([])
    // The hold of all three ran out: whoever had them may have sent them.
    expect((await table.take(at + 60, at + 90, 9)).map(({ key, state }) => [key, state])).toEqual([
      ['a', 'unknown'],
      ['b', 'unknown'],
      ['c', 'unknown']
    ])
  })

  test('of a channel only the first that is not ended; channels of other workspaces do not count', async () => {
    const { database, table } = await withPosts(post('a', { channel: 'C1' }), post('b', { channel: 'C1' }), post('c', { channel: 'C2' }))
    const other = { workspace: 'T2', site: 'demo' }
    const store = createStore(database)
    await store.createSite(other, demoSite)
    await store.append(other, at, null, async () => batch({ posts: [post('z', { channel: 'C1' })], reply: 1 }))
    expect((await table.take(at, at + 60, 9)).map(({ key }) => key).sort()).toEqual(['a', 'c', 'z'])
    await table.settle('local', 'a', ended)
    expect((await table.take(at, at + 60, 9)).map(({ key }) => key)).toEqual(['b'])
  })

  test('what was sent stays sent', async () => {
    const { table } = await withPosts(post('a'))
    await table.settle('local', 'a', ended)
    await table.settle('local', 'a', { state: 'queued', nextAt: at, attempts: 0, messageTs: null })
    expect(await table.post('local', 'a')).toMatchObject({ state: 'sent', attempts: 1 })
    expect(await table.post('local', 'nowhere')).toBeNull()
  })

  test('only queued ones are skipped, and only those due before', async () => {
    const { table } = await withPosts(post('a'), post('b', { dueAt: at + 10 }), post('c'))
    const [taken] = await table.take(at, at + 60, 1)
    expect(taken?.key).toBe('a')
    expect(await table.skipQueued(at + 10)).toEqual([{ workspace: 'local', key: 'c', site: 'demo', kind: 'morning' }])
    expect((await table.post('local', 'b'))?.state).toBe('queued')
  })

  test('twenty that take at once get each post once', async () => {
    const { table } = await withPosts(...Array.from({ length: 10 }, (_, n) => post(`p${n}`)))
    const taken = await Promise.all(Array.from({ length: 20 }, () => table.take(at, at + 60, 1)))
    expect(
      taken
        .flat()
        .map(({ key }) => key)
        .sort()
    ).toEqual(Array.from({ length: 10 }, (_, n) => `p${n}`))
  })

  test('all sites with what is set now, of every workspace, in order', async () => {
    const database = await open()
    const store = createStore(database)
    await store.createSite({ workspace: 'A', site: 'two' }, { ...demoSite, lang: 'fr' })
    await store.append(demo, at, null, async () =>
      batch({
        drafts: [draft({ type: 'setting', subject: 'site', touches: ['site'], data: { lang: 'es' } })],
        moved: [{ subject: 'site', state: { lastAt: at, lastSeq: 1, is: { settings: { lang: 'es' } } } }],
        reply: 1
      })
    )
    const kept = await outboxTable(database).keptSites()
    const langs = await Promise.all(
      kept.map(async ({ key, base, state }) => [key.workspace, key.site, (await settingsOf({ base, state: async () => state })).lang])
    )
    expect(langs).toEqual([
      ['A', 'two', 'fr'],
      ['local', 'demo', 'es']
    ])
  })

  test('claims that were taken are known, those of their workspace only', async () => {
    const database = await open()
    await createStore(database).append(demo, at, { key: 'post/a' }, async () => batch({ reply: 1 }))
    const table = outboxTable(database)
    expect([...(await table.claimed('local', ['post/a', 'post/b']))]).toEqual(['post/a'])
    expect([...(await table.claimed('other', ['post/a']))]).toEqual([])
    expect([...(await table.claimed('local', []))]).toEqual([])
  })

  test('a database that is closed is a StoreError', async () => {
    const database = await open()
    await database.close()
    await expect(outboxTable(database).take(at, at, 1)).rejects.toThrow(StoreError)
  })
})
