import { closeSync, mkdirSync, openSync, readFileSync, statSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { sql } from 'kysely'
import { expect, test } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { sqliteApi } from '../../../src/adapters/store/sqlite-api.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { StoreError } from '../../../src/bot/ports.js'
import { temporaryFolder } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

const folder = temporaryFolder()

async function refusal(where: string): Promise<StoreError> {
  const error: unknown = await openSqlite(where, { server: false }).then(
    () => null,
    (thrown) => thrown
  )
  expect(error).toBeInstanceOf(StoreError)
  return error as StoreError
}

/** A store with entries in it, closed. */
async function written(name: string, entries: number): Promise<string> {
  const where = join(folder(), name)
  const store = createStore(await openSqlite(where, { server: false }))
  for (let n = 0; n < entries; n += 1) {
    await store.append(demo, at, null, async () => batch({ drafts: [draft({ data: { n, text: 'x'.repeat(200) } })], reply: 1 }))
  }
  await store.close()
  return where
}

test('the folder is made, also when its parents are missing', async () => {
  const where = join(folder(), 'a/b/c')
  const store = createStore(await openSqlite(where, { server: true }))
  await store.close()
  expect(statSync(join(where, 'seamhand.db')).size).toBeGreaterThan(0)
})

test('a closed store is whole in one file: its journal is gone or empty', async () => {
  const where = await written('closed', 3)
  expect(statSync(join(where, 'seamhand.db-wal'), { throwIfNoEntry: false })?.size ?? 0).toBe(0)
})

test('commits are flushed, foreign keys hold, readers only read', async () => {
  const database = await openSqlite(join(folder(), 'settings'), { server: false })
  async function ask(name: string) {
    const rows = await Promise.all([database.write, database.read].map((db) => sql<Record<string, unknown>>`pragma ${sql.raw(name)}`.execute(db)))
    return rows.map(({ rows: [row] }) => Object.values(row ?? {})[0])
  }
  expect(await ask('journal_mode')).toEqual(['wal', 'wal'])
  // 2: FULL, https://sqlite.org/pragma.html#pragma_synchronous
  expect((await ask('synchronous'))[0]).toBe(2)
  expect(await ask('foreign_keys')).toEqual([1, 1])
  expect(await ask('busy_timeout')).toEqual([10, 5000])
  expect(await ask('query_only')).toEqual([0, 1])
  await expect(sql`delete from sites`.execute(database.read)).rejects.toThrow('readonly')
  await database.close()
  await database.close()
})

test('a folder that is a file, or where nothing can be made, is named', async () => {
  const file = join(folder(), 'file')
  writeFileSync(file, '')
  expect((await refusal(file)).message).toContain(`the data folder ${file} cannot be made`)
  expect((await refusal(join(file, 'below'))).message).toContain(join(file, 'below'))
  expect((await refusal('/proc/seamhand')).message).toContain('/proc/seamhand')
})

test('a database that is a folder is named', async () => {
  const where = join(folder(), 'odd')
  mkdirSync(join(where, 'seamhand.db'), { recursive: true })
  expect((await refusal(where)).message).toContain(`${join(where, 'seamhand.db')}: the store cannot be opened`)
})

test('a folder where nothing can be written is named', async () => {
  expect((await refusal('/proc')).message).toMatch(/^\/proc\/seamhand\.db: the store cannot be/)
})

test('a file that is no database is named and left as it is', async () => {
  const where = join(folder(), 'text')
  mkdirSync(where)
  writeFileSync(join(where, 'seamhand.db'), 'Dear diary, '.repeat(1000))
  expect((await refusal(where)).message).toContain(`${join(where, 'seamhand.db')}: the store is damaged or not a database`)
  expect(readFileSync(join(where, 'seamhand.db'), 'utf8')).toContain('Dear diary')
})

test('a database of something else is named and left as it is', async () => {
  const where = join(folder(), 'other')
  mkdirSync(where)
  const other = (await sqliteApi())(join(where, 'seamhand.db'))
  other.exec('create table recipes (name text)')
  other.close()
  expect((await refusal(where)).message).toContain('is a database, but not one of Seamhand')
})

test('a damaged header is found when it is opened', async () => {
  const where = await written('header', 3)
  scribble(join(where, 'seamhand.db'), 0, 4096)
  expect((await refusal(where)).message).toContain('damaged')
})

test('damaged pages are a StoreError when they are read', async () => {
  const where = await written('pages', 200)
  const path = join(where, 'seamhand.db')
  scribble(path, 12 * 4096, statSync(path).size - 12 * 4096)
  const failed = (async () => {
    const store = createStore(await openSqlite(where, { server: false }))
    await store.exportRows(demo, 0, 1000).finally(() => store.close())
  })()
  await expect(failed).rejects.toThrow(/^(.*: )?the store is damaged/)
})

test('a write that the file has no room for is a StoreError, and the store goes on after it', async () => {
  const database = await openSqlite(join(folder(), 'full'), { server: false })
  const store = createStore(database)
  const pages = (await sql<{ page_count: number }>`pragma page_count`.execute(database.write)).rows[0]?.page_count
  await sql`pragma max_page_count = ${sql.raw(String(pages))}`.execute(database.write)
  const big = batch({ drafts: [draft({ data: { text: 'x'.repeat(100_000) } })], reply: 1 })
  await expect(store.append(demo, at, { key: 'D1' }, async () => big)).rejects.toThrow('the disk of the store is full')
  await sql`pragma max_page_count = 1000000`.execute(database.write)
  expect(await store.append(demo, at, { key: 'D1' }, async () => big)).toMatchObject({ kind: 'done' })
  expect(await store.entriesCount(demo)).toBe(1)
  await store.close()
})

test('a store that another process holds too long is a StoreError', async () => {
  const where = await written('held', 1)
  const database = await openSqlite(where, { server: false, busyMs: 50 })
  const holder = (await sqliteApi())(join(where, 'seamhand.db'))
  holder.exec('begin immediate')
  const store = createStore(database)
  await expect(store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))).rejects.toThrow('locked by another process')
  expect(await store.entriesCount(demo)).toBe(1)
  holder.exec('rollback')
  holder.close()
  expect(await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))).toMatchObject({ kind: 'done' })
  await store.close()
})

function scribble(path: string, from: number, length: number): void {
  const file = openSync(path, 'r+')
  writeSync(file, Buffer.alloc(length, 0x5a), 0, length, from)
  closeSync(file)
}
