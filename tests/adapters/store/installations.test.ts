import { randomBytes } from 'node:crypto'
import { expect, test } from 'vitest'
import { type Installed, installations } from '../../../src/adapters/store/installations.js'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createSealer } from '../../../src/adapters/store/sealing.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { StoreError } from '../../../src/bot/ports.js'
import { bookOf } from '../../../src/wiring/installed.js'
import { forEachDatabase } from '../../support/databases.js'
import { at, batch, demo } from './drafts.js'

const [old, newer] = [randomBytes(32), randomBytes(32)]
const installed = (workspace: string, botToken = `xoxb-of-${workspace}`): Installed => ({ workspace, botToken, botId: 'B1', botUserId: 'U1' })

function bookOver(database: Database, ...keys: readonly Buffer[]) {
  return installations(database, createSealer(keys))
}

async function texts(database: Database): Promise<string> {
  return JSON.stringify(await database.read.selectFrom('installations').selectAll().execute())
}

forEachDatabase((open) => {
  test('a workspace is found as it was installed last, and no token lies in the clear', async () => {
    const database = await open()
    const book = bookOver(database, old)
    await book.save(installed('T1', 'xoxb-first'), at)
    await book.save(installed('T1', 'xoxb-second'), at + 1)
    await book.save(installed('T2'), at)

    expect(await book.find('T1')).toEqual(installed('T1', 'xoxb-second'))
    expect(await book.find('T3')).toBeNull()
    expect(await book.all()).toEqual(new Set(['T1', 'T2']))
    expect(await texts(database)).not.toContain('xoxb')
  })

  test('a token put into the row of another workspace opens nothing', async () => {
    const database = await open()
    const book = bookOver(database, old)
    await book.save(installed('T1'), at)
    await book.save(installed('T2'), at)
    const row = await database.read.selectFrom('installations').select('sealed').where('workspace', '=', 'T1').executeTakeFirstOrThrow()
    await database.write.updateTable('installations').set(row).where('workspace', '=', 'T2').execute()
    await expect(book.find('T2')).rejects.toThrow(StoreError)
    expect(await book.find('T1')).toEqual(installed('T1'))
  })

  test('what is taken away is gone with what was still to be posted, and nobody else loses anything', async () => {
    const database = await open()
    const book = bookOver(database, old)
    const store = createStore(database)
    const outbox = outboxTable(database)
    const view = await store.view(demo)
    if (view === null) throw new Error('no demo')
    for (const workspace of ['T1', 'T2']) {
      const key = { workspace, site: 'north' }
      await book.save(installed(workspace), at)
      await store.createSite(key, view.base)
      const post = { key: `${workspace}/north/morning`, site: 'north', kind: 'morning', channel: 'C1', dueAt: at, payload: null }
      await store.append(key, at, null, async () => batch({ posts: [post], reply: null }))
    }
    expect(await book.remove('T1', at + 5)).toBe(true)
    expect(await book.find('T1')).toBeNull()
    expect((await outbox.post('T1', 'T1/north/morning'))?.state).toBe('skipped')
    expect((await outbox.take(at, at + 60, 10)).map(({ key }) => key)).toEqual(['T2/north/morning'])
    expect(await store.sites('T1')).toEqual(['north'])
    expect(await book.remove('T1', at + 5)).toBe(true)
  })

  test('a late word of an uninstall does not take away what was installed since', async () => {
    const book = bookOver(await open(), old)
    await book.save(installed('T1'), at + 10)
    expect(await book.remove('T1', at + 5)).toBe(false)
    expect(await book.find('T1')).not.toBeNull()
    expect(await book.remove('T1', at + 10)).toBe(true)
  })

  test('a new key in front seals everything anew, so that the old one can be dropped', async () => {
    const database = await open()
    await bookOver(database, old).save(installed('T1'), at)
    await bookOver(database, old).save(installed('T2'), at)
    expect(await bookOver(database, newer, old).reseal()).toEqual({ count: 2, closed: [] })
    expect(await bookOver(database, newer).find('T1')).toEqual(installed('T1'))
    await expect(bookOver(database, old).find('T1')).rejects.toThrow(/no key of SEAMHAND_TOKEN_KEY/)
    expect(await bookOver(database, old).reseal()).toEqual({ count: 2, closed: ['T1', 'T2'] })
  })

  test('a start with a wrong key is refused, one lost token is said', async () => {
    const database = await open()
    const said: object[] = []
    const log = { error: (fields: object) => void said.push(fields) }
    await bookOf(database, [old], log)
    await bookOver(database, old).save(installed('T1'), at)
    await expect(bookOf(database, [newer], log)).rejects.toThrow('SEAMHAND_TOKEN_KEY: opens none of the 1 tokens')
    await bookOver(database, newer).save(installed('T2'), at)
    await bookOf(database, [newer], log)
    expect(said).toEqual([{ workspace: 'T1' }])
  })
})
