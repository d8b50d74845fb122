import { describe, expect, it } from 'vitest'
import { findingOf, numbersOf, type Question, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('undo', () => {
  it('takes back what the last message of its author logged, and not its decision', async () => {
    const seamhand = await open()
    await seamhand.ask('spray air 20 rh 50 dry')
    const undone = await seamhand.ask('undo')

    expect(numbersOf(undone).undone).toEqual(expect.arrayContaining(['demo-1', 'demo-2']))
    expect(numbersOf(undone).undone).toHaveLength(2)
    expect(undone.undoUntil).toBeNull()
    expect((await seamhand.entries()).map(({ type }) => type)).toEqual(['reading', 'statement', 'decision', 'undo', 'undo'])
    const after = await seamhand.ask('spray')
    expect(numbersOf(after).airC).toBeNull()
    expect(findingOf(after, 'substrate-dry')).toMatchObject({ outcome: 'unknown', stale: false })
  })

  it('twice goes on to the message before', async () => {
    const seamhand = await open()
    await seamhand.askAll(['air 20', 'air 21', 'undo', 'undo'])

    expect(numbersOf(await seamhand.ask('air')).airC).toBeNull()
    expect((await seamhand.ask('undo')).error).toMatchObject({ code: 'not-found' })
  })

  it('of an older reading brings back the one before it', async () => {
    const seamhand = await open()
    await seamhand.askAll(['air 20', 'air 21', 'undo'])

    expect(numbersOf(await seamhand.ask('air')).airC).toBe(20)
  })

  it.each<readonly [why: string, said: readonly string[], text: string, code: string, question: Question]>([
    ['601 s later', ['air 20'], 'undo demo-1', 'wrong-state', { at: '10:10:01' }],
    ['of somebody else', ['air 20'], 'undo demo-1', 'not-allowed', { user: 'U8' }],
    ['of somebody else, by a supervisor', ['air 20'], 'undo demo-1', 'not-allowed', { user: 'U8', role: 'supervisor' }],
    ['twice', ['air 20', 'undo demo-1'], 'undo demo-1', 'wrong-state', {}],
    ['of a decision', ['air 20'], 'undo demo-2', 'wrong-state', {}],
    ['of an undo', ['air 20', 'undo demo-1'], 'undo demo-3', 'wrong-state', {}],
    ['of a void that was repaired since', ['probe course 4 40 mm', 'probe 1 fixed'], 'undo demo-1', 'wrong-state', {}],
    ['of one that can and one that cannot', ['air 20', 'probe course 4 40 mm', 'probe 1 fixed'], 'undo demo-1 demo-3', 'wrong-state', {}]
  ])('%s is refused, and nothing is logged', async (_why, said, text, code, question) => {
    const seamhand = await open()
    await seamhand.askAll(said, { user: 'U7' })
    const head = await seamhand.head()
    const reply = await seamhand.ask(text, { user: 'U7', ...question })

    expect(reply.error?.code).toBe(code)
    expect(await seamhand.head()).toEqual(head)
  })

  it('600 s later is just in time', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20')

    expect((await seamhand.ask('undo', { at: '10:10' })).ok).toBe(true)
  })

  it('of a repair that nothing stands on, then of its void', async () => {
    const seamhand = await open()
    await seamhand.askAll(['probe course 4 40 mm', 'probe 1 fixed', 'undo demo-2'])

    expect(numbersOf(await seamhand.ask('probe list'))).toMatchObject({ open: 1, repaired: 0 })
    expect((await seamhand.ask('undo demo-1')).ok).toBe(true)
    expect(numbersOf(await seamhand.ask('probe list'))).toMatchObject({ open: 0, list: [] })
    // Void numbers are never reused: outside contract §6.
    expect(numbersOf(await seamhand.ask('probe course 5 30 mm')).void).toBe(2)
  })

  it('of a coupon takes the clearance with it, of a setting the setting', async () => {
    const seamhand = await open()
    await seamhand.ask('weld robot 41 film')
    await seamhand.ask('undo')
    expect((await seamhand.ask('weld robot')).error?.code).toBe('not-found')

    await seamhand.ask('site units us')
    expect((await seamhand.ask('site')).units).toBe('us')
    await seamhand.ask('undo')
    expect((await seamhand.ask('site')).units).toBe('metric')
  })

  it('is answered with the ids it says, in capitals too', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20')

    expect(numbersOf(await seamhand.ask('undo DEMO-1')).undone).toEqual(['demo-1'])
  })
})

