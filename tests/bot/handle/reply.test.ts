import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/bot/reply.js'
import { blockProblems } from '../../support/blocks.js'
import { findingsOf, fullSpray, numbersOf, type Question, seamhands } from '../../support/seamhand.js'

const open = seamhands()

/** Every key of outside contract §4. */
const replyKeys = [
  'v',
  'ok',
  'command',
  'site',
  'at',
  'lang',
  'units',
  'outcome',
  'outcomes',
  'activities',
  'binding',
  'findings',
  'numbers',
  'changesAt',
  'limits',
  'weather',
  'logged',
  'decision',
  'undoUntil',
  'files',
  'text',
  'blocks',
  'error'
]
const findingKeys = ['rule', 'activity', 'group', 'outcome', 'value', 'unit', 'limit', 'margin', 'spread', 'origin', 'at', 'stale', 'fix']
const errorKeys = ['code', 'message', 'word', 'understood', 'usage', 'ref']

const spray = [
  'airC',
  'rhPct',
  'dewPointC',
  'frostPointC',
  'wetBulbC',
  'substrateC',
  'substrateSpreadK',
  'dewMarginK',
  'kitColdC',
  'kitHotC',
  'windKmh',
  'gustKmh',
  'rainChancePct',
  'heatIndexC',
  'windChillC',
  'daylightMin',
  'wbgtC',
  'openTimeS',
  'reachM',
  'stopEveryM'
]
const welder = ['passed', 'widthMm', 'minWidthMm', 'cause', 'move', 'cleared', 'lapsedBy', 'onHoldM', 'meanMm', 'sigmaMm', 'chanceShort']
const probe = ['void', 'state', 'open', 'repaired', 'passed', 'per100m', 'per100mUpper90']

/** A message of each command, what was said before it, and the least its `numbers` hold: outside contract §6. */
const commands: readonly (readonly [text: string, before: readonly string[], numbers: readonly string[]])[] = [
  [fullSpray, [], spray],
  ['spray', [], spray],
  ['spray override rain holds off, tarps are up', [], spray],
  ['air 12 rh 80 wind 20 gust 30 no thunder', [], spray],
  ['weld', [], ['sheetC', 'dewMarginK', 'dropPct', 'welders']],
  [
    'weld air 20 sheet 25 rh 50 wind 10 no rain lap clean dry lead 50 m 2.5 mm2',
    ['weld robot 41 film'],
    ['sheetC', 'dewMarginK', 'dropPct', 'welders']
  ],
  ['weld robot 41 39 40 mm film set 480 speed 2.5 thick 1.5 by ana', [], welder],
  ['weld robot 41 mm film', ['weld robot 40 film', 'weld robot 42 film'], welder],
  ['weld hand 30 parted', [], welder],
  ['weld robot 41 warm', [], welder],
  ['weld robot restart', ['weld robot 41 film'], welder],
  ['weld robot', ['weld robot 41 film'], welder],
  ['strip 2 m gap 6', [], ['lengthMm', 'widthMm', 'landMm', 'minWidthMm', 'cornerRadiusMm', 'weldPerimeterMm', 'robotMm', 'handMm', 'count']],
  ['strip 2 m off 10 edge 300 sheets 2 roll 20 m x4', [], ['lengthMm', 'widthMm', 'landMm', 'count']],
  ['probe course 4 lap 3.2 m 40 mm cold', [], probe],
  ['probe 1 fixed', ['probe course 4 40 mm'], probe],
  ['probe list', ['probe course 4 40 mm'], [...probe, 'list']],
  ['probe list', [], [...probe, 'list']],
  ['kit', [], ['isoC', 'resinC', 'shellC', 'meanC', 'coreC', 'readyAt', 'coldAt', 'startBy', 'kits']],
  [
    'kit K7 iso 24 resin 23 mixed box 28 exp 2099-01-01 lot A1 used 20 m2',
    [],
    ['isoC', 'resinC', 'shellC', 'meanC', 'coreC', 'readyAt', 'coldAt', 'startBy', 'kits']
  ],
  ['foam 45 s even', [], ['openTimeS', 'scale', 'verdict']],
  ['foam 45 s even', ['spray deck 20'], ['openTimeS', 'scale', 'verdict']],
  ['laid 42 m2 sheets 2 course 4 kit K7 robot 20 m hand 4 m', [], ['areaM2', 'robotM', 'handM', 'yieldM2PerKit', 'planM2PerKit', 'driftPct']],
  ['laid 42 m2', ['kit K1 used 80 m2 empty'], ['areaM2', 'robotM', 'handM', 'yieldM2PerKit', 'planM2PerKit', 'driftPct']],
  ['site', [], []],
  ['site morning 05:45', [], []],
  ['site new north at 51.5,-0.1 zone Europe/London', [], []],
  ['help', [], []],
  ['help spray', [], []],
  ['me lang es units us', [], []],
  ['undo', ['air 12'], []]
]

