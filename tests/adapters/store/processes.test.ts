import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { RawRow } from '../../../src/adapters/store/entries.js'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { StoreError } from '../../../src/bot/ports.js'
import type { ChainVerdict } from '../../../src/core/log/chain.js'
import { verifyEntries } from '../../../src/core/log/chain.js'
import { temporaryFolder } from '../../support/databases.js'
import type { Ran } from './children/run.js'
import { storeChildren } from './children/run.js'
import { demo } from './drafts.js'

const folder = temporaryFolder()
const children = storeChildren()

interface Found {
  readonly rows: readonly RawRow[]
  readonly verdict: ChainVerdict
  readonly state: unknown
}

async function look(at: string): Promise<Found> {
  const store = createStore(await openSqlite(at, { server: false }))
  const view = await store.view(demo)
  const rows = await store.exportRows(demo, 0, 1_000_000)
  const state = (await view?.state('site'))?.state ?? 0
  await store.close()
  return { rows, verdict: verifyEntries(demo, rows, view?.head ?? { seq: -1, hash: '' }, []), state }
}

function acknowledged({ out }: Ran): readonly string[] {
  return out.split('\n').slice(0, -1)
}

test('five processes that start together on a new folder write one chain', { timeout: 60_000 }, async () => {
  const at = join(folder(), 'together')
  const ran = await Promise.all(['a', 'b', 'c', 'd', 'e'].map((name) => children.start('append', at, name, '40').ended))
  expect(ran.map(({ code, err }) => [code, err])).toEqual(ran.map(() => [0, '']))
  const { rows, verdict, state } = await look(at)
  expect(verdict).toMatchObject({ entries: 200, firstBad: null })
  expect(state).toBe(200)
  expect(new Set(ran.flatMap(acknowledged))).toEqual(new Set(rows.map((row) => `${row.seq} ${row.hash}`)))
})

test('killed five times while it writes, it loses nothing it acknowledged', { timeout: 60_000 }, async () => {
  const at = join(folder(), 'killed')
  const told: string[] = []
  for (let kill = 0; kill < 5; kill += 1) {
    const child = children.start('append', at, `run${kill}`, '1000000')
    await child.lines(20 + 17 * kill)
    child.process.kill('SIGKILL')
    const ran = await child.ended
    expect(ran).toMatchObject({ code: null, err: '' })
    told.push(...acknowledged(ran))
    const { rows, verdict, state } = await look(at)
    expect(verdict.firstBad).toBeNull()
    expect(state).toBe(rows.length)
    const kept = new Set(rows.map((row) => `${row.seq} ${row.hash}`))
    expect(told.filter((line) => !kept.has(line))).toEqual([])
  }
  expect(told.length).toBeGreaterThanOrEqual(5 * 20)
})

test('a second server is refused; others may write beside the first; its lock dies with it', { timeout: 60_000 }, async () => {
  const at = join(folder(), 'served')
  const server = children.start('serve', at)
  await server.lines(1)
  await expect(openSqlite(at, { server: true })).rejects.toThrow(`another Seamhand server uses ${at}`)
  await expect(openSqlite(at, { server: true })).rejects.toThrow(StoreError)
  const second = await children.start('serve', at).ended
  expect(second.code).toBe(1)
  expect(second.err).toContain('another Seamhand server uses')
  expect(await children.start('append', at, 'beside', '3').ended).toMatchObject({ code: 0, err: '' })
  server.process.kill('SIGKILL')
  await server.ended
  const heir = await openSqlite(at, { server: true })
  await expect(openSqlite(at, { server: true })).rejects.toThrow('another Seamhand server uses')
  await heir.close()
  const next = await openSqlite(at, { server: true })
  await next.close()
  expect((await look(at)).verdict).toMatchObject({ entries: 3, firstBad: null })
})
