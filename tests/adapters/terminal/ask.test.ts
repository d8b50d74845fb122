import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/bot/reply.js'
import { fullSpray, numbersOf } from '../../support/seamhand.js'
import { askJson, folders, linesOf, program, seamhand, weatherFile } from './run.js'

const folder = folders()
const at = ['--at', '2026-05-04T10:00:00Z', '--weather', 'none'] as const

describe('seamhand ask', () => {
  it('prints the answer and nothing else, exit 0 whatever the outcome', async () => {
    const data = folder()
    const go = await askJson(['--data', data, ...at, fullSpray])
    const night = await askJson(['--data', data, '--at', '2026-05-04T22:00:00Z', '--weather', 'none', 'spray'])
    const text = await program(['ask', '--data', data, ...at, 'kit'])
    const refused = await program(['ask', '--json', '--data', data, ...at, 'frobnicate'])

    expect(go).toMatchObject({ code: 0, err: '', reply: { ok: true, outcome: 'go', decision: 'demo-4' } })
    expect(night).toMatchObject({ code: 0, reply: { outcome: 'no-go' } })
    expect(text).toMatchObject({ code: 0, err: '' })
    expect(refused).toMatchObject({ code: 2, err: '' })
    expect(JSON.parse(refused.out)).toMatchObject({ ok: false, error: { code: 'unknown-command' } })
    expect(text.out).toMatch(/kit K1/)
  })

  it('takes words apart or together', async () => {
    const one = await askJson(['--data', folder(), ...at, 'strip 2 m gap 6'])
    const many = await askJson(['--data', folder(), ...at, 'strip', '2', 'm', 'gap', '6'])

    expect(many.reply).toEqual(one.reply)
    expect(numbersOf(one.reply).lengthMm).toBe(2150)
  })

  it('same store, options and text: the same bytes', async () => {
    const args = ['ask', '--json', ...at, '--weather', 'sample', fullSpray]
    const [a, b] = [await seamhand([...args, '--data', folder()]), await seamhand([...args, '--data', folder()])]

    expect(a.out).toBe(b.out)
    expect(a.out).not.toBe('')
  })

  it('defaults to the demo site, its invented week, user ask as supervisor, English, metric', async () => {
    const { reply } = await askJson(['--data', folder(), '--at', '2026-05-04T10:00:00Z', 'air'])

    expect(reply).toMatchObject({ site: 'demo', lang: 'en', units: 'metric', weather: { source: 'sample', sample: true, stale: false } })
    expect(reply.text).toContain('invented')
  })

  it('takes every option', async () => {
    const data = folder()
    const { reply } = await askJson([
      '--data',
      data,
      ...at,
      '--site',
      'demo',
      '--as',
      'U7',
      '--role',
      'crew',
      '--lang',
      'fr',
      '--units',
      'us',
      '--no-log',
      'air 68'
    ])
    expect(reply).toMatchObject({ ok: true, lang: 'fr', units: 'us', logged: [], decision: null })
    expect(numbersOf(reply).airC).toBe(20)

    expect((await askJson(['--data', data, ...at, '--role', 'crew', 'site units us'])).reply.error?.code).toBe('not-allowed')
    await askJson(['--data', data, ...at, '--as', 'U7', 'me lang es'])
    expect((await askJson(['--data', data, ...at, '--as', 'U7', 'help'])).reply.lang).toBe('es')
    expect((await askJson(['--data', data, ...at, 'help'])).reply.lang).toBe('en')
  })

  it('takes --at with an offset, and dates everything by it', async () => {
    const { reply } = await askJson(['--data', folder(), '--at', '2026-05-04T12:00:00+02:00', '--weather', 'none', 'air 12'])

    expect(reply).toMatchObject({ at: '2026-05-04T10:00:00Z', undoUntil: '2026-05-04T10:10:00Z' })
  })

  it('decides by another limits sheet, and says which', async () => {
    const file = join(folder(), 'ours.yaml')
    writeFileSync(
      file,
      'id: ours\nversion: 3\ntitle: Ours\nunits: metric\nextends: common-practice\nlimits:\n  airSprayC: { min: 21, basis: invented }\n'
    )
    const { reply } = await askJson(['--data', folder(), ...at, '--limits', file, fullSpray])

    expect(reply).toMatchObject({ outcome: 'no-go', binding: 'air-temperature', limits: { id: 'ours', version: 3 } })
  })
})

