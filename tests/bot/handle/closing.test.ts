import { describe, expect, it } from 'vitest'
import { findingOf, findingsOf, numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

/** Lengths and reasons of outside contract: design page §8; common practice and from memory, no source. */
describe('mending a void', () => {
  it('says how: weld again, patch, cut and patch, and how far to probe', async () => {
    const bot = await open()
    expect(numbersOf(await bot.ask('probe course 4 end 3.2 m 40 mm'))).toMatchObject({ mend: 'weld', patchMm: null, probeMm: 140 })
    expect(numbersOf(await bot.ask('probe course 4 lap 5 m 200 mm'))).toMatchObject({ mend: 'patch', mendWhy: 'long', patchMm: 350 })
    expect(numbersOf(await bot.ask('probe course 5 lap 40 mm scorched'))).toMatchObject({ mend: 'patch', mendWhy: 'char', patchMm: 190 })
    const foam = await bot.ask('probe course 5 lap 40 mm foam')
    expect(numbersOf(foam)).toMatchObject({ mend: 'cut-and-patch', mendWhy: 'foam', causes: ['foam'] })
    expect(foam.text).toContain('foam in the lap')
  })

  it('wants a patch once a repair has failed, and takes it', async () => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe 1 fixed lifted cleaned dried reheated cooled', 'probe 1 failed'])
    const again = await bot.ask('probe 1 fixed')
    expect(numbersOf(again)).toMatchObject({ state: 'repaired', mend: 'patch', mendWhy: 'failed', patched: false })
    expect(again.text).toContain('wants a patch')
    await bot.ask('probe 1 failed')
    expect(numbersOf(await bot.ask('probe 1 fixed patch'))).toMatchObject({ state: 'repaired', patched: true })
    expect((await bot.entries()).map(({ type, data }) => [type, data])).toContainEqual(['repair', { patched: true }])
  })

  it('says wait while a weld is warm, unless it is stated cold, and takes the step all the same', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm', { at: '10:00' })
    await bot.ask('probe 1 fixed', { at: '10:01' })
    const warm = await bot.ask('probe 1 passed', { at: '10:05' })
    expect(warm).toMatchObject({ ok: true, outcome: 'go' })
    expect(numbersOf(warm)).toMatchObject({ state: 'passed', waitUntil: '2026-05-04T08:11:00Z' })
    expect(warm.text).toContain('10:11')

    await bot.askAll(['probe course 4 lap 4 m 40 mm', 'probe 2 fixed'], { at: '10:10' })
    expect(numbersOf(await bot.ask('probe 2 passed cooled', { at: '10:12' }))).toMatchObject({ waitUntil: null })
    await bot.ask('laid 20 m2 R2 10', { at: '10:15' })
    expect(numbersOf(await bot.ask('probe course 4 lap 6 m 40 mm', { at: '10:18' }))).toMatchObject({ void: 3, waitUntil: '2026-05-04T08:25:00Z' })
    expect((await bot.ask('fire', { at: '10:19' })).outcome).toBe('no-go')
    await bot.ask('laid 20 m2 robot 10', { at: '10:20' })
    expect(numbersOf(await bot.ask('probe course 4 lap 5 m 40 mm', { at: '10:22' }))).toMatchObject({ waitUntil: '2026-05-04T08:30:00Z' })
    expect(numbersOf(await bot.ask('probe course 4 lap 6 m 40 mm cooled', { at: '10:22' }))).toMatchObject({ waitUntil: null })
  })

  it('names the laps that a strip or patch would hide', async () => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe course 5 lap 3 m 40 mm'])
    const over = await bot.ask('probe course 4 strip 3 m 40 mm')
    expect(numbersOf(over)).toMatchObject({ under: [1] })
    expect(over.text).toContain('void 1')
    expect(numbersOf(await bot.ask('probe course 6 patch 3 m 40 mm'))).toMatchObject({ under: [] })
  })

  it.each([
    ['a number that is not there', 'probe 9 fixed', 'not-found', '9'],
    ['a repair of a passed one', 'probe 1 fixed', 'wrong-state', 'fixed'],
    ['steps that are no probe', 'probe 2 passed lifted', 'inconsistent', 'passed'],
    ['a place in a step', 'probe 2 fixed lap', 'inconsistent', 'fixed'],
    ['steps without a verdict', 'probe 2 lifted', 'missing', 'step']
  ])('refuses %s', async (_name, text, code, word) => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe 1 fixed', 'probe 1 passed', 'probe course 4 lap 9 m 40 mm', 'probe 2 fixed'])
    const { seq } = await bot.head()
    expect(await bot.ask(text)).toMatchObject({ ok: false, error: { code, word } })
    expect((await bot.head()).seq).toBe(seq)
  })

  it('tells the second of two who close it since when it is closed', async () => {
    const bot = await open()
    await bot.askAll(['probe course 4 lap 3 m 40 mm', 'probe 1 fixed'], { at: '10:00' })
    await bot.ask('probe 1 passed', { at: '10:30', user: 'U1' })
    const second = await bot.ask('probe 1 passed', { at: '10:31', user: 'U2' })
    expect(second.error).toMatchObject({ code: 'wrong-state' })
    expect(second.text).toContain('passed since 10:30')
  })

  it('keeps a late step with both times, and refuses one before what it follows', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm @09:00', { at: '10:00' })
    const late = await bot.ask('probe 1 fixed @09:30', { at: '10:05' })
    expect(numbersOf(late)).toMatchObject({ state: 'repaired', datedAt: '2026-05-04T07:30:00Z' })
    expect(late.text).toContain('09:30')
    expect(await bot.ask('probe 1 passed @09:10', { at: '10:06' })).toMatchObject({ error: { code: 'out-of-range' } })
    expect((await bot.entries()).map(({ at, loggedAt }) => [at, loggedAt])).toContainEqual(['2026-05-04T07:30:00Z', '2026-05-04T08:05:00Z'])
  })

  it('loses no step and gives no number twice when the clock runs back', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm', { at: '10:05' })
    expect(numbersOf(await bot.ask('probe course 4 lap 8 m 40 mm', { at: '10:00' }))).toMatchObject({ void: 2, open: 2 })
    expect(numbersOf(await bot.ask('probe 1 fixed', { at: '10:01' }))).toMatchObject({ state: 'repaired', datedAt: '2026-05-04T08:05:00Z' })
    expect(numbersOf(await bot.ask('probe list', { at: '12:00' }))).toMatchObject({ open: 1, repaired: 1 })
  })

  it('can be undone with a photo beside it, and not with a repair on it', async () => {
    const bot = await open()
    await bot.ask('probe course 4 lap 3 m 40 mm photo F1')
    await bot.ask('probe 1 fixed')
    expect(await bot.ask('undo demo-1')).toMatchObject({ error: { code: 'wrong-state' } })
    expect((await bot.ask('undo demo-2')).ok && (await bot.ask('undo demo-1')).ok).toBe(true)
    expect(await bot.ask('probe 1 fixed')).toMatchObject({ error: { code: 'not-found' } })
  })
})

