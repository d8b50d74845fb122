import { sql } from 'kysely'
import { describe, expect, test } from 'vitest'
import { fromText, plain, toText } from '../../../src/adapters/store/codec.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { forEachDatabase } from '../../support/databases.js'

/** Where SQLite and PostgreSQL, or their drivers, part: each difference met once, and how it is kept out of the store. */
forEachDatabase((open, kind) => {
  async function put(database: Database, key: string, at: number): Promise<void> {
    await database.write.insertInto('claims').values({ workspace: 'w', key, reply: '1', created_at: at }).execute()
  }

  test('whole numbers, counts, sums and maxima are numbers', async () => {
    const database = await open()
    await put(database, 'a', Number.MAX_SAFE_INTEGER - 1)
    await put(database, 'b', 1)
    const row = await database.read
      .selectFrom('claims')
      .select((all) => [all.fn.countAll<number>().as('count'), all.fn.max('created_at').as('max'), all.fn.sum<number>('created_at').as('sum')])
      .executeTakeFirstOrThrow()
    expect(row).toEqual({ count: 2, max: Number.MAX_SAFE_INTEGER - 1, sum: Number.MAX_SAFE_INTEGER })
  })

  test('a number that JavaScript cannot hold is refused when it is read, not rounded', async () => {
    const database = await open()
    await sql`insert into claims values ('w', 'k', '1', 9007199254740993)`.execute(database.write)
    await expect(database.read.selectFrom('claims').select('created_at').execute()).rejects.toThrow()
  })

  test('text in a column of numbers is refused', async () => {
    const database = await open()
    await expect(sql`insert into claims values ('w', 'k', '1', 'soon')`.execute(database.write)).rejects.toThrow()
    await expect(sql`insert into claims values ('w', 'k', '1', ${1.5})`.execute(database.write)).rejects.toThrow()
    await expect(sql`insert into claims values ('w', 'k', '1', null)`.execute(database.write)).rejects.toThrow()
  })

  test('JSON is text: it keeps the order of its members, and comes back as it was', async () => {
    const database = await open()
    const value = { z: [1, 8.5, null, true], a: { é: 'x' }, '1': 'one' }
    await database.write
      .insertInto('claims')
      .values({ workspace: 'w', key: 'k', reply: toText(value), created_at: 1 })
      .execute()
    const row = await database.read.selectFrom('claims').select('reply').executeTakeFirstOrThrow()
    expect(row.reply).toBe(JSON.stringify(value))
    expect(fromText(row.reply)).toEqual(value)
  })

  test('keys part by case and sort by code point', async () => {
    const database = await open()
    for (const key of ['b', 'B', 'ä', 'a', 'A', 'a-b', 'ab', '\uffff', '😀']) await put(database, key, 1)
    const rows = await database.read.selectFrom('claims').select('key').orderBy('key').execute()
    expect(rows.map((row) => row.key)).toEqual(['A', 'B', 'a', 'a-b', 'ab', 'b', 'ä', '\uffff', '😀'])
    expect(await database.read.selectFrom('claims').select('key').where('key', '=', 'a').execute()).toHaveLength(1)
  })

  test('a row that was there gives nothing back: no id is stale', async () => {
    const database = await open()
    const values = { workspace: 'w', key: 'k', reply: '1', created_at: 1 }
    async function insert() {
      return database.write
        .insertInto('claims')
        .values(values)
        .onConflict((conflict) => conflict.doNothing())
        .returning('key')
        .execute()
    }
    expect(await insert()).toEqual([{ key: 'k' }])
    expect(await insert()).toEqual([])
  })

  test('read and then write in one transaction, while another connection writes, is not refused', async () => {
    const database = await open()
    await put(database, 'a', 0)
    const both = Array.from({ length: 10 }, () =>
      database.write.transaction().execute(async (trx) => {
        const lock = trx.selectFrom('claims').select('created_at').where('key', '=', 'a')
        const { created_at } = await (kind === 'postgres' ? lock.forUpdate() : lock).executeTakeFirstOrThrow()
        await trx
          .updateTable('claims')
          .set({ created_at: created_at + 1 })
          .where('key', '=', 'a')
          .execute()
      })
    )
    await Promise.all(both)
    expect(await database.read.selectFrom('claims').select('created_at').executeTakeFirst()).toEqual({ created_at: 10 })
  })

  test('a transaction that failed in the middle leaves the connection fit for the next', async () => {
    const database = await open()
    const failed = database.write.transaction().execute(async (trx) => {
      await trx.insertInto('claims').values({ workspace: 'w', key: 'k', reply: '1', created_at: 1 }).execute()
      await sql`select 1 from nowhere`.execute(trx)
    })
    await expect(failed).rejects.toThrow('nowhere')
    expect(await database.write.selectFrom('claims').selectAll().execute()).toEqual([])
    await put(database, 'k', 1)
  })

  test('what a driver would bend or drop is refused before it: undefined, a Date, a boolean', async () => {
    if (kind === 'postgres')
      return expect(sql`select ${1}::bigint as one`.execute((await open()).read)).resolves.toMatchObject({ rows: [{ one: 1 }] })
    const database = await open()
    for (const value of [undefined, new Date(0), true, {}, Number.NaN, Number.POSITIVE_INFINITY]) {
      await expect(sql`select ${value} as it`.execute(database.read)).rejects.toThrow(TypeError)
    }
  })

  test('more statements than are kept prepared still answer', async () => {
    const database = await open()
    for (let n = 0; n < 500; n += 1) {
      const { rows } = await sql<{ n: number }>`select cast(${n} as bigint) as n, ${sql.raw(`${n % 250}`)} as lit`.execute(database.read)
      expect(rows[0]?.n).toBe(n)
    }
  })
})

describe('the codec', () => {
  test('refuses what JSON would turn into something else', () => {
    for (const value of [undefined, Number.NaN, Number.POSITIVE_INFINITY, { a: [Number.NaN] }, () => 1])
      expect(() => toText(value)).toThrow(TypeError)
    expect(toText({ a: undefined, b: 1 })).toBe('{"b":1}')
    expect(fromText(toText(null))).toBeNull()
  })

  test('refuses keys that the databases treat differently', () => {
    for (const text of ['\0', 'a\0b', '\ud800', 'x\udc00y']) expect(() => plain(text)).toThrow(TypeError)
    for (const text of ['', 'é', '😀', '\u0001']) expect(plain(text)).toBe(text)
  })
})
