import { cpus, loadavg } from 'node:os'
import { it } from 'vitest'
import { temporaryPostgres } from '../support/databases.js'
import { benchAppend } from './append.js'
import { benchBigLog } from './big-log.js'
import { benchMany } from './many.js'
import { benchMorning } from './morning.js'
import { benchPicture } from './picture.js'
import { benchRecord } from './record.js'
import { type BenchResult, benchRules } from './rules.js'
import { benchSheets } from './sheets.js'
import { benchSimulation } from './simulation.js'
import { benchSprayHttp } from './spray-http.js'
import { benchStart } from './start.js'

const urlOf = temporaryPostgres()

/** Each measured beside what its row names, medians of several runs. `BENCH=name` runs those whose name holds it. */
const benches: Readonly<Record<string, () => Promise<BenchResult | readonly BenchResult[]> | BenchResult | readonly BenchResult[]>> = {
  rules: benchRules,
  append: benchAppend,
  spray: benchSprayHttp,
  log: benchBigLog,
  simulation: benchSimulation,
  picture: benchPicture,
  record: benchRecord,
  start: benchStart,
  morning: benchMorning,
  sheets: benchSheets,
  many: () => benchMany(urlOf)
}

it('speed, against named peers and the bars', async () => {
  const wanted = Object.entries(benches).filter(([name]) => name.includes(process.env.BENCH ?? ''))
  const rows: BenchResult[] = []
  for (const [, bench] of wanted) rows.push(...[await bench()].flat())
  process.stdout.write(`\n${machine()}\n\n| | what | value | bar | beside what |\n|---|---|---|---|---|\n`)
  for (const row of rows) process.stdout.write(`${line(row)}\n`)
})

/** How busy the machine was counts as much as what it is. */
function machine(): string {
  const [cpu] = cpus()
  const date = new Date().toISOString().slice(0, 10)
  return `${date} · Node ${process.version} · ${cpus().length} × ${cpu?.model ?? 'unknown'} · load ${loadavg()[0]?.toFixed(1)}`
}

function line({ name, peer, value, bar, ok, unit = '×' }: BenchResult): string {
  const [verdict, limit] = Number.isFinite(bar) ? [ok ? 'holds' : 'MISSED', String(bar)] : ['–', '–']
  return `| ${verdict} | ${name} | ${value.toFixed(2)} ${unit} | ${limit} | ${peer} |`
}
