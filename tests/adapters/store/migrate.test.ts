import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { sql } from 'kysely'
import { describe, expect, test } from 'vitest'
import type { Migration } from '../../../src/adapters/store/migrate.js'
import { migrate } from '../../../src/adapters/store/migrate.js'
import { migrations } from '../../../src/adapters/store/migrations/index.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { StoreError } from '../../../src/bot/ports.js'
import { forEachDatabase } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

const next: Migration = {
  number: migrations.length + 1,
  name: 'next',
  async up(db) {
    await sql`create table later (name text not null)`.execute(db)
  }
}
const broken: Migration = {
  number: migrations.length + 1,
  name: 'broken',
  async up(db) {
    await sql`create table later (name text not null)`.execute(db)
    await sql`insert into nowhere values (1)`.execute(db)
  }
}

describe('the list of migrations', () => {
  test('is numbered 1, 2, 3 … and holds every file of the folder', () => {
    expect(migrations.map(({ number }) => number)).toEqual(migrations.map((_, index) => index + 1))
    const folder = join(import.meta.dirname, '../../../src/adapters/store/migrations')
    const files = readdirSync(folder).filter((file) => file !== 'index.ts')
    expect(files.sort()).toEqual(migrations.map(({ number, name }) => `${String(number).padStart(4, '0')}-${name}.ts`))
  })
})

forEachDatabase((open, kind) => {
  test('a new store has every step done, and is left alone when it is opened again', async () => {
    const database = await open('twice')
    const store = createStore(database)
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    await store.close()
    const again = await open('twice')
    const done = await sql<{ number: number; name: string }>`select number, name from migrations order by number`.execute(again.read)
    expect(done.rows).toEqual(migrations.map(({ number, name }) => ({ number, name })))
    expect(await createStore(again).entriesCount(demo)).toBe(1)
  })

  test('a store of before gets the steps that are new, once, and keeps its entries', async () => {
    const database = await open()
    const store = createStore(database)
    await store.append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
    await migrate(database.write, kind, [...migrations, next])
    await migrate(database.write, kind, [...migrations, next])
    expect((await sql`select * from later`.execute(database.read)).rows).toEqual([])
    expect(await store.entriesCount(demo)).toBe(1)
  })

  test('a step that fails leaves nothing of itself', async () => {
    const database = await open()
    await expect(migrate(database.write, kind, [...migrations, broken])).rejects.toThrow('nowhere')
    await migrate(database.write, kind, [...migrations, next])
    expect((await sql`select * from later`.execute(database.read)).rows).toEqual([])
  })

  test('a store of a newer program is refused with a sentence', async () => {
    const database = await open('newer')
    await migrate(database.write, kind, [...migrations, next])
    await database.close()
    await expect(open('newer')).rejects.toThrow(StoreError)
    await expect(open('newer')).rejects.toThrow(`newer Seamhand (migration ${next.number}, this one knows ${migrations.length}): update the program`)
  })

  test('eight that start at once find every step done once', async () => {
    const all = await Promise.all(Array.from({ length: 8 }, () => open('at-once')))
    const [first] = all
    if (!first) throw new Error('nothing open')
    expect((await sql`select number from migrations`.execute(first.read)).rows).toEqual(migrations.map(({ number }) => ({ number })))
    expect(await createStore(first).sites('local')).toEqual(['demo'])
  })
})