describe('exit codes', () => {
  it.each([
    [[''], 'empty'],
    [['frobnicate'], 'unknown-command'],
    [['air 900'], 'out-of-range'],
    [['--site', 'nowhere', 'air'], 'no-site'],
    [['--at', '2026-05-04T10:00:00', 'air'], 'bad-option'],
    [['--at', 'yesterday', 'air'], 'bad-option'],
    [['--lang', 'de', 'air'], 'bad-option'],
    [['--units', 'imperial', 'air'], 'bad-option'],
    [['--role', 'boss', 'air'], 'bad-option'],
    [['--frob', 'air'], 'bad-option'],
    [['--issued', 'now', 'air'], 'bad-option']
  ])('2 for %j: %s', async (args, code) => {
    const { reply, code: exit } = await askJson(['--data', folder(), '--weather', 'none', ...args])

    expect(reply.error?.code).toBe(code)
    expect(exit).toBe(2)
  })

  it('1 for what is outside: a clear sentence, as JSON too', async () => {
    const file = join(folder(), 'a-file')
    writeFileSync(file, 'not a database, not a sheet: { [')
    const damaged = folder()
    writeFileSync(join(damaged, 'seamhand.db'), 'this is no database'.repeat(400))
    const cases: readonly (readonly [readonly string[], string, RegExp])[] = [
      [['--weather', '/nonexistent/forecast.json'], 'weather-file', /nonexistent/],
      [['--weather', file], 'weather-file', /JSON/],
      [['--weather', weatherFile('open-meteo_error_429.json')], 'weather-file', /error of the service/],
      [['--limits', '/nonexistent.yaml'], 'config', /nonexistent/],
      [['--limits', file], 'config', /a-file/],
      [['--data', join(file, 'below')], 'store', /a-file/],
      [['--data', damaged], 'store', /damaged|not a database/]
    ]
    for (const [args, code, why] of cases) {
      const data = args[0] === '--data' ? [] : ['--data', folder()]
      const json = await askJson([...data, ...args, 'air 20'])
      expect(json.code, args.join(' ')).toBe(1)
      expect(json.reply).toMatchObject({ ok: false, logged: [], error: { code } })
      expect(json.reply.error?.message).toMatch(why)
      expect(json.err).toBe('')
      const text = await seamhand(['ask', ...data, ...args, 'air 20'])
      expect(text.code).toBe(1)
      expect(text.out).toMatch(why)
    }
  })

  it('1 for bad settings, each named', async () => {
    const { code, err, out } = await program(['ask', '--data', folder(), 'air'], {
      env: { SEAMHAND_LANG: 'de', SEAMHAND_UNITS: 'stone', LOG_LEVEL: 'loud' }
    })

    expect(code).toBe(1)
    for (const name of ['SEAMHAND_LANG', 'SEAMHAND_UNITS', 'LOG_LEVEL']) expect(err + out).toContain(name)
  })
})

describe('what is missing is said with the way to give it', () => {
  it.each([
    ['en', 'Name it: --site NAME.'],
    ['es', 'Nombrarla: --site NOMBRE.'],
    ['fr', 'Le nommer\u00a0: --site NOM.']
  ])('which of two sites, and the setting without which there is no forecast: %s', async (lang, naming) => {
    const data = folder()
    const run = async (...args: string[]) => (await askJson(['--data', data, ...at.slice(0, 2), '--lang', lang, ...args])).reply
    await run('start', 'north', 'at', '51.5,7.5', 'zone', 'Europe/Berlin')

    const unnamed = await run('spray')
    expect(unnamed.error?.code).toBe('no-site')
    expect(unnamed.text.replace(/\u202f/g, '\u00a0')).toContain(naming)
    expect(unnamed.text).toContain('demo, north')

    const live = await run('--site', 'north', 'spray')
    expect(live.weather).toBeNull()
    expect(live.text).toContain('SEAMHAND_CONTACT (README, Settings)')
    // Nobody asked for weather, or it is invented: then nothing is missing.
    expect((await run('--site', 'north', '--weather', 'none', 'spray')).text).not.toContain('SEAMHAND_CONTACT')
    expect((await run('--site', 'demo', 'spray')).text).not.toContain('SEAMHAND_CONTACT')
  })

  it('the key of the only source that was chosen', async () => {
    const env = { SEAMHAND_CONTACT: 'ops@crew.example', SEAMHAND_WEATHER: 'open-meteo' }
    const data = folder()
    await askJson(['--data', data, ...at, 'start north at 51.5,7.5 zone Europe/Berlin'])
    const { reply } = await askJson(['--data', data, ...at.slice(0, 2), '--site', 'north', 'spray'], { env })
    expect(reply.text).toContain('no forecast: set OPEN_METEO_KEY')
  })
})

