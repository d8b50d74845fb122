import { existsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { migrations } from '../../../src/adapters/store/migrations/index.js'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { temporaryPostgres } from '../../support/databases.js'
import { fullSpray } from '../../support/seamhand.js'
import { askJson, folders, seamhand } from './run.js'

const folder = folders()
const urlOf = temporaryPostgres()
const at = ['--at', '2026-05-04T10:00:00Z', '--weather', 'none'] as const

async function worked(): Promise<string> {
  const data = folder()
  await askJson(['--data', data, ...at, fullSpray])
  await askJson(['--data', data, ...at, 'weld robot 41 film'])
  return data
}

async function lines(env: Readonly<Record<string, string>>, name: string): Promise<string> {
  const out = join(folder(), name)
  await seamhand(['export', '--site', 'demo', '--out', out], { env })
  return (await import('node:fs')).readFileSync(out, 'utf8')
}

async function people(data: string, set: Readonly<Record<string, 'crew' | 'supervisor'>>): Promise<void> {
  const store = createStore(await openSqlite(data, { server: false }))
  for (const [id, role] of Object.entries(set)) await store.savePerson('local', id, { role, name: `Name of ${id}` })
  await store.close()
}

describe('seamhand migrate', () => {
  it('makes a new store, and says so the second time', async () => {
    const env = { SEAMHAND_DATA: folder() }
    const after = migrations.length
    expect(JSON.parse((await seamhand(['migrate', '--json'], { env })).out)).toEqual({ database: 'SQLite', before: 0, after })
    expect((await seamhand(['migrate'], { env })).out).toBe(`SQLite: at migration ${after} already\n`)
    expect((await seamhand(['migrate'], { env: { DATABASE_URL: await urlOf('fresh') } })).out).toBe(`PostgreSQL: migrated from 0 to ${after}\n`)
  })
})

describe('seamhand move', () => {
  it('brings every chain over byte for byte, verified, and the answers stay the same', async () => {
    const data = await worked()
    const url = await urlOf('moved')
    const { code, out } = await seamhand(['move', '--to', url, '--data', data])
    const [here, there] = [{ SEAMHAND_DATA: data }, { DATABASE_URL: url }]

    expect({ code, out }).toMatchObject({ code: 0, out: expect.stringMatching(/rows moved; 1 chains verified, 5 entries, all intact/) })
    expect(await lines(there, 'there')).toBe(await lines(here, 'here'))
    const ask = ['ask', '--json', '--no-log', ...at, 'spray']
    expect((await seamhand(ask, { env: there })).out).toBe((await seamhand(ask, { env: here })).out)
    expect((await seamhand(['replay', 'demo-3'], { env: there })).code).toBe((await seamhand(['replay', 'demo-3'], { env: here })).code)
    await expect(seamhand(['move', '--to', url, '--data', data])).rejects.toThrow(/not empty/)
  })

  it('moves a damaged chain as it is, and says where it is damaged', async () => {
    const data = await worked()
    const database = await openSqlite(data, { server: false })
    await database.write.deleteFrom('entries').where('seq', '=', 2).execute()
    await database.close()
    expect(await seamhand(['move', '--to', await urlOf('damaged'), '--data', data])).toMatchObject({
      code: 1,
      out: expect.stringContaining('NOT intact: local/demo at entry 2 (seq)')
    })
  })

  it('refuses what is no folder with a store, no address, a folder that a server uses', async () => {
    const data = await worked()
    const nowhere = join(folder(), 'nowhere')
    await expect(seamhand(['move', '--to', await urlOf('x'), '--data', nowhere])).rejects.toThrow(/no store in/)
    expect(existsSync(nowhere)).toBe(false)
    expect((await seamhand(['move', '--data', data])).code).toBe(2)
    expect((await seamhand(['move', '--to', 'mysql://x', '--data', data])).code).toBe(2)
    const server = await openSqlite(data, { server: true })
    await expect(seamhand(['move', '--to', await urlOf('x'), '--data', data])).rejects.toThrow(/another Seamhand server/)
    await server.close()
  })
})

describe('seamhand backup and restore', () => {
  it('brings a store back, verified, from one database into the other', async () => {
    const data = await worked()
    const file = join(folder(), 'store.gz')
    const env = { DATABASE_URL: await urlOf('restored') }
    expect(await seamhand(['backup', file, '--data', data])).toMatchObject({ code: 0, out: expect.stringMatching(/^\d+ rows in /) })
    expect(await seamhand(['restore', file], { env })).toMatchObject({ code: 0, out: expect.stringContaining('5 entries, all intact') })
    expect(await lines(env, 'there')).toBe(await lines({ SEAMHAND_DATA: data }, 'here'))
    await expect(seamhand(['restore', file, '--data', data])).rejects.toThrow(/not empty/)
  })

  it('says what is missing, and what is no backup', async () => {
    const file = join(folder(), 'no.gz')
    writeFileSync(file, 'no')
    expect((await seamhand(['backup'])).code).toBe(2)
    expect((await seamhand(['restore', 'a', 'b'])).code).toBe(2)
    await expect(seamhand(['restore', file, '--data', folder()])).rejects.toThrow(/damaged/)
  })
})

describe('seamhand forget', () => {
  it('takes the name away and leaves every byte of the chain', async () => {
    const data = await worked()
    await people(data, { ask: 'supervisor', U2: 'supervisor' })
    const before = await lines({ SEAMHAND_DATA: data }, 'before')
    expect(await seamhand(['forget', '--person', 'ask', '--data', data])).toMatchObject({ code: 0, out: expect.stringContaining('forgotten') })
    const store = createStore(await openSqlite(data, { server: false }))
    expect(await store.person('local', 'ask')).toEqual({ name: null, lang: null, units: null, role: null, summary: null })
    expect((await store.person('local', 'U2')).role).toBe('supervisor')
    await store.close()
    expect(await lines({ SEAMHAND_DATA: data }, 'after')).toBe(before)
    expect((await seamhand(['verify', '--data', data])).code).toBe(0)
  })

  it('does not leave a workspace without a supervisor, since whoever speaks next would be one', async () => {
    const data = await worked()
    await people(data, { U1: 'supervisor', U2: 'crew' })
    expect(await seamhand(['forget', '--person', 'U1', '--data', data])).toMatchObject({ code: 2, err: expect.stringContaining('only supervisor') })
    expect((await seamhand(['forget', '--person', 'U1', '--successor', 'U1', '--data', data])).code).toBe(2)
    expect((await seamhand(['forget', '--person', 'U1', '--successor', 'U2', '--data', data])).code).toBe(0)
    const store = createStore(await openSqlite(data, { server: false }))
    expect(await store.person('local', 'U2')).toMatchObject({ role: 'supervisor', name: 'Name of U2' })
    await store.close()
  })

  it('says when nothing is kept, and looks at no other workspace', async () => {
    const data = await worked()
    await people(data, { U2: 'crew' })
    expect((await seamhand(['forget', '--data', data])).code).toBe(2)
    expect(await seamhand(['forget', '--person', 'U2', '--workspace', 'T1', '--data', data])).toMatchObject({
      code: 2,
      err: expect.stringContaining('nothing is kept')
    })
  })
})
