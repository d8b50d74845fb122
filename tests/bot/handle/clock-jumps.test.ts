import { expect, it } from 'vitest'
import { verifySite } from '../../../src/bot/verify.js'
import { findingOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const noon = '2026-05-04T10:00:00Z'
const dayBefore = '2026-05-03T10:00:00Z'
const dayAfter = '2026-05-05T10:00:00Z'

it.each([
  ['a day back', dayBefore],
  ['a second back', '2026-05-04T09:59:59Z'],
  ['a day on', dayAfter]
])('a clock that jumps %s in the middle of the work: every answer is given, every chain holds', async (_, then) => {
  const seamhand = await open()
  for (const at of [noon, then, noon]) {
    for (const text of [
      'spray air 20 deck 22 rh 50 dry clean',
      'kit K1 25 mixed',
      'weld robot 41 mm film',
      'probe course 1 3 m 40 mm',
      'laid 10 robot 5',
      'day'
    ])
      expect(await seamhand.ask(text, { at, user: 'U1' }), `${text} at ${at}`).toMatchObject({ ok: true })
  }
  expect(await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, [])).toMatchObject({ firstBad: null })
  expect(seamhand.bugs).toEqual([])
})

it('what was read before the clock went back is not in force before it was read', async () => {
  const seamhand = await open()
  await seamhand.ask('air 20', { at: noon })
  const before = await seamhand.ask('spray', { at: '2026-05-04T09:00:00Z' })
  expect(findingOf(before, 'air-temperature', 'spray')).toMatchObject({ outcome: 'unknown', value: null })
  expect(findingOf(await seamhand.ask('spray', { at: noon }), 'air-temperature', 'spray')).toMatchObject({ value: 20 })
})

it('the ten minutes of an undo are neither lost by a step back nor come again by a step on', async () => {
  const seamhand = await open()
  const back = await seamhand.ask('air 20', { at: noon, user: 'U1' })
  expect(await seamhand.ask(`undo ${back.logged.join(' ')}`, { at: '2026-05-04T09:58:00Z', user: 'U1' })).toMatchObject({ ok: true })
  const on = await seamhand.ask('air 21', { at: noon, user: 'U1' })
  expect(await seamhand.ask(`undo ${on.logged.join(' ')}`, { at: dayAfter, user: 'U1' })).toMatchObject({ ok: false, error: { code: 'wrong-state' } })
})

it('a delivery that comes again after the clock went back has one effect', async () => {
  const seamhand = await open()
  const first = await seamhand.ask('air 20', { at: noon, claim: 'D1' })
  const { length } = await seamhand.entries()
  const again = await seamhand.ask('air 20', { at: dayBefore, claim: 'D1' })
  expect(again.logged).toEqual(first.logged)
  expect(await seamhand.entries()).toHaveLength(length)
})
