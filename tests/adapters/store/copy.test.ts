import { createHash } from 'node:crypto'
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { sql } from 'kysely'
import { describe, expect, test } from 'vitest'
import { readBackup, writeBackup } from '../../../src/adapters/store/backup-file.js'
import { copyStore } from '../../../src/adapters/store/copy.js'
import { migrations } from '../../../src/adapters/store/migrations/index.js'
import { openPostgres } from '../../../src/adapters/store/open-postgres.js'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { allRows, type Rows, tableKeys, tableNames } from '../../../src/adapters/store/tables.js'
import { StoreError } from '../../../src/bot/ports.js'
import { verifySite } from '../../../src/bot/verify.js'
import { type OpenDatabase, temporaryFolder, temporaryPostgres } from '../../support/databases.js'
import { at, batch, demo, draft } from './drafts.js'

const folder = temporaryFolder()
const urlOf = temporaryPostgres()
const opened: Database[] = []
let names = 0

const onSqlite: OpenDatabase = async (name = `s${++names}`) => keep(await openSqlite(join(folder(), name), { server: false }))
const onPostgres: OpenDatabase = async (name = `p${++names}`) => keep(await openPostgres(await urlOf(name)))

function keep(database: Database): Database {
  opened.push(database)
  return database
}

/** A store with something in every table, and words that do not survive every way of writing. */
async function full(database: Database): Promise<void> {
  const store = createStore(database)
  await store.createSite({ workspace: 'T1', site: 'nörth' }, { ...(await base(database)), channel: 'C1' })
  for (let n = 0; n < 3; n += 1) {
    await store.append(demo, at + n, { key: `claim ${n}` }, async () =>
      batch({
        drafts: [draft({ data: { note: 'a "b" \\ \u2028 € \u{1F600} é é', n: n / 3 } }), draft({ touches: ['site', `day:2026-05-0${n + 1}`] })],
        moved: [{ subject: 'site', state: { n } }],
        keepsakes: [{ sha256: 'f'.repeat(64), kind: 'sheet', body: () => 'one\ntwo' }],
        posts: [{ key: `k${n}`, site: 'demo', kind: 'morning', channel: null, dueAt: at, payload: { text: 'x', blocks: [] } }],
        reply: { n }
      })
    )
  }
  await store.savePerson('T1', 'U1', { name: "O'Neil; drop", role: 'supervisor', lang: 'fr' })
  const cell = { workspace: '*', cell: '50.00,8.00' }
  await database.write
    .insertInto('hours')
    .values({ ...cell, at, hour: '{}' })
    .execute()
  const forecast = { ...cell, source: 'met', fetched_at: at, issued_at: at, expires_at: at, last_modified: null, forecast: '{}' }
  await database.write.insertInto('forecasts').values(forecast).execute()
  await database.write.insertInto('installations').values({ workspace: 'T1', sealed: 'v1.x', installed_at: at }).execute()
  await database.write
    .insertInto('alerts')
    .values({ ...cell, source: 'nws', fetched_at: at, expires_at: at, note: null, alerts: '[]' })
    .execute()
  await database.write.insertInto('turns').values({ workspace: '*', what: 'forecast 50.00,8.00', until: at }).execute()
}

async function base(database: Database) {
  const view = await createStore(database).view(demo)
  if (view === null) throw new Error('no demo')
  return view.base
}

async function dump(database: Database): Promise<readonly Rows[]> {
  const all: Rows[] = []
  for await (const rows of allRows(database.read)) all.push(rows)
  return all
}