function shapeOf(reply: Reply): void {
  expect(Object.keys(reply)).toEqual(replyKeys)
  expect(Object.keys(reply.activities)).toEqual(['spray', 'lay', 'weld', 'people'])
  if (reply.outcomes !== null) expect(Object.keys(reply.outcomes)).toEqual(['conditions', 'checklist', 'people'])
  for (const finding of findingsOf(reply)) expect(Object.keys(finding)).toEqual(findingKeys)
  if (reply.limits !== null) expect(reply.limits).toEqual({ id: 'common-practice', version: 1, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) })
  if (reply.error !== null) expect(Object.keys(reply.error)).toEqual(errorKeys)
  const first = findingsOf(reply)[0]
  expect(reply.binding).toBe(first === undefined || first.outcome === 'go' ? null : first.rule)
  expect(blockProblems(reply)).toEqual([])
  const instants =
    JSON.stringify(reply, (key, value: unknown) => (key === 'text' || key === 'blocks' ? undefined : value)).match(/"\d{4}-\d\d-\d\dT[^"]*"/g) ?? []
  for (const instant of instants) expect(instant).toMatch(/^"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ"$/)
  for (const number of numbersIn(reply)) expect(number).toBe(Math.round(number * 1e6) / 1e6)
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(numbersIn)
}

describe('every key, for every command', () => {
  it.each(commands)('%s', async (text, before, numbers) => {
    const seamhand = await open()
    for (const each of before) expect((await seamhand.ask(each)).error, each).toBeNull()
    const reply = await seamhand.ask(text)

    expect(reply.error).toBeNull()
    expect(reply.ok).toBe(true)
    expect(reply.v).toBe(1)
    expect(reply.at).toBe('2026-05-04T08:00:00Z')
    expect(Object.keys(numbersOf(reply))).toEqual(expect.arrayContaining([...numbers]))
    expect(reply.text).not.toBe('')
    shapeOf(reply)
    expect(seamhand.bugs).toEqual([])
  })

  it.each(['', 'sprai', 'spray foo', 'air 900', 'probe 9 fixed', 'weld', 'spray', 'site new demo at 1,1 zone Europe/Berlin'])(
    'refused: %j',
    async (text) => {
      const seamhand = await open()
      const reply = await seamhand.ask(text, text === 'weld' || text === 'spray' ? { site: 'nowhere' } : {})

      expect(reply).toMatchObject({
        ok: false,
        outcome: null,
        outcomes: null,
        binding: null,
        findings: [],
        numbers: {},
        changesAt: null,
        logged: [],
        decision: null,
        undoUntil: null,
        files: []
      })
      shapeOf(reply)
      expect((await seamhand.head()).seq).toBe(0)
    }
  )
})

/** Everything but what depends on language and units: outside contract §4. */
function bare(reply: Reply): unknown {
  const { text: _text, blocks: _blocks, lang: _lang, units: _units, error, files, ...rest } = reply
  // Pictures hold words: their bytes are of one language.
  const kinds = (files as readonly { readonly kind: string; readonly name: string }[]).map(({ kind, name }) => ({ kind, name }))
  return { ...rest, files: kinds, error: error && { ...error, message: '', usage: '' } }
}

/** The same physical values, typed in each system. Conversions by definition: 1 in = 25.4 mm, 1 mi = 1609.344 m, °F = 1.8 °C + 32. */
const twins: readonly (readonly [metric: string, us: string])[] = [
  [
    fullSpray,
    fullSpray.replace('air 20 deck 20', 'air 68 deck 68').replace('wind 10 gust 15', 'wind 10 km/h gust 15 km/h').replace('kit 25', 'kit 77')
  ],
  ['air -10 rh 80 wind 32.18688 gust 48.28032', 'air 14 rh 80 wind 20 gust 30'],
  ['weld sheet 25 lead 30.48 m 2.5 mm2', 'weld sheet 77 lead 100 2.5 mm2'],
  ['weld robot 38.1 mm film set 482.222222 C', 'weld robot 1-1/2 film set 900'],
  ['strip 3.0480 m gap 6.35 mm', 'strip 10 gap 1/4'],
  ['probe course 4 at 3.0480 long 38.1', 'probe course 4 at 10 long 1-1/2'],
  ['kit K7 iso 25 resin 20 mixed box 30', 'kit K7 iso 77 resin 68 mixed box 86'],
  ['laid 92.90304 m2 robot 30.48 m', 'laid 1000 ft2 robot 100'],
  ['foam 45 s even', 'foam 45 s even'],
  ['air 900', 'air 1652'],
  ['frobnicate', 'frobnicate']
]

