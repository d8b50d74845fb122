import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import type { SharedClock } from './clock.js'

export interface Fleet {
  /** Addresses of those that answer. */
  up(): readonly string[]
  /** Kills one without a word, and starts it again after a while. */
  kill(index: number): void
  readonly kills: () => number
  /** Ends all as an operator does; their exit codes. */
  stop(): Promise<readonly (number | null)[]>
}

export interface FleetOptions {
  readonly count: number
  readonly clock: SharedClock
  readonly beatMs: number
  readonly downMs: number
  readonly env: Readonly<Record<string, string>>
  /** Where the program is built; `dist` when not given. */
  readonly dist?: string
}

interface One {
  readonly child: ChildProcess
  base: string | null
  readonly ended: Promise<number | null>
}

/** Several instances of the built program, each a process of its own. */
export async function startFleet(options: FleetOptions): Promise<Fleet> {
  const all: One[] = Array.from({ length: options.count }, () => start(options))
  const waking = new Set<Promise<void>>()
  let [kills, over] = [0, false]
  await until(() => all.every(({ base }) => base !== null))
  return {
    up: () => all.flatMap(({ base }) => base ?? []),
    kills: () => kills,
    kill: (index) => {
      const one = all[index]
      if (one === undefined || one.base === null) return
      kills += 1
      one.base = null
      one.child.kill('SIGKILL')
      const again = one.ended.then(async () => {
        await new Promise((wait) => setTimeout(wait, options.downMs))
        if (!over) all[index] = start(options)
      })
      waking.add(again)
      void again.then(() => waking.delete(again))
    },
    stop: async () => {
      await Promise.all(waking)
      over = true
      await until(() => all.every(({ base, child }) => base !== null || child.exitCode !== null))
      for (const { child } of all) child.kill('SIGTERM')
      return Promise.all(all.map(({ ended }) => ended))
    }
  }
}

function start({ clock, beatMs, env, dist = join(import.meta.dirname, '../../../dist') }: FleetOptions): One {
  const child = spawn(process.execPath, [join(import.meta.dirname, 'instance.mjs'), dist], {
    env: {
      PATH: process.env.PATH ?? '',
      TZ: 'UTC',
      PORT: '0',
      HOST: '127.0.0.1',
      LOG_LEVEL: 'error',
      SEAMHAND_WEATHER: 'none',
      CLOCK_FROM: String(clock.from),
      CLOCK_REAL_MS: String(clock.realMs),
      CLOCK_SPEED: String(clock.speed),
      BEAT_MS: String(beatMs),
      ...env
    },
    stdio: ['ignore', 'pipe', process.env.CAMPAIGN_LOG === undefined ? 'ignore' : 'inherit']
  })
  const ended = new Promise<number | null>((resolve) => child.on('exit', (code) => resolve(code)))
  const one: One = { child, base: null, ended }
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    one.base ??= /ready (\S+)/.exec(text)?.[1] ?? null
  })
  child.on('exit', () => {
    one.base = null
  })
  return one
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 3000 && !holds(); tries += 1) await new Promise((wait) => setTimeout(wait, 20))
  if (!holds()) throw new Error('the instances did not start')
}
