import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readSheets } from '../../src/adapters/limits/files.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { createStore } from '../../src/adapters/store/store.js'
import { sampleWeather } from '../../src/adapters/weather/index.js'
import { handle } from '../../src/bot/handle.js'
import { exported } from '../../src/bot/papers/record/export.js'
import { draw } from '../../src/wiring/papers.js'
import { iso } from '../support/instant.js'
import type { BenchResult } from './rules.js'
import { median } from './times.js'

const demo = { workspace: 'local', site: 'demo' }
const morning = iso('2026-05-04T06:00:00Z')
const facts = 'air 19 deck 20 rh 50 wind 10 gust 15 rain 5 % no thunder dry clean'

/** What a crew says on a working day: every half-hour of ten, with kits, coupons, sheets laid and voids. */
function saidAt(n: number): readonly string[] {
  const now = [`spray ${facts}`, `laid 60 m2 course ${n + 1} kit K${n % 4} robot 30 m hand 4 m`]
  if (n % 4 === 0) return ['weld robot 41 mm film', `kit K${n % 4} iso 25 resin 24 mixed exp 2099-01-01`, ...now]
  return n % 5 === 0 ? [...now, `probe course ${n} end 3.2 m 40 mm`] : now
}

/** The day record of a full day as PDF, its pictures drawn with it: from the log to the bytes. */
export async function benchRecord(runs = 7): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  const store = createStore(await openSqlite(folder, { server: true }))
  const report = (error: unknown) => {
    throw error
  }
  const sheets = readSheets(null)
  const ports = { store, weather: sampleWeather(), sheets, draw, lang: 'en', units: 'metric', report } as const
  const asker = { ...demo, channel: null, user: 'U1', role: 'supervisor', via: 'ask', lang: null, units: null, log: true, claim: null } as const
  const day = async (): Promise<number> => {
    const start = performance.now()
    const view = await store.view(demo)
    const paper = view === null ? null : await exported({ view, kept: store, sheets, now: morning + 12 * 3600, lang: null }, 'pdf', ['2026-05-04'])
    if (paper === null || (await draw(paper)).bytes.length < 10_000) throw new Error('no record')
    return performance.now() - start
  }
  try {
    for (let n = 0; n < 20; n += 1) for (const text of saidAt(n)) await handle({ ...asker, text, at: morning + n * 1800 }, ports)
    await day()
    const took: number[] = []
    for (let run = 0; run < runs; run += 1) took.push(await day())
    const value = median(took)
    const peer = 'the bar alone; 20 half-hours of a crew on the invented week, pictures drawn with it; SQLite; one at a time on one thread'
    return { name: 'day record, PDF', peer, value, bar: 500, unit: 'ms', ok: value <= 500 }
  } finally {
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
