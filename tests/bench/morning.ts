import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readSheets } from '../../src/adapters/limits/files.js'
import { openSpeakers } from '../../src/adapters/speakers.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { outboxTable } from '../../src/adapters/store/outbox-table.js'
import { createStore } from '../../src/adapters/store/store.js'
import { sampleForecast } from '../../src/adapters/weather/sample/index.js'
import type { Weather } from '../../src/bot/ports.js'
import { tick } from '../../src/bot/posts/tick.js'
import { firstPrev } from '../../src/core/log/entry.js'
import { demoSite } from '../../src/core/site.js'
import { draw } from '../../src/wiring/papers.js'
import { iso } from '../support/instant.js'
import type { BenchResult } from './rules.js'

/** 05:30 of a Wednesday in Berlin. */
const due = iso('2026-06-10T03:30:00Z')

/** A forecast of its own for every place: what a cache of fetched ones would give. */
function weatherOfPlaces(): Weather {
  const { hours, ...rest } = sampleForecast(due, demoSite.zone)
  return {
    at: async ({ lat }) => ({
      ...rest,
      hours: hours.map((hour) => ({ ...hour, airC: hour.airC === null ? null : Math.round((hour.airC + (lat - 50) / 4) * 10) / 10 }))
    })
  }
}

interface Ran {
  readonly seconds: number
  readonly peakMiB: number
}

/** One tick that is due at `count` sites: each evaluated, its slot claimed and its post queued, a flushed transaction each. */
async function morningOf(count: number): Promise<Ran> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  const database = await openSqlite(folder, { server: true })
  const store = createStore(database)
  try {
    const sites = Array.from({ length: count }, (_, n) => {
      const base = { ...demoSite, lat: 40 + (n % 1000) * 0.02, lon: (n % 997) * 0.01, invented: false }
      return { workspace: 'local', site: `s${n}`, base: JSON.stringify(base), channel: `C${n}`, seq: 0, hash: firstPrev }
    })
    for (let n = 0; n < count; n += 500)
      await database.write
        .insertInto('sites')
        .values(sites.slice(n, n + 500))
        .execute()
    await database.write.deleteFrom('sites').where('site', '=', 'demo').execute()
    let peak = 0
    const watch = setInterval(() => (peak = Math.max(peak, process.memoryUsage.rss())), 50)
    const table = outboxTable(database)
    const start = performance.now()
    const { queued } = await tick(due, {
      store,
      weather: weatherOfPlaces(),
      sheets: readSheets(null),
      slots: table,
      speaker: openSpeakers,
      lang: 'en',
      units: 'metric',
      report: (error) => {
        throw error
      },
      channelOf: (_site, settings) => settings.channel,
      drain: { outbox: table, draw, chat: null, clock: () => due, wait: null, note: () => undefined }
    })
    clearInterval(watch)
    if (queued.length !== count) throw new Error(`${queued.length} of ${count} queued`)
    return { seconds: (performance.now() - start) / 1000, peakMiB: Math.max(peak, process.memoryUsage.rss()) / 1048576 }
  } finally {
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The morning run, and that it takes ten times as long for ten times the sites. */
export async function benchMorning(count = 10_000): Promise<readonly BenchResult[]> {
  await morningOf(100)
  const tenth = await morningOf(count / 10)
  const { seconds, peakMiB } = await morningOf(count)
  const peer = 'the bar alone; a forecast for each site; one process, a thread beside it on two cores; a transaction each (WAL, synchronous=FULL)'
  const growth = seconds / tenth.seconds / 10
  const name = `morning run of ${count} sites, evaluated, written and queued`
  return [
    { name, peer, value: seconds, bar: 60, unit: 's', ok: seconds <= 60 },
    { name: `${name}: memory at its most, the bench itself included`, peer, value: peakMiB, bar: 512, unit: 'MiB', ok: peakMiB <= 512 },
    {
      name: `${name}: time for a site against that of ${count / 10} sites`,
      peer: 'the same with a tenth of the sites, in the same run',
      value: growth,
      bar: 1.25,
      ok: growth <= 1.25
    }
  ]
}
