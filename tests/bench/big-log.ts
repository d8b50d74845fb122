import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readSheets } from '../../src/adapters/limits/files.js'
import { chainOn } from '../../src/adapters/store/entries.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { sqliteApi } from '../../src/adapters/store/sqlite-api.js'
import { createStore, type StoreExtras } from '../../src/adapters/store/store.js'
import { sampleWeather } from '../../src/adapters/weather/index.js'
import type { Ports } from '../../src/bot/context.js'
import type { Store } from '../../src/bot/ports.js'
import { respond } from '../../src/bot/respond.js'
import { verifySite } from '../../src/bot/verify.js'
import { toIso } from '../../src/core/instant.js'
import { type Entry, firstPrev } from '../../src/core/log/entry.js'
import { addLast, type Folded, refold } from '../../src/core/log/fold.js'
import { touches } from '../../src/core/log/subjects.js'
import type { BenchResult } from './rules.js'

const key = { workspace: 'local', site: 'demo' }
/** Entries of one day: a busy site; every log ends with the same day. */
const aDay = 1000
/** 2026-05-04T06:00Z, 08:00 in Berlin, the last day of every log. */
const lastDay = Date.UTC(2026, 4, 4, 4) / 1000

type Made = Pick<Entry, 'type' | 'subject' | 'data'>

const conditions = { airC: 15, sheetC: 20, windKmh: 8, cloudPct: null }

/** What is logged at the place of a day: of every kind that moves the state of a welder, a void, a kit, the site. */
function made(place: number, n: number, day: string): Made {
  const own = `day:${day}`
  const nthVoid = Math.floor(n / aDay) * 10 + Math.floor(place / 100) + 1
  const spot = place % 100
  if (spot === 40) return { type: 'void', subject: `void:${nthVoid}`, data: { course: 4, on: 'lap', distanceM: 3, lengthMm: 40, causes: ['cold'] } }
  if (spot === 41) return { type: 'repair', subject: `void:${nthVoid}`, data: {} }
  if (spot === 42) return { type: 'probe', subject: `void:${nthVoid}`, data: { passed: true } }
  if (spot % 10 === 1) return { type: 'statement', subject: own, data: { rainFalling: false, lapDry: true, lapClean: true } }
  if (spot % 10 === 2) return { type: 'laid', subject: own, data: { areaM2: 4, robotM: 2, handM: 0.5, kit: `K${1 + (n % 9)}` } }
  if (spot % 10 === 3) return { type: 'kit', subject: `kit:K${1 + (n % 9)}`, data: { isoC: 24, resinC: 25, mixed: true } }
  if (spot % 10 === 4) {
    const widthMm = 40 + (n % 4)
    const data = { widthsMm: [widthMm], widthMm, peel: 'film', passed: true, cause: null, minWidthMm: 38, conditions }
    return { type: 'coupon', subject: n % 3 === 0 ? 'welder:hand' : 'welder:robot', data }
  }
  if (spot % 10 === 5) return { type: 'decision', subject: own, data: { activity: 'weld', outcome: 'go', findings: [], note: 'x'.repeat(600) } }
  return { type: 'reading', subject: own, data: { airC: 14 + (n % 3), rhPct: 60, windKmh: 8 + (n % 4), sheetC: 20 } }
}

