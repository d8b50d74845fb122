import { describe, expect, it } from 'vitest'
import { conductionTrail } from '../../../src/core/kits/kit-model.js'
import { steady } from '../../../src/core/kits/place.js'
import { valueAt } from '../../../src/core/kits/trail.js'
import { sheet } from '../../support/facts.js'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const { kit } = sheet()

/** Mean of a kit from one temperature after so many hours in a box of 30 °C, with a mixing factor that the sheet does not know. */
function meanAfter(fromC: number, hours: number, mixing: number): string {
  const around = steady({ toC: 30, hWM2K: kit.hWM2K })
  const trail = conductionTrail(kit, mixing, { at: 0, c: fromC }, hours * 3600, around)
  return (valueAt(trail, 'meanC', hours * 3600) as number).toFixed(1)
}

/** Three kits put into the box at six, mixed and read some hours later: what they warm like says how they mix. */
async function threeKits(mixing: number) {
  const seamhand = await open()
  const from = { K1: 5, K2: 8, K3: 12 } as const
  for (const [name, c] of Object.entries(from)) await seamhand.ask(`kit ${name} ${c} mixed box 30`, { at: '02:00' })
  const last = [3, 4, 5].map((hours, index) => [`K${index + 1}`, hours, meanAfter(Object.values(from)[index] as number, hours, mixing)] as const)
  for (const [name, hours, c] of last) await seamhand.ask(`kit ${name} ${c} mixed`, { at: `0${2 + hours}:00` })
  return seamhand
}

describe('how kits of a site warm', () => {
  it('is learned from readings, and said to be', async () => {
    const seamhand = await threeKits(1.2)
    const reply = await seamhand.ask('kit K4 10 mixed box 30', { at: '08:00' })
    const numbers = numbersOf(reply)
    expect(numbers.learnedFrom).toBe(3)
    // The sheet says 5; the readings were made with 1.2.
    expect(numbers.mixing).toBeGreaterThanOrEqual(1)
    expect(numbers.mixing).toBeLessThan(3)
    expect(reply.text).toContain('learned from 3 pairs of readings')
    expect(numbers.likelyAt).not.toBeNull()
    expect(String(numbers.likelyAt) <= String(numbers.readyAt)).toBe(true)
  })

  it('moves the likely course, and neither of the two bounds', async () => {
    const before = numbersOf(await (await open()).ask('kit K4 10 mixed box 30', { at: '08:00' }))
    const after = numbersOf(await (await threeKits(1.2)).ask('kit K4 10 mixed box 30', { at: '08:00' }))
    expect(before).toMatchObject({ learnedFrom: 0, mixing: kit.mixing })
    expect(after.readyAt).toBe(before.readyAt)
    expect(String(after.likelyAt) > String(before.likelyAt)).toBe(true)
    expect(String(after.likelyAt) <= String(after.readyAt)).toBe(true)
  })

  it('stands in the entry of the reading that it was learned by, and goes when that is undone', async () => {
    const seamhand = await threeKits(1.2)
    const entries = (await seamhand.entries()).filter(({ type }) => type === 'kit')
    expect(entries.slice(0, -1).every(({ data }) => data.learned === undefined)).toBe(true)
    expect(entries.at(-1)?.data.learned).toMatchObject({ pairs: 3 })
    await seamhand.ask('undo', { at: '07:05' })
    expect(numbersOf(await seamhand.ask('kit', { at: '07:06' }))).toMatchObject({ learnedFrom: 0, mixing: kit.mixing })
  })

  it('the same log says the same', async () => {
    const [one, other] = [await threeKits(3), await threeKits(3)]
    const learned = async (seamhand: typeof one) => (await seamhand.entries()).findLast(({ type }) => type === 'kit')?.data.learned
    expect(await learned(one)).toEqual(await learned(other))
  })
})