describe('--weather', () => {
  const ask = (args: readonly string[]) => askJson(['--data', folder(), ...args, 'air'])

  it('none: no weather at all', async () => {
    expect((await ask(['--at', '2026-05-04T10:00:00Z', '--weather', 'none'])).reply.weather).toBeNull()
  })

  it('sample: the invented week, issued at the full hour and marked', async () => {
    const { reply } = await ask(['--at', '2026-05-04T10:40:00Z', '--weather', 'sample'])

    expect(reply.weather).toEqual({ source: 'sample', issuedAt: '2026-05-04T10:00:00Z', stale: false, sample: true })
    expect(numbersOf(reply).airC).not.toBeNull()
  })

  // The times are those of the files: see tests/fixtures/weather/README.md.
  it.each([
    ['metno_complete.json', 'met', '2020-07-20T01:30:57Z'],
    ['metno_compact.json', 'met', '2020-07-20T01:30:57Z'],
    ['nws_gridpoints.json', 'nws', '2024-02-20T15:15:12Z'],
    ['open-meteo_forecast.json', 'open-meteo', '2026-05-04T10:00:00Z']
  ])('%s: known by its shape', async (file, source, issuedAt) => {
    const { reply, code } = await ask(['--at', '2026-05-04T10:00:00Z', '--weather', weatherFile(file)])

    expect(code).toBe(0)
    expect(reply.weather).toMatchObject({ source, issuedAt, sample: false })
  })

  it('a file without a time of its own is issued at --issued, else at --at', async () => {
    const file = ['--weather', weatherFile('open-meteo_forecast.json')]
    const plain = await ask(['--at', '2026-05-04T10:00:00Z', ...file])
    const issued = await ask(['--at', '2026-05-04T10:00:00Z', '--issued', '2026-05-04T06:59:59Z', ...file])

    expect(plain.reply.weather).toMatchObject({ issuedAt: '2026-05-04T10:00:00Z', stale: false })
    expect(issued.reply.weather).toMatchObject({ issuedAt: '2026-05-04T06:59:59Z', stale: true })
  })

  it('a file with a time of its own keeps it', async () => {
    const { reply } = await ask(['--at', '2026-05-04T10:00:00Z', '--issued', '2026-05-04T09:00:00Z', '--weather', weatherFile('metno_complete.json')])

    expect(reply.weather).toMatchObject({ stale: true })
    expect(reply.weather?.issuedAt).toMatch(/^2020-07-20T/)
    expect(numbersOf(reply).airC).toBeNull()
  })
})

describe('--lines', () => {
  it('answers every line in order, the bad ones too', async () => {
    const lines = [
      JSON.stringify({ text: 'air 12', as: 'U7' }),
      'not json',
      '',
      JSON.stringify({ text: 'undo', as: 'U7' }),
      JSON.stringify({ text: 'air', frob: 1 }),
      JSON.stringify({ tex: 'air' }),
      JSON.stringify({ text: 'air', at: 'noon' }),
      JSON.stringify({ text: 'air 53.6', units: 'us', lang: 'es', at: '2026-05-04T11:00:00Z', weather: 'sample', log: false }),
      JSON.stringify({ text: 'site morning 05:45', role: 'crew' }),
      JSON.stringify({ text: 'air', weather: '/nonexistent' }),
      'null',
      '[]',
      JSON.stringify({ text: 'strip 2 m gap 6' })
    ]
    const { out, code, err } = await seamhand(['ask', '--json', '--lines', '--data', folder(), ...at], { input: lines.join('\r\n') })
    const replies = linesOf<Reply>(out)

    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(replies.map(({ error, command }) => error?.code ?? command)).toEqual([
      'air',
      'bad-option',
      'undo',
      'bad-option',
      'bad-option',
      'bad-option',
      'air',
      'not-allowed',
      'weather-file',
      'bad-option',
      'bad-option',
      'strip'
    ])
    expect(replies[0]).toMatchObject({ at: '2026-05-04T10:00:00Z', logged: ['demo-1'], decision: 'demo-2' })
    expect(replies[6]).toMatchObject({ at: '2026-05-04T11:00:00Z', lang: 'es', units: 'us', logged: [], weather: { sample: true } })
    expect(numbersOf(replies[6] as Reply).airC).toBe(12)
  })

  it('takes a thousand lines', async () => {
    const input = Array.from({ length: 1000 }, (_, index) =>
      JSON.stringify({ text: index % 2 === 0 ? 'strip 2 m' : `foam ${(index % 60) + 1} s even` })
    ).join('\n')
    const { out } = await seamhand(['ask', '--json', '--lines', '--data', folder(), ...at], { input })
    const replies = linesOf<Reply>(out)

    expect(replies).toHaveLength(1000)
    expect(replies.at(-1)?.logged).toEqual(['demo-500'])
  })
})

describe('many processes on one store', () => {
  it('lose nothing and keep one chain', async () => {
    const data = folder()
    const runs = Array.from({ length: 6 }, (_, index) => {
      const input = Array.from({ length: 10 }, () => JSON.stringify({ text: 'probe course 4 40 mm', as: `U${index}` })).join('\n')
      return program(['ask', '--json', '--lines', '--data', data, ...at], { input })
    })
    const replies = (await Promise.all(runs)).flatMap(({ out }) => linesOf<Reply>(out))

    expect(replies.filter(({ ok }) => ok)).toHaveLength(60)
    const ids = replies.flatMap(({ logged }) => logged)
    expect(new Set(ids).size).toBe(60)
    expect(replies.map((reply) => numbersOf(reply).void as number).sort((a, b) => a - b)).toEqual(Array.from({ length: 60 }, (_, index) => index + 1))
    const verified = await seamhand(['verify', '--json', '--data', data])
    expect(verified.code).toBe(0)
    expect(JSON.parse(verified.out)).toMatchObject({ ok: true, sites: [{ site: 'demo', entries: 60, firstBad: null }] })
  })
})
