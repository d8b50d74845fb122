import { cpus } from 'node:os'
import { it } from 'vitest'
import { benchAppend } from './append.js'
import { benchBigLog } from './big-log.js'
import { benchRules } from './rules.js'
import { benchSprayHttp } from './spray-http.js'

/** One measurement: what, beside whom, and whether its bar holds. A value is a ratio of medians in one run. */
interface Measured {
  readonly name: string
  readonly peer: string
  readonly value: number
  readonly bar: number
  readonly ok: boolean
}

it('speed, as ratios against named peers', async () => {
  const rows: Measured[] = [await benchRules(), await benchAppend(), await benchSprayHttp(), await benchBigLog()].flat()
  const [cpu] = cpus()
  process.stdout.write(`\n${new Date().toISOString().slice(0, 10)} · Node ${process.version} · ${cpus().length} × ${cpu?.model ?? 'unknown'}\n`)
  for (const { name, peer, value, bar, ok } of rows) {
    process.stdout.write(`${ok ? 'holds' : 'MISSED'} · ${name}: ${value.toFixed(2)} × ${peer}${Number.isFinite(bar) ? ` (bar ${bar})` : ''}\n`)
  }
})