describe('copying a store', () => {
  test('knows every table of the newest migration, and its key', async () => {
    const database = await onSqlite()
    const made = await sql<{ name: string }>`select name from sqlite_schema where type = 'table' and name <> 'migrations'`.execute(database.read)
    expect([...tableNames].sort()).toEqual(made.rows.map(({ name }) => name).sort())
    for (const table of tableNames) {
      const info = await sql<{ name: string; pk: number }>`select name, pk from pragma_table_info(${table}) where pk > 0 order by pk`.execute(
        database.read
      )
      expect(tableKeys[table]).toEqual(info.rows.map(({ name }) => name))
    }
  })

  test.each([
    ['SQLite', 'PostgreSQL', onSqlite, onPostgres],
    ['PostgreSQL', 'SQLite', onPostgres, onSqlite]
  ] as const)('from %s to %s keeps every row byte for byte, in the same order', async (_from, _to, openFrom, openTo) => {
    const [from, to] = [await openFrom(), await openTo()]
    await full(from)
    const before = await dump(from)
    const count = await copyStore(from, to)

    expect(await dump(to)).toEqual(before)
    expect(before.map(({ table }) => table)).toEqual(tableNames)
    expect(count).toBe(before.reduce((sum, { rows }) => sum + rows.length, 0))
    expect(await dump(from)).toEqual(before)
  })

  test('thousands of entries come over in slices, with chains and states intact', async () => {
    const [from, to] = [await onSqlite(), await onPostgres()]
    const store = createStore(from)
    for (let n = 0; n < 12; n += 1) {
      const drafts = Array.from({ length: 100 }, (_, index) => draft({ data: { airC: (index % 40) - 5 } }))
      await store.append(demo, at + n, null, async () => batch({ drafts, reply: null }))
    }
    await copyStore(from, to)

    expect(await dump(to)).toEqual(await dump(from))
    const [here, there] = [await verifySite(store, demo, []), await verifySite(createStore(to), demo, [])]
    expect(there).toEqual(here)
    expect(there?.entries).toBe(1200)
  })

  test('a store with anything in it is not filled, and stays as it was', async () => {
    const [from, to] = [await onSqlite(), await onSqlite()]
    await full(from)
    await createStore(to).savePerson('local', 'U9', { lang: 'es' })
    const before = await dump(to)

    await expect(copyStore(from, to)).rejects.toThrow(/not empty/)
    expect(await dump(to)).toEqual(before)
  })

  test('nobody writes to the file while it is copied', async () => {
    const from = await onSqlite('held')
    const beside = await openSqlite(join(folder(), 'held'), { server: false, busyMs: 30 })
    opened.push(beside)
    const to = await onPostgres()
    const writing = await to.read.transaction().execute(async (trx) => {
      // The copy has to wait for this table, and holds the file meanwhile.
      await sql`lock table hours in share mode`.execute(trx)
      const copying = copyStore(from, to)
      await new Promise((wait) => setTimeout(wait, 100))
      const written = await createStore(beside)
        .append(demo, at, null, async () => batch({ drafts: [draft()], reply: 1 }))
        .catch((error: unknown) => error)
      return { copying, written }
    })
    await writing.copying
    expect(writing.written).toBeInstanceOf(StoreError)
    expect(await createStore(to).entriesCount(demo)).toBe(0)
  })
})

