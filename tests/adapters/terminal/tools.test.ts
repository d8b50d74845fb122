import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { sqliteApi } from '../../../src/adapters/store/sqlite-api.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fullSpray } from '../../support/seamhand.js'
import { askJson, folders, linesOf, program, seamhand } from './run.js'

const folder = folders()
const at = ['--at', '2026-05-04T10:00:00Z', '--weather', 'none'] as const

async function worked(): Promise<string> {
  const data = folder()
  await askJson(['--data', data, ...at, fullSpray])
  await askJson(['--data', data, ...at, 'weld robot 41 film'])
  return data
}

describe('seamhand verify', () => {
  it('exit 0 where all is intact, with the anchor to print', async () => {
    const data = await worked()
    const { code, out } = await seamhand(['verify', '--json', '--data', data])
    const report = JSON.parse(out) as { sites: { head: { seq: number; hash: string } }[] }
    const head = report.sites[0]?.head
    const anchor = `demo:${head?.seq}:${head?.hash}`

    expect(code).toBe(0)
    expect(report).toEqual({
      ok: true,
      sites: [{ site: 'demo', entries: 5, head: { seq: 5, hash: expect.stringMatching(/^[0-9a-f]{64}$/) }, firstBad: null }]
    })
    expect((await seamhand(['verify', '--data', data, '--site', 'demo', '--anchor', anchor])).out).toContain(anchor)
    expect((await seamhand(['verify', '--data', data, '--anchor', anchor])).code).toBe(0)
    expect((await seamhand(['verify', '--data', data, '--anchor', anchor.replace(/.$/, (last) => (last === '0' ? '1' : '0'))])).code).toBe(1)
  })

  it('exit 1 where it is not, and where', async () => {
    const data = await worked()
    const database = (await sqliteApi())(join(data, 'seamhand.db'))
    database.exec('delete from entries where seq = 2')
    database.close()
    const { code, out } = await seamhand(['verify', '--json', '--data', data])

    expect(code).toBe(1)
    expect(JSON.parse(out)).toMatchObject({ ok: false, sites: [{ firstBad: { seq: 2, why: 'seq' } }] })
    expect((await seamhand(['verify', '--data', data])).out).toMatch(/NOT intact at entry 2/)
  })

  it('refuses what is no anchor, no site, no option', async () => {
    const data = folder()

    expect((await seamhand(['verify', '--data', data, '--anchor', 'demo'])).code).toBe(2)
    expect((await seamhand(['verify', '--data', data, '--site', 'nowhere'])).code).toBe(2)
    expect((await seamhand(['verify', '--data', data, '--anchor', `north:1:${'0'.repeat(64)}`])).code).toBe(1)
    expect((await seamhand(['verify', '--frob'])).code).toBe(2)
  })
})

describe('seamhand verify with several workspaces', () => {
  it('holds an anchor against the site of its own workspace', async () => {
    const data = await worked()
    const store = createStore(await openSqlite(data, { server: false }))
    const view = await store.view({ workspace: 'local', site: 'demo' })
    if (view === null) throw new Error('no demo')
    await store.createSite({ workspace: 'T1', site: 'demo' }, view.base)
    await store.close()
    const anchor = `demo:${view.head.seq}:${view.head.hash}`

    expect((await seamhand(['verify', '--data', data])).code).toBe(0)
    expect(await seamhand(['verify', '--data', data, '--anchor', anchor])).toMatchObject({ code: 2, err: expect.stringContaining('--workspace') })
    expect((await seamhand(['verify', '--data', data, '--workspace', 'local', '--anchor', anchor])).code).toBe(0)
    expect((await seamhand(['verify', '--data', data, '--workspace', 'T1', '--anchor', anchor])).code).toBe(1)
  })
})