describe('a test square', () => {
  it.each([
    ['bond foam', 'go', { passed: true, substrate: 'board' }],
    ['bond foil fleece', 'go', { passed: true, substrate: 'foil' }],
    ['bond facer 900 N wanted 500', 'go', { passed: true, forceN: 900, wantedN: 500 }],
    ['bond clean', 'no-go', { passed: false, broke: 'face' }],
    ['bond foam 400 N wanted 500', 'no-go', { passed: false }],
    ['bond 900 N', 'unknown', { passed: null }],
    ['bond foam uncured', 'unknown', { passed: null }],
    ['bond', 'unknown', {}],
    // 900 N on 300 × 300 mm is 10 kPa.
    ['bond foam 900 N square 300', 'go', { stressKpa: 10 }],
    ['bond espuma 200 lbf', 'go', { forceN: 889.644323 }]
  ])('%s is %s', async (text, outcome, numbers) => {
    const bot = await open()
    const reply = await bot.ask(text)
    expect(reply).toMatchObject({ ok: true, outcome })
    expect(numbersOf(reply)).toMatchObject(numbers)
    expect(reply.logged).toHaveLength(text === 'bond' ? 0 : 1)
  })
})

describe('the end of a day', () => {
  it('asks for what is missing, takes it in pieces, and names what stands open besides', async () => {
    const bot = await open()
    await bot.askAll(['laid 40 m2 hand 3', 'probe course 4 lap 3 m 40 mm'], { at: '15:00' })
    const asked = await bot.ask('seal', { at: '15:30' })
    expect(asked).toMatchObject({ outcome: 'unknown', logged: [] })
    expect(findingsOf(asked).map(({ rule, outcome }) => [rule, outcome])).toEqual([
      ['night-seal', 'unknown'],
      ['drains-open', 'unknown'],
      ['sheets-safe', 'unknown']
    ])
    expect(numbersOf(asked).open.map(({ what }: { what: string }) => what)).toEqual(['voids', 'on-hold', 'bond', 'fire', 'details'])
    expect(await bot.ask('seal 12 m', { at: '15:31' })).toMatchObject({ outcome: 'no-go' })
    await bot.ask('seal tape drains open', { at: '15:32' })
    const done = await bot.ask('seal no loose by Ana', { at: '15:33' })
    expect(done).toMatchObject({ outcome: 'go' })
    expect(numbersOf(done)).toMatchObject({ openEdgeM: 12, method: 'tape', drainsOpen: true, sheetsSafe: true, by: 'Ana' })
    expect(await bot.ask('seal drains blocked', { at: '15:34' })).toMatchObject({ outcome: 'no-go', binding: 'drains-open' })
  })

  it('reminds the next morning to cut the seal off', async () => {
    const bot = await open()
    await bot.ask('seal 12 m tape drains open rolled', { at: '17:00' })
    const morning = await bot.ask('seal', { at: '2026-05-05T05:00:00Z' })
    expect(numbersOf(morning)).toMatchObject({ toCutM: 12, openEdgeM: null })
    expect(morning.text).toContain('12 m')
    expect((await bot.ask('seal cut wet 0.5 m', { at: '2026-05-05T05:10:00Z' })).text).not.toContain('is to be cut off')
  })

  it('runs the fire watch from the last heat, as long as the permit says, and is signed off only at its end', async () => {
    const bot = await open()
    // Nobody said that there was no heat: that none is logged is not known to be none.
    expect(await bot.ask('fire', { at: '14:00' })).toMatchObject({ outcome: 'unknown', binding: 'fire-watch' })
    expect(await bot.ask('fire done', { at: '14:00' })).toMatchObject({ error: { code: 'wrong-state' } })
    await bot.ask('laid 20 m2 robot 12', { at: '15:00' })
    const running = await bot.ask('fire', { at: '15:20' })
    expect(running).toMatchObject({ outcome: 'no-go' })
    expect(numbersOf(running)).toMatchObject({ state: 'running', untilAt: '2026-05-04T14:00:00Z', leftMin: 40 })
    expect((await bot.ask('fire done', { at: '15:30' })).text).toContain('16:00')
    expect(numbersOf(await bot.ask('fire 2 h', { at: '15:30' }))).toMatchObject({ untilAt: '2026-05-04T15:00:00Z' })
    expect(await bot.ask('fire', { at: '17:00' })).toMatchObject({ outcome: 'unknown' })
    expect(findingOf(await bot.ask('fire done by Ana', { at: '17:01' }), 'fire-watch')).toMatchObject({ outcome: 'go' })
    expect(numbersOf(await bot.ask('fire heat', { at: '17:10' }))).toMatchObject({ state: 'running', leftMin: 120 })
  })
})