describe('a correction', () => {
  it('puts another value in place of the first, at the same instant, and leaves the entry as it was', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20 rh 50', { at: '09:30' })

    expect(await seamhand.ask('correct demo-1 air 12')).toMatchObject({ ok: true, command: 'correct', numbers: { corrected: 'demo-1' } })
    const reply = await seamhand.ask('air', { at: '10:30' })
    expect(numbersOf(reply)).toMatchObject({ airC: 12, rhPct: 50 })
    // Still a reading of 09:30: a second later it is too old.
    expect(numbersOf(await seamhand.ask('air', { at: '10:30:01', log: false })).airC).toBeNull()
    const entries = await seamhand.entries()
    expect(entries[0]?.data).toEqual({ airC: 20, rhPct: 50 })
    expect(entries.find(({ type }) => type === 'correction')).toMatchObject({
      subject: 'day:2026-05-04',
      data: { target: 1, data: { airC: 12, rhPct: 50 } }
    })
  })

  it('takes the units and the language of the person', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20')
    await seamhand.ask('corregir demo-1 aire 50', { units: 'us' })

    expect(numbersOf(await seamhand.ask('air')).airC).toBe(10)
  })

  it.each([
    ['a kit', 'kit K2 iso 24 resin 25', 'iso 20', 'kit', { isoC: 20 }],
    ['a statement', 'spray intakes none', 'intakes open', 'spray', {}],
    ['what was laid', 'laid 40 m2 robot 30 m', '44 m2', 'laid', { areaM2: 44 }]
  ])('of %s', async (_what, said, words, command, numbers) => {
    const seamhand = await open()
    await seamhand.ask(said)

    expect(await seamhand.ask(`correct demo-1 ${words}`)).toMatchObject({ ok: true })
    if (command === 'laid') expect((await seamhand.store.view({ workspace: 'local', site: 'demo' }))?.head.seq).toBe(2)
    else expect(numbersOf(await seamhand.ask(command))).toMatchObject(numbers)
  })

  it.each<readonly [who: string, question: Question, allowed: boolean]>([
    ['its author the same day', { at: '23:59' }, true],
    ['its author the day after', { at: '2026-05-05T00:00:00+02:00' }, false],
    ['somebody else of the crew', { user: 'U8' }, false],
    ['a supervisor days later', { user: 'U8', role: 'supervisor', at: '2026-05-09T08:00:00Z' }, true]
  ])('by %s', async (_who, question, allowed) => {
    const seamhand = await open()
    await seamhand.ask('air 20', { role: 'crew' })
    const reply = await seamhand.ask('correct demo-1 air 12', { role: 'crew', ...question })

    expect(reply.error?.code ?? null).toBe(allowed ? null : 'not-allowed')
  })

  it.each<readonly [why: string, said: string, words: string, code: string]>([
    ['of what is not there', 'air 20', 'demo-9 air 12', 'not-found'],
    ['of another site', 'air 20', 'north-1 air 12', 'not-found'],
    ['of a decision', 'air 20', 'demo-2 air 12', 'wrong-state'],
    ['with a member that was not said', 'air 20', 'demo-1 rh 50', 'inconsistent'],
    ['with a statement in place of a reading', 'air 20', 'demo-1 dry', 'inconsistent'],
    ['of a setting', 'site units us', 'demo-1 units metric', 'wrong-state'],
    ['of a coupon, which is judged once', 'weld robot 41 mm film', 'demo-1 42 mm film', 'wrong-state'],
    ['that moves it to another kit', 'laid 40 m2 kit K1', 'demo-1 41 m2 kit K2', 'inconsistent'],
    ['without words', 'air 20', 'demo-1', 'missing'],
    ['with words that are none', 'air 20', 'demo-1 blorp', 'unknown-word'],
    ['with a value out of range', 'air 20', 'demo-1 air 900', 'out-of-range'],
    ['of nothing', 'air 20', '', 'missing']
  ])('%s is refused, and logs nothing', async (_why, said, words, code) => {
    const seamhand = await open()
    await seamhand.ask(said)
    const before = await seamhand.head()
    const reply = await seamhand.ask(`correct ${words}`)

    expect(reply.error?.code).toBe(code)
    expect(await seamhand.head()).toEqual(before)
  })

  it('of what was undone is refused', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20')
    await seamhand.ask('undo')

    expect((await seamhand.ask('correct demo-1 air 12')).error?.code).toBe('wrong-state')
  })
})