describe('seamhand replay', () => {
  it('exit 0 the same, with both engines', async () => {
    const data = await worked()
    const { code, out } = await seamhand(['replay', '--json', '--data', data, 'demo-4'])

    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({ id: 'demo-4', same: true, outcome: 'go', engine: expect.any(String), recordedEngine: expect.any(String) })
  })

  it.each([
    ['en', 'demo-4: the same answer, go', 'limits sheet common-practice v1, '],
    ['es', 'demo-4: la misma respuesta, se puede', 'hoja de límites common-practice v1, '],
    ['fr', 'demo-4 : la même réponse, on y va', 'fiche de limites common-practice v1, ']
  ])('shows what can be checked: outcome, when, values with their limits, sheet and engine: %s', async (lang, verdict, sheet) => {
    const data = await worked()
    const { code, out } = await seamhand(['replay', '--data', data, '--lang', lang, 'demo-4'])
    const lines = out
      .replace(/[\u00a0\u202f]/g, ' ')
      .trimEnd()
      .split('\n')
    expect(code).toBe(0)
    expect(lines[0]).toBe(verdict)
    expect(lines[1]).toMatch(/2026 \d\d:\d\d$/)
    expect(lines.filter((line) => /^[✓△?✕] .*\d.*(°C|%|km\/h), .*\d/.test(line)).length).toBeGreaterThan(4)
    expect(lines.find((line) => line.startsWith(sheet))).toMatch(/ [0-9a-f]{64}$/)
    expect(lines.at(-1)).toMatch(/\d+\.\d+\.\d+, .*\d+\.\d+\.\d+$/)
    expect((await seamhand(['replay', '--data', data, '--lang', 'de', 'demo-4'])).code).toBe(2)
  })

  it('exit 1 where the kept sheet is another', async () => {
    const data = await worked()
    const database = (await sqliteApi())(join(data, 'seamhand.db'))
    database.exec(`update keepsakes set body = replace(body, '"min":21', '"min":26')`)
    database.close()
    const { code, out } = await seamhand(['replay', '--data', data, 'demo-4'])

    expect(code).toBe(1)
    expect(out).toMatch(/limits/)
  })

  it('exit 2 where there is none', async () => {
    const data = await worked()

    for (const args of [['demo-1'], ['demo-77'], ['x'], []]) expect((await seamhand(['replay', '--data', data, ...args])).code, args.join()).toBe(2)
  })
})

