import { describe, expect, it } from 'vitest'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

describe('what a rejected test spray does', () => {
  it('shortens the open time, never lengthens it', async () => {
    const spray = 'spray air 20 deck 20'
    const plain = Number(numbersOf(await (await open()).ask(spray)).openTimeS)
    const openTimeAfter = async (foam: string) => {
      const seamhand = await open()
      await seamhand.ask(spray)
      await seamhand.ask(foam)
      return Number(numbersOf(await seamhand.ask(spray)).openTimeS)
    }
    expect(await openTimeAfter('foam 70 s even')).toBe(70)
    expect(await openTimeAfter('foam 120 s flat')).toBe(plain)
    expect(await openTimeAfter('foam 20 s dark brittle')).toBe(20)
  })
})
