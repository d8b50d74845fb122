import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BenchResult } from './rules.js'
import { median } from './times.js'

const main = new URL('../../dist/main.js', import.meta.url).pathname
/** Linux tells it by the process; elsewhere it is not measured. */
const idleMs = 5000

interface Started {
  readonly answerMs: number
  readonly idleMiB: number
}

/** `node dist/main.js serve` on a new folder, until the local room shows the answer to `spray`; then left alone for 5 s. */
async function startOnce(): Promise<Started> {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-bench-'))
  const start = performance.now()
  const child = spawn(process.execPath, [main, 'serve'], {
    env: { PATH: process.env.PATH ?? '', PORT: '0', SEAMHAND_DATA: folder, SEAMHAND_WEATHER: 'sample', LOG_LEVEL: 'silent' },
    stdio: ['ignore', 'pipe', 'inherit']
  })
  try {
    await firstAnswer(await ready(child))
    const answerMs = performance.now() - start
    await pause(idleMs)
    return { answerMs, idleMiB: residentMiB(child.pid as number) }
  } finally {
    child.kill('SIGTERM')
    await new Promise((resolve) => child.once('exit', resolve))
    rmSync(folder, { recursive: true, force: true })
  }
}

function ready(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('exit', () => reject(new Error('it ended before it was ready')))
    let printed = ''
    child.stdout?.on('data', (part: Buffer) => {
      printed += part.toString('utf8')
      const found = /^ready (\S+)$/m.exec(printed)
      if (found !== null) resolve(found[1] as string)
    })
  })
}

async function firstAnswer(base: string): Promise<void> {
  const page = await (await fetch(base)).text()
  const key = /name="room-key" content="([^"]+)"/.exec(page)?.[1] ?? ''
  const headers = { 'x-room-key': key, 'content-type': 'application/json' }
  const body = JSON.stringify({ site: 'demo', user: 'supervisor', text: '/spray air 20 deck 20' })
  const said = await fetch(`${base}/room/say`, { method: 'POST', headers, body })
  if (said.status !== 202) throw new Error(`room: ${said.status} ${await said.text()}`)
  const { ts } = (await said.json()) as { ts: string }
  for (let tries = 0; tries < 1000; tries += 1) {
    const shown = await (await fetch(`${base}/room/messages?site=demo&after=${ts}`, { headers })).text()
    if (shown.includes('"user":"seamhand"')) return
    await pause(5)
  }
  throw new Error('no answer')
}

function residentMiB(pid: number): number {
  return Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? Number.NaN) / 1024
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms))
}

/** Start to the first answer of a decision, and memory when idle. */
export async function benchStart(runs = 3): Promise<readonly BenchResult[]> {
  const all: Started[] = []
  for (let run = 0; run < runs; run += 1) all.push(await startOnce())
  const [answerMs, idleMiB] = [median(all.map((each) => each.answerMs)), median(all.map((each) => each.idleMiB))]
  const peer = 'the bar alone; a process of its own on a new folder (SQLite, WAL, synchronous=FULL), local room, invented week'
  return [
    { name: 'start to first answer', peer, value: answerMs / 1000, bar: 1.5, unit: 's', ok: answerMs <= 1500 },
    { name: 'resident memory, 5 s after the answer', peer, value: idleMiB, bar: 150, unit: 'MiB', ok: idleMiB <= 150 }
  ]
}
