import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { sqliteApi } from '../../src/adapters/store/sqlite-api.js'
import { createStore } from '../../src/adapters/store/store.js'
import type { Batch } from '../../src/bot/ports.js'
import type { BenchResult } from './rules.js'

/** Times in milliseconds. */
export interface Times {
  readonly p50Ms: number
  readonly p99Ms: number
}

export interface AppendResult extends BenchResult {
  readonly store: Times
  readonly bare: Times
}

/** Milliseconds at a share of the way through sorted times. */
function at(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}

function timesOf(took: readonly number[]): Times {
  const sorted = [...took].sort((a, b) => a - b)
  return { p50Ms: at(sorted, 0.5), p99Ms: at(sorted, 0.99) }
}

async function time(run: () => unknown): Promise<number> {
  const start = performance.now()
  await run()
  return performance.now() - start
}

function batchOf(n: number): Batch<number> {
  const draft = {
    at: '2026-05-04T06:10:00Z',
    author: 'U7',
    via: 'ask',
    type: 'reading',
    subject: 'site',
    data: { airC: 14 + (n % 7), rhPct: 60, windKmh: 11 },
    day: '2026-05-04',
    touches: ['site']
  } as const
  return { drafts: [draft], moved: [{ subject: 'site', state: { n } }], keepsakes: [], posts: [], reply: n }
}

/** One reading appended: claim, state read, entry, state, reply and head, one flushed commit; one at a time. */
async function storeAppends(folder: string): Promise<{ readonly run: (n: number) => Promise<unknown>; readonly close: () => Promise<void> }> {
  const store = createStore(await openSqlite(folder, { server: true }))
  const demo = { workspace: 'local', site: 'demo' }
  async function run(n: number): Promise<unknown> {
    return store.append(demo, 1_777_875_000 + n, { key: `D${n}` }, async (view) => {
      await view.state('site')
      return batchOf(n)
    })
  }
  return { run, close: () => store.close() }
}

/** The least that is durable: one prepared insert of a text as long as an entry, WAL, synchronous=FULL. */
async function bareInserts(folder: string): Promise<{ readonly run: (n: number) => unknown; readonly close: () => void }> {
  const database = (await sqliteApi())(join(folder, 'bare.db'))
  database.exec('pragma journal_mode = wal')
  database.exec('pragma synchronous = full')
  database.exec('create table entries (seq integer primary key, text text not null) strict')
  const insert = database.prepare('insert into entries (seq, text) values (?, ?)')
  const text = 'x'.repeat(360)
  return { run: (n) => insert.run(n, text), close: () => database.close() }
}

/** The two in turn, so that both meet the same disk. */
export async function benchAppend(count = 2000): Promise<AppendResult> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  const store = await storeAppends(folder)
  const bare = await bareInserts(folder)
  const took = { store: [] as number[], bare: [] as number[] }
  try {
    for (let n = 0; n < count + 200; n += 1) {
      const [one, other] = [await time(() => store.run(n)), await time(() => bare.run(n))]
      if (n < 200) continue
      took.store.push(one)
      took.bare.push(other)
    }
  } finally {
    await store.close()
    bare.close()
    rmSync(folder, { recursive: true, force: true })
  }
  const [ours, theirs] = [timesOf(took.store), timesOf(took.bare)]
  return {
    name: 'append of one reading: times a bare durable insert, median',
    peer: 'node:sqlite API, one prepared insert, WAL, synchronous=FULL, in the same run, one at a time',
    value: ours.p50Ms / theirs.p50Ms,
    // No bar of its own: it is part of the bar of a command over HTTP.
    bar: Number.POSITIVE_INFINITY,
    ok: true,
    store: ours,
    bare: theirs
  }
}