describe('seamhand export', () => {
  it('writes canonical text and hash, a line each, that anyone can verify', async () => {
    const data = await worked()
    const file = join(data, 'log.jsonl')
    const { code } = await seamhand(['export', '--site', 'demo', '--format', 'jsonl', '--out', file, '--data', data])
    const lines = readFileSync(file, 'utf8').trimEnd().split('\n')

    expect(code).toBe(0)
    expect(lines).toHaveLength(5)
    let prev = '0'.repeat(64)
    for (const line of lines) {
      const text = line.slice('{"entry":'.length, line.lastIndexOf(',"hash":'))
      const { entry, hash } = JSON.parse(line) as { entry: { prev: string }; hash: string }
      expect(createHash('sha256').update(text).digest('hex')).toBe(hash)
      expect(entry.prev).toBe(prev)
      prev = hash
    }
  })

  it('of one day', async () => {
    const data = await worked()
    await askJson(['--data', data, '--at', '2026-05-05T10:00:00Z', '--weather', 'none', 'air 12'])
    const file = join(data, 'day.jsonl')
    await seamhand(['export', '--site', 'demo', '--day', '2026-05-05', '--format', 'jsonl', '--out', file, '--data', data])

    expect(linesOf<{ entry: { seq: number } }>(readFileSync(file, 'utf8')).map(({ entry }) => entry.seq)).toEqual([6, 7])
  })

  it.each([
    ['en', 'Log of demo: 5 entries.', 'Log of demo, 4 May 2026, as a table: ', 'Closeout packet of demo: 1 day.', 'File: ', 'time'],
    [
      'es',
      'Registro de demo: 5 anotaciones.',
      'Registro de demo, 4 may 2026, como tabla: 5 filas.',
      'Expediente de cierre de demo: 1 día.',
      'Archivo: ',
      'hora'
    ],
    [
      'fr',
      'Registre de demo : 5 inscriptions.',
      'Registre de demo, 4 mai 2026, en tableau : ',
      'Dossier de clôture de demo : 1 jour.',
      'Fichier : ',
      'heure'
    ]
  ])('says what it wrote, how much and where, and writes it, in a language: %s', async (lang, log, table, packet, file, column) => {
    const data = await worked()
    const run = async (format: string) => {
      const path = join(data, `demo.${format}`)
      const { out } = await seamhand([
        'export',
        '--data',
        data,
        '--site',
        'demo',
        '--format',
        format,
        '--out',
        path,
        '--lang',
        lang,
        ...(format === 'csv' ? ['--day', '2026-05-04'] : [])
      ])
      const said = out.replace(/[\u00a0\u202f]/g, ' ')
      expect(said.endsWith(` ${file}${path}\n`)).toBe(true)
      return { said, path }
    }
    const asHashed = await run('jsonl')
    expect(asHashed.said).toContain(log)
    const closeout = await run('zip')
    expect(closeout.said).toContain(packet)
    expect(Buffer.from(unzipSync(readFileSync(closeout.path))['demo.jsonl'] ?? []).equals(readFileSync(asHashed.path))).toBe(true)
    const { said, path } = await run('csv')
    expect(said).toContain(table)
    expect(readFileSync(path, 'utf8').split('\n')[0]?.toLowerCase()).toContain(column)
  })

  it('says what is missing or wrong', async () => {
    const data = await worked()
    const run = async (...args: string[]) => (await seamhand(['export', '--data', data, ...args])).code

    expect(await run('--site', 'demo')).toBe(2)
    expect(await run('--site', 'nowhere', '--out', join(data, 'x'))).toBe(2)
    expect(await run('--site', 'demo', '--format', 'docx', '--out', join(data, 'x'))).toBe(2)
    expect(await run('--site', 'demo', '--lang', 'de', '--out', join(data, 'x'))).toBe(2)
    expect(await run('--site', 'demo', '--out', join(data, 'no', 'such', 'folder'))).toBe(1)
  })
})

describe('seamhand formula', () => {
  it('gives name, inputs, result, source and range', async () => {
    // NWS wind chill of 2001, at −10 °C and 30 km/h: −20 °C in Environment Canada's published table.
    const { code, out } = await seamhand(['formula', 'wind-chill', 'airC=-10', 'windKmh=30', '--json'])
    const told = JSON.parse(out) as { result: { windChillC: number } }

    expect(code).toBe(0)
    expect(Object.keys(told)).toEqual(['name', 'inputs', 'result', 'source', 'range'])
    expect(told.result.windChillC).toBeCloseTo(-19.5, 0)
  })

  it('exit 2 outside its range, for an unknown name or input', async () => {
    for (const args of [['air', 'airC=900', 'rhPct=50'], ['frob'], ['air', 'frob=1'], ['air', 'airC'], ['air', 'airC=x', 'rhPct=50']]) {
      expect((await seamhand(['formula', ...args, '--json'])).code, args.join(' ')).toBe(2)
    }
  })

  it('lists them without a name, and answers lines', async () => {
    expect((await seamhand(['formula'])).out).toMatch(/^air: airC rhPct/m)
    const { out } = await seamhand(['formula', '--lines'], { input: '{"name":"lift","inputs":{"kgM2":2.5,"cp":-2}}\nnonsense\n' })
    expect(linesOf<{ ok: boolean }>(out)).toHaveLength(2)
  })
})

describe('seamhand', () => {
  it('names its commands for one it does not know', async () => {
    const { code, err } = await program(['frobnicate'])

    expect(code).toBe(2)
    expect(err).toMatch(/ask.*verify.*replay/)
  })
})