/** Fills the store in a folder with so many entries: the chain as an append makes it, the states as folded, all in few large transactions. */
async function fill(folder: string, count: number): Promise<void> {
  const database = (await sqliteApi())(join(folder, 'seamhand.db'))
  database.exec('pragma synchronous = off')
  const entry = database.prepare('insert into entries values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)')
  const touch = database.prepare('insert into touches values (?, ?, ?, ?)')
  const states = new Map<string, Folded>()
  let head = { seq: 0, hash: firstPrev }
  for (let from = 0; from < count; from += aDay) {
    const midnight = lastDay - (Math.ceil(count / aDay) - 1 - from / aDay) * 86_400
    const day = toIso(midnight).slice(0, 10)
    database.exec('begin')
    for (let place = 0; place < Math.min(aDay, count - from); place += 1) {
      const at = toIso(midnight + place * 10)
      const bare = { ...made(place, from + place, day), at, author: 'U7', via: 'slack' as const }
      const draft = { ...bare, day, touches: touches(bare, day) }
      const [kept] = chainOn(key, head, midnight + place * 10, [draft])
      if (kept === undefined) throw new Error('nothing was chained')
      const { seq } = kept.entry
      head = { seq, hash: kept.hash }
      const second = midnight + place * 10
      entry.run(key.workspace, key.site, seq, kept.hash, kept.canonical, second, second, 'U7', bare.type, bare.subject, seq, day)
      for (const subject of draft.touches) {
        touch.run(key.workspace, key.site, subject, seq)
        const folded = addLast(subject, states.get(subject) ?? null, kept.entry) ?? refold(subject, [kept.entry])
        if (folded !== null) states.set(subject, folded)
      }
    }
    database.exec('commit')
  }
  database.exec('begin')
  const state = database.prepare('insert into states values (?, ?, ?, ?, ?)')
  for (const [subject, folded] of states) state.run(key.workspace, key.site, subject, JSON.stringify(folded), folded.lastSeq)
  database.prepare('update sites set seq = ?, hash = ? where workspace = ? and site = ?').run(head.seq, head.hash, key.workspace, key.site)
  database.exec('commit')
  database.exec('pragma wal_checkpoint(truncate)')
  database.close()
}

interface Site {
  readonly ports: Ports
  readonly store: Store & StoreExtras
  readonly close: () => Promise<void>
}

async function siteWith(count: number): Promise<Site> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  await createStore(await openSqlite(folder, { server: false })).close()
  await fill(folder, count)
  const store = createStore(await openSqlite(folder, { server: true }))
  const report = (error: unknown): never => {
    throw error
  }
  const draw = () => Promise.reject(new Error('nothing is drawn here'))
  const ports: Ports = { store, weather: sampleWeather(), sheets: readSheets(null), draw, lang: 'en', units: 'metric', report }
  async function close(): Promise<void> {
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
  return { ports, store, close }
}

/** Milliseconds from the words to the reply, logged and flushed. */
async function ask({ ports }: Site, text: string, n: number): Promise<number> {
  const start = performance.now()
  const { reply } = await respond(
    {
      ...{ text, at: lastDay + 11_000 + n, workspace: 'local', site: 'demo', channel: null, user: 'U7', role: 'supervisor' },
      ...{ via: 'slack', lang: null, units: null, log: true, claim: `D${text} ${n}` }
    },
    ports
  )
  const took = performance.now() - start
  if (!reply.ok) throw new Error(`${text}: ${reply.text}`)
  return took
}

const questions: readonly (readonly [name: string, text: (n: number) => string])[] = [
  ['/weld, all welders', () => 'weld'],
  ['/weld, a coupon', (n) => `weld robot ${40 + (n % 4)} mm film`],
  ['/probe, a void', () => 'probe course 4 end 3.2 m 40 mm'],
  ['/spray, readings', (n) => `spray air ${14 + (n % 3)} deck 20 rh 60 wind 8`]
]

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
}

/**
 * The same questions to two stores in turn, one with 1,000 entries in its log, one with `count` (1,000,000): medians over medians. SQLite,
 * WAL, synchronous=FULL, one question at a time, invented week as weather, every answer logged.
 */
export async function benchBigLog(count = Number(process.env.BENCH_ENTRIES ?? 1_000_000), rounds = 60): Promise<readonly BenchResult[]> {
  const small = await siteWith(aDay)
  const verdict = await verifySite(small.store, key, [])
  if (verdict === null || verdict.firstBad !== null) throw new Error(`the log that was built is not one: ${JSON.stringify(verdict?.firstBad)}`)
  const big = await siteWith(count)
  const rows: BenchResult[] = []
  try {
    let n = 0
    for (const [name, text] of questions) {
      const took = { small: [] as number[], big: [] as number[] }
      for (let round = 0; round < rounds + 5; round += 1) {
        n += 1
        const [one, other] = [await ask(small, text(n), n), await ask(big, text(n), n)]
        if (round < 5) continue
        took.small.push(one)
        took.big.push(other)
      }
      const value = median(took.big) / median(took.small)
      const peer = `the same with 1,000 (${median(took.small).toFixed(1)} ms), SQLite, synchronous=FULL, one at a time`
      rows.push({ name: `${name}: ${count.toLocaleString('en')} entries in the log, median`, peer, value, bar: 1.2, ok: value <= 1.2 })
    }
  } finally {
    await small.close()
    await big.close()
  }
  return rows
}
