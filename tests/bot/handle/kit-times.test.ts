import { describe, expect, it } from 'vitest'
import { runFormula } from '../../../src/core/formulas/index.js'
import { fromIso } from '../../../src/core/instant.js'
import { instantOf, morning, numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const minutesAfter = (text: unknown): number => ((fromIso(String(text)) ?? Number.NaN) - instantOf(morning)) / 60

/** Minutes by the conduction formula alone, as anyone can ask it: the slow bound of the mixed mean. Properties as in the built-in sheet, from memory. */
function slowMin(fromC: number, toC: number, targetC: number): number {
  const ran = runFormula('cylinder', {
    radiusM: 0.15,
    heightM: 0.45,
    rhoKgM3: 1100,
    cJKgK: 1900,
    kWMK: 0.18,
    hWM2K: 8,
    exposedEnds: 2,
    fromC,
    toC,
    targetC
  })
  return ran.ok ? Number((ran.result as { meanMin: number }).meanMin) : Number.NaN
}

describe('the times of a kit', () => {
  it('ready in the warm box when the slow bound says so', async () => {
    const seamhand = await open()
    const numbers = numbersOf(await seamhand.ask('kit K2 15 mixed box 30'))

    expect(Math.abs(minutesAfter(numbers.readyAt) - slowMin(15, 30, 21))).toBeLessThan(6)
    expect(numbers.startBy).toBeNull()
    expect(numbers).toMatchObject({ shellC: 15, meanC: 15, coreC: 15 })
  })

  it('is that of the part that is worse off, and neither leaves the box before both are ready', async () => {
    const seamhand = await open()
    const both = numbersOf(await seamhand.ask('kit K2 iso 12 resin 20 mixed box 30'))

    expect(Math.abs(minutesAfter(both.readyAt) - slowMin(12, 30, 21))).toBeLessThan(6)
    const cold = fromIso(String(both.coldAt))
    if (cold !== null) expect(cold).toBeGreaterThanOrEqual(fromIso(String(both.readyAt)) ?? 0)
    expect(both.meanC).toBe(12)
  })

  it('never in a box that is not warm enough, nor in a store whose temperature nobody stated', async () => {
    const seamhand = await open()
    expect(numbersOf(await seamhand.ask('kit K2 15 mixed box 18')).readyAt).toBeNull()
    expect(numbersOf(await seamhand.ask('kit K3 15 mixed store'))).toMatchObject({ readyAt: null, coldAt: null, startBy: null })
  })

  it('says by when to put it into a box whose temperature is known from another kit, and when the deck is too cold', async () => {
    const seamhand = await open({ weather: 'sample' })
    await seamhand.ask('kit K1 25 mixed box 30')
    const store = numbersOf(await seamhand.ask('kit K2 15 store 15'))
    expect(minutesAfter(store.startBy)).toBeGreaterThan(0)

    const deck = numbersOf(await seamhand.ask('kit K3 22 mixed deck 5'))
    expect(minutesAfter(deck.coldAt)).toBeGreaterThan(0)
    expect(minutesAfter(deck.coldAt)).toBeLessThan(slowMin(22, 5, 21.9) + 120)
  })

  it('has no times without a reading, and says nothing of a kit read three days ago', async () => {
    const seamhand = await open()
    await seamhand.ask('kit K2 15 mixed box 30')
    const later = numbersOf(await seamhand.ask('kit', { at: '2026-05-08T08:00:00Z' }))

    expect(later).toMatchObject({ shellC: null, meanC: null, readyAt: null })
    expect(numbersOf(await seamhand.ask('kit K9 lot A1'))).toMatchObject({ isoC: null, meanC: null, readyAt: null, coldAt: null })
  })
})
