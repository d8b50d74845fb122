import { sql } from 'kysely'
import { afterEach, expect, it } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import type { Lang } from '../../../src/bot/answer.js'
import type { Reply } from '../../../src/bot/reply.js'
import { respond } from '../../../src/bot/respond.js'
import { verifySite } from '../../../src/bot/verify.js'
import { draw } from '../../../src/wiring/papers.js'
import { temporaryFolder } from '../../support/databases.js'

const folder = temporaryFolder()
const sheets = readSheets(null)
const demo = { workspace: 'local', site: 'demo' }
let open: Database | null = null
afterEach(() => open?.close())

/** Holds the file to the pages it has, and so many more: SQLite says then what it says of a full disk. Null: as large as it likes. */
async function pages({ write }: Database, more: number | null): Promise<void> {
  const has = await sql<{ page_count: number }>`pragma page_count`.execute(write)
  const most = more === null ? 1_000_000_000 : Number(has.rows[0]?.page_count) + more
  await sql`pragma max_page_count = ${sql.lit(most)}`.execute(write)
}

it('a full disk is said so, loses nothing that was acknowledged, and is over when there is room', async () => {
  const database = await openSqlite(folder(), { server: false })
  open = database
  const store = createStore(database)
  const bugs: unknown[] = []
  let count = 0
  const claimed = () => {
    count += 1
    return `D${count}`
  }
  async function ask(text: string, lang: Lang = 'en', claim = claimed()): Promise<Reply> {
    const report = (error: unknown) => `bug-${bugs.push(error)}`
    const ports = { store, weather: fixedWeather(null), sheets, draw, lang, units: 'metric', report } as const
    const who = { workspace: 'local', site: 'demo', channel: null, user: 'U1', role: 'crew', via: 'slack' } as const
    return (await respond({ ...who, text, at: 1_777_881_600 + count, lang, units: null, log: true, claim }, ports)).reply
  }
  expect((await ask('air 20')).ok).toBe(true)
  await pages(database, 6)
  const acknowledged: string[] = []
  const refused: Reply[] = []
  for (let i = 0; i < 40 && refused.length < 3; i += 1) {
    const reply = await ask(`probe course ${i + 1} 3 m 40 mm`, (['en', 'es', 'fr'] as const)[i % 3])
    if (reply.ok) acknowledged.push(...reply.logged)
    else refused.push(reply)
  }
  expect(refused).toHaveLength(3)
  for (const { error, logged, text } of refused) {
    expect(error).toMatchObject({ code: 'store', message: expect.stringContaining('the disk of the store is full') })
    expect(logged).toEqual([])
    expect(text).not.toMatch(/SQLITE|at .*\.ts/)
  }
  expect(bugs).toEqual([])
  // Reading goes on, and what was acknowledged stands.
  const kept = await store.entries(demo, 0, 1000)
  expect(acknowledged.every((id) => kept.some(({ entry }) => id === `demo-${entry.seq}`))).toBe(true)
  await pages(database, null)
  const again = await ask('probe course 99 3 m 40 mm', 'en', 'again')
  expect(again.ok).toBe(true)
  expect((await ask('probe course 99 3 m 40 mm', 'en', 'again')).logged).toEqual(again.logged)
  const verdict = await verifySite(store, demo, [])
  expect(verdict).toMatchObject({ firstBad: null, entries: kept.length + again.logged.length })
})