describe('languages and units', () => {
  it.each(twins)('%s and %s: the same numbers in both systems and three languages', async (metric, us) => {
    const ask = async (text: string, how: Question) => (await open()).ask(text, how)
    const base = await ask(metric, { lang: 'en', units: 'metric' })
    const texts = new Set([base.text])
    for (const lang of ['en', 'es', 'fr'] as const) {
      for (const units of ['metric', 'us'] as const) {
        const reply = await ask(units === 'us' ? us : metric, { lang, units })
        texts.add(reply.text)
        expect(reply).toMatchObject({ lang, units })
        expect(bare({ ...reply, error: reply.error && { ...reply.error, word: base.error?.word ?? null } })).toEqual(bare(base))
      }
    }
    expect(texts.size).toBeGreaterThanOrEqual(3)
  })

  it('takes the words of the other languages whatever the person reads', async () => {
    const en = await (await open()).ask('spray air 20 deck 18 rh 60 wind 10 dry clean mixed', { lang: 'fr' })
    const es = await (await open()).ask('rociar aire 20 cubierta 18 hr 60 viento 10 seco limpio mezclado', { lang: 'fr' })
    const fr = await (await open()).ask('pulvériser air 20 support 18 hr 60 vent 10 sec propre mélangé', { lang: 'fr' })

    expect(es).toEqual(en)
    expect(fr).toEqual(en)
  })
})

describe('the same store, options and text', () => {
  it('give the same bytes, in the log too', async () => {
    const said = [fullSpray, 'weld robot 41 film', 'probe course 4 40 mm', 'weld', 'undo', 'frobnicate', 'kit']
    const run = async () => {
      const seamhand = await open({ weather: 'sample' })
      const replies = []
      for (const text of said) replies.push(JSON.stringify(await seamhand.ask(text)))
      return { replies, head: await seamhand.head() }
    }

    expect(await run()).toEqual(await run())
  })

  it('give ids SITE-SEQ that count on without a gap', async () => {
    const seamhand = await open()
    const first = await seamhand.ask(fullSpray)
    const second = await seamhand.ask('weld robot 41 film')

    expect(first.logged).toEqual(['demo-1', 'demo-2', 'demo-3'])
    expect(first.decision).toBe('demo-4')
    expect(second.logged).toEqual(['demo-5'])
    expect(first.undoUntil).toBe('2026-05-04T08:10:00Z')
    expect((await seamhand.entries()).map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5])
  })
})

describe('findings', () => {
  it('stand no-go, unknown, caution, go; then by how much they bind, unknown margins first; then by rule', async () => {
    const reply = await (await open()).ask('spray air 4 deck 6 rh 90 wind 14 gust 34 rain 10 % kit 31.5 mixed dry')
    const order = ['no-go', 'unknown', 'caution', 'go']
    const seen = findingsOf(reply).map(({ outcome }) => order.indexOf(outcome))

    expect(seen).toEqual([...seen].sort((a, b) => a - b))
    expect(reply.binding).toBe('air-temperature')
    for (const outcome of order) {
      const margins = findingsOf(reply).filter((one) => one.outcome === outcome)
      const firstKnown = margins.findIndex(({ margin }) => margin !== null)
      if (firstKnown >= 0)
        expect(
          margins.slice(firstKnown).every(({ margin }) => margin !== null),
          outcome
        ).toBe(true)
    }
  })

  it('give the nearer no-go bound and the signed distance to it, positive inside', async () => {
    const reply = await (await open()).ask('spray deck 52 kit 31 mixed air 20')
    const by = Object.fromEntries(findingsOf(reply).map((one) => [`${one.rule}/${one.activity}`, one]))

    expect(by['substrate-temperature/spray']).toMatchObject({ outcome: 'no-go', limit: 50, margin: -2, value: 52, unit: 'C', origin: 'reading' })
    expect(by['kit-temperature/spray']).toMatchObject({ outcome: 'go', limit: 32, margin: 1 })
    expect(by['air-temperature/spray']).toMatchObject({ outcome: 'go', limit: 5, margin: 15 })
  })
})
