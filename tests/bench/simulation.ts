import { readSheets } from '../../src/adapters/limits/files.js'
import { sampleForecast } from '../../src/adapters/weather/sample/index.js'
import { type KitSurroundings, timesOfKit } from '../../src/bot/decision/kit-times.js'
import type { Memory } from '../../src/core/gather/memory.js'
import { roofOf } from '../../src/core/gather/roof-of.js'
import { localDate } from '../../src/core/instant.js'
import { moments, quarterS } from '../../src/core/plan/quarters.js'
import { demoSite } from '../../src/core/site.js'
import type { Forecast } from '../../src/core/weather/forecast.js'
import { mergeHours } from '../../src/core/weather/hours.js'
import { iso } from '../support/instant.js'
import { emptyMemory } from '../support/memory.js'
import type { BenchResult } from './rules.js'
import { median } from './times.js'

const now = iso('2026-06-10T03:30:00Z')
const peer = 'the bar alone; invented week, 84 h of it; one site after another on one thread; nothing is stored'
const quarters = Array.from({ length: 192 }, (_, index) => Math.floor(now / quarterS) * quarterS + index * quarterS)

interface Site {
  readonly memory: Memory
  readonly forecast: Forecast
}

/** Each somewhere else, so that nothing of one site helps with another. */
function siteAt(index: number): Site {
  const settings = { ...demoSite, lat: 35 + (index % 97) * 0.25, lon: -5 + (index % 89) * 0.2 }
  const today = sampleForecast(now, settings.zone)
  const hours = mergeHours(today.hours, sampleForecast(now + 86_400, settings.zone).hours).map((hour) => ({
    ...hour,
    airC: hour.airC === null ? null : hour.airC + (index % 7) * 0.3
  }))
  const memory = emptyMemory(settings)
  const read = { value: 18, at: now - 1800, mixedAt: null, seq: 1 }
  return { memory: { ...memory, kit: { ...memory.kit, isoC: read, resinC: read } }, forecast: { ...today, hours } }
}

/** Both surfaces and a kit simulated, every quarter of 48 h judged for spray, lay, weld and people. */
function evaluate({ memory, forecast }: Site, around: Pick<KitSurroundings, 'sheet'>): number {
  const { sheet } = around
  const roof = roofOf(memory, forecast, sheet, now, 49)
  const all = moments(memory, forecast, sheet, localDate(now, memory.settings.zone), now, quarters, roof)
  timesOfKit(memory.kit, { settings: memory.settings, sheet, forecast, boxC: 30, learned: null, now })
  return all.length
}

/** Median, mean and best of some runs over so many sites, in ms: on a busy machine they lie far apart. */
function timed(count: number, runs: number): { readonly median: number; readonly mean: number; readonly best: number } {
  const sheet = readSheets(null).byId('common-practice')
  if (sheet === null) throw new Error('no sheet')
  const sites = Array.from({ length: count }, (_, index) => siteAt(index))
  const took = Array.from({ length: runs }, () => {
    const start = performance.now()
    for (const site of sites) if (evaluate(site, { sheet }) !== quarters.length) throw new Error('not all judged')
    return performance.now() - start
  })
  return { median: median(took), mean: took.reduce((sum, each) => sum + each, 0) / runs, best: Math.min(...took) }
}

/** Sites judged for one figure, however many they are: as much rubbish is then collected for one site as for a hundred. */
const judgedSites = 100

/** ms a site, median of some runs, for so many sites in turn. */
function perSite(counts: readonly number[], runs: number): readonly number[] {
  const took = counts.map((): number[] => [])
  // In turn, since the machine is not as fast at all times.
  for (let run = 0; run < runs; run += 1) {
    for (const [index, count] of counts.entries()) {
      const rounds = judgedSites / count
      took[index]?.push((timed(count, rounds).mean * rounds) / judgedSites)
    }
  }
  return took.map(median)
}

/** 48 h in quarters of an hour × 4 activities for 1, 10 and 100 sites. */
export function benchSimulation(): readonly BenchResult[] {
  // Until all of it is compiled, as it is in a server after its first minutes.
  timed(10, 40)
  const alone = timed(1, 201)
  const [one = 0, ten = 0, hundred = 0] = perSite([1, 10, 100], 7)
  const name = '48 h × 15 min × 4 activities, surfaces and kit simulated'
  return [
    { name: `${name}, one site (best ${alone.best.toFixed(2)} ms)`, peer, value: alone.median, bar: 6, unit: 'ms', ok: alone.median <= 6 },
    {
      name: `${name}: a site of ten, a site of a hundred (${ten.toFixed(2)}, ${hundred.toFixed(2)} ms) against one again and again (${one.toFixed(2)} ms)`,
      peer: 'the same for one site a hundred times, in the same run',
      value: Math.max(ten, hundred) / one,
      bar: 1.25,
      ok: Math.max(ten, hundred) / one <= 1.25
    }
  ]
}
