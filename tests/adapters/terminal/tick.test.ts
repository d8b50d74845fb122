import { describe, expect, test } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { Stop } from '../../../src/adapters/terminal/io.js'
import { tick } from '../../../src/adapters/terminal/tick.js'
import type { OpenStore, Tools } from '../../../src/adapters/terminal/tools.js'
import { sampleWeather } from '../../../src/adapters/weather/index.js'
import { draw } from '../../../src/wiring/papers.js'
import { temporaryFolder } from '../../support/databases.js'
import { sheet } from '../../support/facts.js'

const folder = temporaryFolder()
const key = 'local/demo/morning/2026-05-04'

async function run(...args: readonly string[]): Promise<{ readonly code: number; readonly out: string }> {
  const said: string[] = []
  let database: Database | null = null
  const tools: Partial<Tools> = {
    terminal: { out: (text) => said.push(text), err: () => undefined, lines: async function* () {}, now: () => 1777865400 },
    defaults: { draw, lang: 'en', units: 'metric', report: () => 'ref' },
    openStore: async () => {
      database = await openSqlite(folder(), { server: false })
      return createStore(database) as OpenStore
    },
    weather: async () => sampleWeather(),
    sheets: () => ({ byId: () => sheet(), ids: ['common-practice'] }),
    posting: (_store, at) => {
      const table = outboxTable(database as unknown as Database)
      return { slots: table, drain: { outbox: table, draw, chat: null, clock: () => at, wait: null, note: () => undefined }, channelOf: () => null }
    }
  }
  const code = await tick(args, tools as Tools)
  return { code, out: said.join('') }
}

describe('seamhand tick', () => {
  test('--json: the five keys of outside contract §13; without a chat queued, not sent; the second time nothing', async () => {
    const first = await run('--at', '2026-05-04T05:31:00+02:00', '--json')
    expect(first.code).toBe(0)
    expect(JSON.parse(first.out)).toEqual({ at: '2026-05-04T03:31:00Z', due: [key], queued: [key], sent: [], skipped: [] })
    const second = await run('--at', '2026-05-04T03:32:00Z', '--json')
    expect(JSON.parse(second.out)).toEqual({ at: '2026-05-04T03:32:00Z', due: [], queued: [], sent: [], skipped: [] })
    const late = await run('--at', '2026-05-04T07:00:00Z', '--json')
    expect(JSON.parse(late.out)).toMatchObject({ skipped: [key] })
  })

  test('in words without --json, now without --at', async () => {
    const { out } = await run()
    expect(out).toBe('2026-05-04T03:30:00Z\ndue: nothing\nqueued: nothing\nsent: nothing\nskipped: nothing\n')
  })

  test('bad options are named, exit 2', async () => {
    for (const args of [['--at', 'yesterday'], ['--at', '2026-05-04T05:31:00'], ['--when', 'x'], ['now']]) {
      const error = await run(...args).catch((thrown: unknown) => thrown)
      expect(error).toBeInstanceOf(Stop)
      expect((error as Stop).code).toBe(2)
    }
  })
})