describe('details and the punch list', () => {
  it('is done when every kind is good or not there, and no-go while one is not', async () => {
    const bot = await open()
    expect(await bot.ask('detail')).toMatchObject({ outcome: 'unknown', logged: [] })
    expect(await bot.ask('detail drains failed')).toMatchObject({ outcome: 'no-go' })
    expect(await bot.ask('detail corners, cut edges, t-steps, terminations, no pipes')).toMatchObject({ outcome: 'no-go' })
    const done = await bot.ask('détail évacuations')
    expect(done).toMatchObject({ outcome: 'go' })
    expect(numbersOf(done).details).toContainEqual(expect.objectContaining({ kind: 'pipes', status: 'none' }))
    expect(await bot.ask('detail all')).toMatchObject({ outcome: 'go' })
  })

  it('keeps what is typed, as it is typed and escaped where it is shown, and closes the site only when it is done', async () => {
    const bot = await open()
    const added = await bot.ask('punch flange *loose* at <!channel> drain 2 photo F12')
    expect(numbersOf(added)).toMatchObject({
      number: 1,
      text: 'flange *loose* at <!channel> drain 2',
      photosWanted: { subject: 'punch:1', files: ['F12'] }
    })
    expect(added.text).not.toContain('<!channel>')
    expect(await bot.ask('site demo closed')).toMatchObject({ error: { code: 'wrong-state' } })
    expect(await bot.ask('punch 1 done')).toMatchObject({ outcome: 'go' })
    expect((await bot.ask('punch 1 done')).text).toContain('since')
    expect(await bot.ask('punch 7 done')).toMatchObject({ error: { code: 'not-found' } })
    expect(await bot.ask('punch 1 open')).toMatchObject({ outcome: 'caution' })
    expect(numbersOf(await bot.ask('punch list'))).toMatchObject({ open: 1, done: 0, list: [{ number: 1, state: 'open' }] })
    await bot.ask('punch 1 done')
    expect((await bot.ask('site demo closed')).ok).toBe(true)
    expect((await bot.ask('punch list')).ok).toBe(true)
  })

  it.each([
    ['punch', true, null],
    ['punch done', false, 'missing'],
    ['punch 3', false, 'missing'],
    ['punch 1 dnoe', false, 'unknown-word'],
    [`punch ${'x'.repeat(201)}`, false, 'too-long']
  ])('%s', async (text, ok, code) => {
    const bot = await open()
    expect(await bot.ask(text)).toMatchObject({ ok, error: code === null ? null : { code } })
  })
})