describe('a backup', () => {
  test('of either database restores into either, byte for byte; the same store gives the same lines', async () => {
    const [from, other, last] = [await onSqlite(), await onPostgres(), await onSqlite()]
    await full(from)
    const files = [join(folder(), 'one.gz'), join(folder(), 'two.gz')] as const
    const count = await writeBackup(from, files[0])
    expect(await readBackup(other, files[0])).toBe(count)
    expect(await writeBackup(other, files[1])).toBe(count)
    expect(await readBackup(last, files[1])).toBe(count)

    expect(await dump(last)).toEqual(await dump(from))
    expect(gunzipSync(readFileSync(files[1]))).toEqual(gunzipSync(readFileSync(files[0])))
    expect(statSync(files[0]).mode & 0o777).toBe(0o600)
    expect(existsSync(`${files[0]}.part`)).toBe(false)
  })

  test('says how it is made, in plain lines that another program can check', async () => {
    const from = await onSqlite()
    await full(from)
    const file = join(folder(), 'plain.gz')
    await writeBackup(from, file)
    const lines = gunzipSync(readFileSync(file)).toString('utf8').split('\n')
    const end = JSON.parse(lines.at(-2) ?? '') as { sha256: string }
    expect(JSON.parse(lines[0] ?? '')).toEqual({ seamhand: 'backup', v: 1, migrations: migrations.length })
    expect(
      createHash('sha256')
        .update(`${lines.slice(0, -2).join('\n')}\n`)
        .digest('hex')
    ).toBe(end.sha256)
  })

  test('of a store that goes on is one moment of it', async () => {
    const [from, to] = [await onPostgres(), await onSqlite()]
    const store = createStore(from)
    let stop = false
    const writing = (async () => {
      for (let n = 0; !stop; n += 1) await store.append(demo, at + n, null, async () => batch({ drafts: [draft()], reply: n }))
    })()
    const file = join(folder(), 'busy.gz')
    await writeBackup(from, file)
    stop = true
    await writing
    await readBackup(to, file)
    expect(await createStore(to).snapshot(demo, async ({ view, rows }) => (await rows(0, 10_000)).length === view.head.seq)).toBe(true)
  })

  test('goes into a new file only, and none is left where it fails', async () => {
    const from = await onSqlite()
    const file = join(folder(), 'there.gz')
    writeFileSync(file, 'mine')
    await expect(writeBackup(from, file)).rejects.toThrow(/there already/)
    expect(readFileSync(file, 'utf8')).toBe('mine')
    await expect(writeBackup(from, join(folder(), 'no', 'such', 'folder.gz'))).rejects.toThrow(StoreError)
    // A device that is always full, as on Linux: https://man7.org/linux/man-pages/man4/full.4.html
    await expect(writeBackup(from, '/dev/full/x.gz')).rejects.toThrow(StoreError)
  })

  test('that is damaged anywhere, cut short, newer or something else leaves an empty store empty', async () => {
    const from = await onSqlite()
    await full(from)
    const file = join(folder(), 'good.gz')
    await writeBackup(from, file)
    const plain = gunzipSync(readFileSync(file)).toString('utf8')
    const lines = plain.trimEnd().split('\n')
    const bad: readonly (readonly [string, Buffer, RegExp])[] = [
      ['cut gzip', readFileSync(file).subarray(0, -40), /damaged/],
      ['no gzip', Buffer.from(plain), /damaged/],
      ['no end', gzipSync(`${lines.slice(0, -1).join('\n')}\n`), /damaged/],
      ['a row less', gzipSync(`${lines.filter((_, index) => index !== 2).join('\n')}\n`), /damaged/],
      ['one letter', gzipSync(plain.replace('two', 'twp')), /damaged/],
      ['something after', gzipSync(`${plain}more`), /damaged/],
      ['newer', gzipSync(plain.replace(`"migrations":${migrations.length}`, '"migrations":99')), /newer Seamhand/],
      ['something else', gzipSync('{"a":1}\n'), /no backup/],
      ['empty', gzipSync(''), /no backup/]
    ]
    for (const [name, bytes, why] of bad) {
      const path = join(folder(), `${name}.gz`)
      writeFileSync(path, bytes)
      const to = await onSqlite()
      const before = await dump(to)
      await expect(readBackup(to, path), name).rejects.toThrow(why)
      expect(await dump(to), name).toEqual(before)
    }
    await expect(readBackup(await onSqlite(), join(folder(), 'missing.gz'))).rejects.toThrow(/no such file/)
  })

  test('of an earlier version, with a table less, restores too', async () => {
    const [from, to] = [await onSqlite(), await onPostgres()]
    await full(from)
    const file = join(folder(), 'now.gz')
    await writeBackup(from, file)
    const lines = gunzipSync(readFileSync(file)).toString('utf8').trimEnd().split('\n')
    const kept = lines.slice(0, -1).filter((line) => !line.includes('"table":"installations"'))
    const old = `${[kept[0]?.replace(/"migrations":\d+/, '"migrations":1'), ...kept.slice(1)].join('\n')}\n`
    const rows = kept.slice(1).reduce((sum, line) => sum + (JSON.parse(line) as Rows).rows.length, 0)
    const path = join(folder(), 'old.gz')
    writeFileSync(path, gzipSync(`${old}${JSON.stringify({ rows, sha256: createHash('sha256').update(old).digest('hex') })}\n`))
    expect(await readBackup(to, path)).toBe(rows)
    expect(await dump(to)).toEqual((await dump(from)).filter(({ table }) => table !== 'installations'))
  })
})
