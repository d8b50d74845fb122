import { expect, test } from 'vitest'
import { createStore } from '../../../src/adapters/store/store.js'
import { StoreError } from '../../../src/bot/ports.js'
import { verifyEntries } from '../../../src/core/log/chain.js'
import { firstPrev } from '../../../src/core/log/entry.js'
import { demoSite } from '../../../src/core/site.js'
import { forEachDatabase } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

forEachDatabase((open, kind) => {
  async function fresh() {
    return createStore(await open())
  }

  test('a new store holds the one invented site with an empty chain', async () => {
    const store = await fresh()
    expect(await store.sites('local')).toEqual(['demo'])
    expect(await store.allSites()).toEqual([demo])
    const view = await store.view(demo)
    expect(view?.head).toEqual({ seq: 0, hash: firstPrev })
    expect(view?.base).toEqual(demoSite)
    expect(await view?.state('site')).toBeNull()
    expect(await store.view({ workspace: 'other', site: 'demo' })).toBeNull()
  })

  test('sites are made once and listed in order of code points', async () => {
    const store = await fresh()
    const names = ['b', 'B', 'a-2', 'a 1', 'é', 'Z']
    for (const site of names) expect(await store.createSite({ workspace: 'T1', site }, demoSite)).toBe(true)
    expect(await store.createSite({ workspace: 'T1', site: 'B' }, demoSite)).toBe(false)
    expect(await store.sites('T1')).toEqual(['B', 'Z', 'a 1', 'a-2', 'b', 'é'])
  })

  test('an append writes entries, states, head and reply together', async () => {
    const store = await fresh()
    const done = await store.append(demo, at, { key: 'D1' }, async (view) => {
      expect(view.head.seq).toBe(0)
      return batch({
        drafts: [draft(), draft({ type: 'void', subject: 'void:1', touches: ['void:1', 'site', 'void:1'], data: { lengthMm: 40 } })],
        moved: [
          { subject: 'site', state: { airC: 14.5, open: [1] } },
          { subject: 'void:1', state: 'open' }
        ],
        reply: { text: 'logged', n: null }
      })
    })
    expect(done).toMatchObject({ kind: 'done', reply: { text: 'logged' } })
    const view = await store.view(demo)
    expect(view?.head.seq).toBe(2)
    expect(await view?.state('void:1')).toEqual({ subject: 'void:1', state: 'open', seq: 2 })
    expect(await view?.state('site')).toEqual({ subject: 'site', state: { airC: 14.5, open: [1] }, seq: 2 })
    const all = await store.entries(demo, 0, 10)
    expect(done?.kind === 'done' && done.kept).toEqual(all)
    expect(all.map(({ entry, batch: first, day }) => [entry.seq, entry.loggedAt, first, day])).toEqual([
      [1, '2026-05-04T06:10:00Z', 1, '2026-05-04'],
      [2, '2026-05-04T06:10:00Z', 1, '2026-05-04']
    ])
    expect(view?.head.hash).toBe(all[1]?.hash)
    expect((await view?.entriesOf('site'))?.map(({ entry }) => entry.seq)).toEqual([1, 2])
    expect((await view?.entriesOf('void:1'))?.map(({ entry }) => entry.seq)).toEqual([2])
    expect((await view?.entry(2))?.entry.prev).toBe(all[0]?.hash)
    expect(await view?.entry(3)).toBeNull()
    expect(await store.entriesCount(demo)).toBe(2)
  })

  test('there is no append to a site that is not there, and its claim stays free', async () => {
    const store = await fresh()
    const nowhere = { workspace: 'local', site: 'nowhere' }
    expect(await store.append(nowhere, at, { key: 'D1' }, async () => batch({ reply: 1 }))).toBeNull()
    expect(await store.append(demo, at, { key: 'D1' }, async () => batch({ reply: 2 }))).toMatchObject({ kind: 'done' })
  })

  test('a claim taken before gives the reply stored then, and composes nothing', async () => {
    const store = await fresh()
    const reply = { text: 'go', z: 1, a: [true, null, 'ü€😀'] }
    await store.append(demo, at, { key: 'D1' }, async () => batch({ drafts: [draft()], reply }))
    let composed = 0
    const again = await store.append(demo, at + 5, { key: 'D1' }, async () => {
      composed += 1
      return batch({ drafts: [draft()], reply: { text: 'second' } })
    })
    expect(again).toEqual({ kind: 'repeated', reply })
    expect(JSON.stringify(again?.reply)).toBe(JSON.stringify(reply))
    expect(composed).toBe(0)
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('a claim counts in its workspace only', async () => {
    const store = await fresh()
    const other = { workspace: 'T2', site: 'demo' }
    await store.createSite(other, demoSite)
    await store.append(demo, at, { key: 'D1' }, async () => batch({ reply: 1 }))
    expect(await store.append(other, at, { key: 'D1' }, async () => batch({ reply: 2 }))).toMatchObject({ kind: 'done', reply: 2 })
  })

  test('twenty deliveries of one claim at once have one effect', async () => {
    const store = await fresh()
    const all = await Promise.all(
      Array.from({ length: 20 }, (_, n) => store.append(demo, at, { key: 'D1' }, async () => batch({ drafts: [draft()], reply: n })))
    )
    expect(all.filter((one) => one?.kind === 'done')).toHaveLength(1)
    expect(new Set(all.map((one) => one?.reply)).size).toBe(1)
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('one claim at two sites at once has one effect', async () => {
    const store = await fresh()
    const second = { workspace: 'local', site: 'second' }
    await store.createSite(second, demoSite)
    for (let round = 0; round < 10; round += 1) {
      const key = `D${round}`
      const both = await Promise.all(
        [demo, second].map((site) => store.append(site, at, { key }, async () => batch({ drafts: [draft()], reply: site.site })))
      )
      expect(both.map((one) => one?.kind).sort()).toEqual(['done', 'repeated'])
    }
    expect((await store.entriesCount(demo)) + (await store.entriesCount(second))).toBe(10)
  })

  test('what compose throws passes unchanged and leaves nothing', async () => {
    const store = await fresh()
    const mine = new RangeError('mine')
    const failed = store.append(demo, at, { key: 'D1' }, async () => {
      throw mine
    })
    await expect(failed).rejects.toBe(mine)
    expect((await store.view(demo))?.head.seq).toBe(0)
    expect(await store.append(demo, at, { key: 'D1' }, async () => batch({ reply: 1 }))).toMatchObject({ kind: 'done' })
  })

  test('an error after the entries were written takes everything back', async () => {
    const store = await fresh()
    const unkept = batch({ drafts: [draft()], keepsakes: [{ sha256: 'a', kind: 'sheet', body: () => 'x\0' }], reply: 1 })
    await expect(store.append(demo, at, { key: 'D1' }, async () => unkept)).rejects.toThrow(TypeError)
    await expect(store.append(demo, at, null, async () => batch({ drafts: [draft({ at: 'yesterday' })], reply: 1 }))).rejects.toThrow(TypeError)
    await expect(store.append(demo, at, null, async () => batch({ drafts: [draft({ author: 'U\0' })], reply: 1 }))).rejects.toThrow(TypeError)
    await expect(store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: Number.NaN }))).resolves.toMatchObject({
      kind: 'done'
    })
    await expect(store.append(demo, at, { key: 'D2' }, async () => batch({ drafts: [draft()], reply: Number.NaN }))).rejects.toThrow(TypeError)
    await expect(store.append(demo, at + 0.5, null, async () => batch({ drafts: [draft()], reply: 1 }))).rejects.toThrow(TypeError)
    expect(await store.entriesCount(demo)).toBe(1)
    expect((await store.view(demo))?.head.seq).toBe(1)
    expect(await store.append(demo, at, { key: 'D1' }, async () => batch({ reply: 1 }))).toMatchObject({ kind: 'done' })
  })

  test('states move only with entries', async () => {
    const store = await fresh()
    const odd = batch({ moved: [{ subject: 'site', state: 1 }], reply: 1 })
    await expect(store.append(demo, at, null, async () => odd)).rejects.toThrow('states move only with entries')
  })

  test('a state moved to null is gone; it can come back', async () => {
    const store = await fresh()
    async function move(state: string | null) {
      await store.append(demo, at, null, async () =>
        batch({ drafts: [draft({ subject: 'kit:K1', touches: ['kit:K1'] })], moved: [{ subject: 'kit:K1', state }], reply: 1 })
      )
      return (await store.view(demo))?.state('kit:K1')
    }
    expect(await move('full')).toEqual({ subject: 'kit:K1', state: 'full', seq: 1 })
    expect(await move(null)).toBeNull()
    expect(await move('used')).toEqual({ subject: 'kit:K1', state: 'used', seq: 3 })
  })

  test('states are found by prefix, in order of code points', async () => {
    const store = await fresh()
    const subjects = ['void:2', 'void:10', 'void:1', 'voids', 'kit:K1', 'VOID:1', 'void:é', 'site']
    const drafts = subjects.map((subject) => draft({ subject, touches: [subject] }))
    await store.append(demo, at, null, async () => batch({ drafts, moved: subjects.map((subject) => ({ subject, state: 1 })), reply: 1 }))
    const view = await store.view(demo)
    expect((await view?.states('void:'))?.map(({ subject }) => subject)).toEqual(['void:1', 'void:10', 'void:2', 'void:é'])
    expect((await view?.states(''))?.map(({ subject }) => subject)).toHaveLength(8)
    expect(await view?.states('coupon:')).toEqual([])
    const named = await view?.statesAt(['void:2', 'coupon:1', 'site'])
    expect(named?.map(({ subject, state, seq }) => `${subject} ${state} ${seq}`).sort()).toEqual(['site 1 8', 'void:2 1 1'])
    expect(await view?.statesAt(['kit:K1'])).toEqual([await view?.state('kit:K1')])
  })

  test('the newest entries of an author come newest first', async () => {
    const store = await fresh()
    for (const author of ['U1', 'U2', 'U1', 'U1']) await store.append(demo, at, null, async () => batch({ drafts: [draft({ author })], reply: 1 }))
    const view = await store.view(demo)
    expect((await view?.latestOf('U1', 2))?.map(({ entry }) => entry.seq)).toEqual([4, 3])
    expect(await view?.latestOf('U9', 2)).toEqual([])
    expect(await view?.latestOf('U1', 0)).toEqual([])
  })

  test('inside an append the view sees the transaction, and other reads do not wait for it', async () => {
    const store = await fresh()
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], moved: [{ subject: 'site', state: 1 }], reply: 1 }))
    await store.append(demo, at, null, async (view) => {
      expect(await view.state('site')).toEqual({ subject: 'site', state: 1, seq: 1 })
      expect(await store.person('local', 'U7')).toMatchObject({ name: null })
      expect((await store.view(demo))?.head.seq).toBe(1)
      return batch({ reply: 1 })
    })
  })

  test('twenty appends at once that each read elsewhere do not starve each other', async () => {
    const store = await fresh()
    const keys = Array.from({ length: 20 }, (_, n) => ({ workspace: 'T1', site: `s${n}` }))
    for (const key of keys) await store.createSite(key, demoSite)
    await Promise.all(
      keys.map((key) =>
        store.append(key, at, null, async () => {
          await store.person('T1', 'U1')
          await store.keepsake('T1', 'none')
          return batch({ drafts: [draft()], reply: 1 })
        })
      )
    )
    for (const key of keys) expect(await store.entriesCount(key)).toBe(1)
  })

  test('fifty appends at once lose no seq and leave one chain', async () => {
    const store = await fresh()
    const all = await Promise.all(
      Array.from({ length: 50 }, (_, n) =>
        store.append(demo, at, { key: `D${n}` }, async (view) => {
          const before = await view.state('site')
          await new Promise((resolve) => setTimeout(resolve, n % 3))
          const state = Number(before?.state ?? 0) + 1
          return batch({
            drafts: [draft({ data: { n } }), draft({ data: { n, second: true } })],
            moved: [{ subject: 'site', state }],
            reply: n
          })
        })
      )
    )
    const seqs = all.flatMap((one) => (one?.kind === 'done' ? one.kept.map(({ entry }) => entry.seq) : []))
    expect([...seqs].sort((a, b) => a - b)).toEqual(Array.from({ length: 100 }, (_, n) => n + 1))
    const view = await store.view(demo)
    expect((await view?.state('site'))?.state).toBe(50)
    const rows = await store.exportRows(demo, 0, 1000)
    expect(verifyEntries(demo, rows, view?.head ?? { seq: 0, hash: '' }, [])).toMatchObject({ entries: 100, firstBad: null })
    const kept = await store.entries(demo, 0, 1000)
    for (let n = 0; n < 100; n += 2) expect(kept[n]?.batch).toBe(kept[n + 1]?.batch)
  })

  test('an append of many entries goes in slices', async () => {
    const store = await fresh()
    const drafts = Array.from({ length: 1203 }, (_, n) => draft({ data: { n } }))
    await store.append(demo, at, null, async () => batch({ drafts, reply: 1 }))
    const slice = await store.entries(demo, 1200, 10)
    expect(slice.map(({ entry }) => entry.seq)).toEqual([1201, 1202, 1203])
  })

  test('of several keepsakes only those not kept yet are made', async () => {
    const store = await fresh()
    const made: string[] = []
    const bodyOf = (sha256: string) => {
      made.push(sha256)
      return sha256
    }
    const keepsake = (sha256: string) => ({ sha256, kind: 'sheet', body: () => bodyOf(sha256) }) as const
    await store.append(demo, at, null, async () => batch({ keepsakes: [keepsake('b')], reply: 1 }))
    await store.append(demo, at, null, async () => batch({ keepsakes: [keepsake('c'), keepsake('b'), keepsake('a')], reply: 1 }))
    await store.append(demo, at, null, async () => batch({ keepsakes: [keepsake('a'), keepsake('c'), keepsake('b')], reply: 1 }))
    expect(made).toEqual(['b', 'a', 'c'])
    for (const sha256 of ['a', 'b', 'c']) expect((await store.keepsake('local', sha256))?.body).toBe(sha256)
  })

  test('keepsakes are kept once; posts are queued once a key, with or without entries', async () => {
    const database = await open()
    const store = createStore(database)
    const post = { key: 'local/demo/morning/2026-05-04', site: 'demo', kind: 'morning', channel: null, dueAt: at, payload: { a: 1 } }
    const keepsake = { sha256: 'ab', kind: 'sheet', body: () => '{"é":1}' } as const
    await store.append(demo, at, null, async () => batch({ keepsakes: [keepsake, keepsake], posts: [post], reply: 1 }))
    await store.append(demo, at, null, async () =>
      batch({ drafts: [draft()], keepsakes: [{ ...keepsake, body: () => 'other' }], posts: [{ ...post, payload: 2 }], reply: 1 })
    )
    expect(await store.keepsake('local', 'ab')).toEqual({ ...keepsake, body: '{"é":1}' })
    expect(await store.keepsake('other', 'ab')).toBeNull()
    const queued = await database.read.selectFrom('outbox').selectAll().execute()
    expect(queued).toEqual([
      {
        workspace: 'local',
        key: post.key,
        site: 'demo',
        kind: 'morning',
        channel: null,
        due_at: at,
        payload: '{"a":1}',
        state: 'queued',
        attempts: 0,
        next_at: at,
        claimed_until: null,
        message_ts: null,
        created_at: at
      }
    ])
  })

  test('a person is known by what was saved, piece by piece', async () => {
    const store = await fresh()
    expect(await store.person('local', 'U1')).toEqual({ lang: null, units: null, role: null, name: null, summary: null })
    await store.savePerson('local', 'U1', { lang: 'es' })
    await store.savePerson('local', 'U1', { units: 'us', name: 'Ana' })
    await store.savePerson('local', 'U1', {})
    await store.savePerson('local', 'U2', {})
    expect(await store.person('local', 'U1')).toEqual({ lang: 'es', units: 'us', role: null, name: 'Ana', summary: null })
    await store.savePerson('local', 'U1', { lang: null })
    expect(await store.person('local', 'U1')).toEqual({ lang: null, units: 'us', role: null, name: 'Ana', summary: null })
    expect(await store.person('other', 'U1')).toMatchObject({ name: null })
  })

  test('text of every script, and escapes in it, come back as they were, hash and all', async () => {
    const store = await fresh()
    const text = 'é ü € 😀 \u2028 "\\" \n \0 \ud800 كيت'
    await store.append(demo, at, { key: 'clé 😀' }, async () => batch({ drafts: [draft({ type: 'note', data: { text } })], reply: { text } }))
    const [kept] = await store.entries(demo, 0, 1)
    expect(kept?.entry.data).toEqual({ text })
    const rows = await store.exportRows(demo, 0, 10)
    expect(verifyEntries(demo, rows, { seq: 1, hash: kept?.hash ?? '' }, [])).toMatchObject({ firstBad: null })
    expect(await store.append(demo, at, { key: 'clé 😀' }, async () => batch({ reply: 1 }))).toEqual({ kind: 'repeated', reply: { text } })
  })

  test('keys that PostgreSQL would refuse or SQLite would bend are refused on both', async () => {
    const store = await fresh()
    await expect(store.append(demo, at, { key: 'a\0' }, async () => batch({ reply: 1 }))).rejects.toThrow(TypeError)
    await expect(store.createSite({ workspace: 'local', site: '\ud800' }, demoSite)).rejects.toThrow(TypeError)
    await expect(store.savePerson('local', 'U1', { name: '\0' })).rejects.toThrow(TypeError)
  })

  test('a snapshot stays as it was while others write', async () => {
    const store = await fresh()
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    const seen = await store.snapshot(demo, async ({ view, rows }) => {
      await store.append(demo, at, null, async () => batch({ drafts: [draft()], moved: [{ subject: 'site', state: 1 }], reply: 1 }))
      return [view.head.seq, (await rows(0, 10)).length, await view.state('site')]
    })
    expect(seen).toEqual([1, 1, null])
    expect(await store.snapshot({ workspace: 'local', site: 'nowhere' }, async () => 1)).toBeNull()
    expect((await store.view(demo))?.head.seq).toBe(2)
    const mine = new Error('mine')
    await expect(store.snapshot(demo, () => Promise.reject(mine))).rejects.toBe(mine)
  })

  test('what is closed is a StoreError; what was written is there again', async () => {
    const store = createStore(await open('again'))
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    await store.close()
    await expect(store.sites('local')).rejects.toThrow(StoreError)
    await expect(store.append(demo, at, null, async () => batch({ reply: 1 }))).rejects.toThrow(StoreError)
    const again = createStore(await open('again'))
    expect(await again.entriesCount(demo)).toBe(1)
    expect(await again.sites('local')).toEqual(['demo'])
  })

  test('a head that was moved by hand fails the append, as a StoreError, and writes nothing', async () => {
    const database = await open()
    const store = createStore(database)
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    await database.write.updateTable('sites').set({ seq: 0, hash: firstPrev }).execute()
    await expect(store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))).rejects.toThrow(StoreError)
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('an entry whose text is no longer JSON can still be exported', async () => {
    const database = await open()
    const store = createStore(database)
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    await database.write.updateTable('entries').set({ canonical: '{' }).execute()
    await expect(store.entries(demo, 0, 1)).rejects.toThrow('entry demo-1 is damaged')
    expect(await store.exportRows(demo, 0, 1)).toMatchObject([{ seq: 1, canonical: '{', day: '2026-05-04' }])
  })

  test('rows are plain and numbers are numbers on both', async () => {
    const database = await open()
    const [row] = await database.read.selectFrom('sites').selectAll().execute()
    expect(Object.getPrototypeOf(row)).toBe(Object.prototype)
    expect(typeof row?.seq).toBe('number')
    expect(database.kind).toBe(kind)
  })
})
