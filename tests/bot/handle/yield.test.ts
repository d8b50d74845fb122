import { describe, expect, it } from 'vitest'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('how far kits go', () => {
  it('by day and by lot, against the plan', async () => {
    const seamhand = await open()
    await seamhand.ask('kit K1 lot A used 80 m2 empty')
    await seamhand.ask('kit K2 lot B used 100 m2 empty')
    await seamhand.ask('kit K3 lot B used 30 m2')
    const numbers = numbersOf(await seamhand.ask('laid 10 m2 kit K3'))

    expect(numbers).toMatchObject({ yieldM2PerKit: 90, planM2PerKit: 90, driftPct: 0 })
    expect(numbers.yieldByLot).toEqual([
      { name: 'A', m2PerKit: 80, kits: 1, driftPct: -11.111111 },
      { name: 'B', m2PerKit: 100, kits: 1, driftPct: 11.111111 }
    ])
    expect(numbers.yieldByDay).toEqual([{ name: '2026-05-04', m2PerKit: 90, kits: 2, driftPct: 0 }])
  })

  it('an emptied kit counts by the day it was said to be empty first, and no more once that is undone', async () => {
    const seamhand = await open()
    await seamhand.ask('kit K1 used 80 m2 empty')
    await seamhand.ask('kit K1 empty')
    const { logged } = await seamhand.ask('kit K2 used 60 m2 empty')
    await seamhand.ask(`undo ${logged[0]}`)
    expect(numbersOf(await seamhand.ask('laid 10 m2 kit K9')).yieldByDay).toEqual([
      { name: '2026-05-04', m2PerKit: 80, kits: 1, driftPct: -11.111111 }
    ])
  })

  it('parts that empty unevenly are said first, in words', async () => {
    const seamhand = await open()
    const even = await seamhand.ask('kit K1 left 20 15 %')
    expect(even.text).not.toContain('off ratio')
    expect(even.text).toContain('left: iso 20 %, resin 15 %')

    const uneven = await seamhand.ask('kit K1 left resin 12 iso 20')
    expect(numbersOf(uneven).kits).toMatchObject([{ name: 'K1', isoLeftPct: 20, resinLeftPct: 12, offRatio: true }])
    expect(uneven.text).toContain('K1 empties unevenly (iso 20 %, resin 12 % left): off ratio')
  })
})
