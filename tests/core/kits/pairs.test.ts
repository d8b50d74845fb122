import { describe, expect, test } from 'vitest'
import { pairsOf } from '../../../src/core/kits/pairs.js'
import type { KitData } from '../../../src/core/log/data.js'
import type { Step } from '../../../src/core/log/states/noted.js'
import { sheet } from '../../support/facts.js'

const { kit } = sheet()
const six = 1_777_860_000
const hourS = 3600

/** Entries of one kit, each at an hour after six. */
function pairs(...said: readonly (readonly [hour: number, data: KitData | 'laid'])[]) {
  const steps = said.map(([hour, data], index): Step => {
    const laid = data === 'laid'
    return {
      seq: index + 1,
      at: six + hour * hourS,
      type: laid ? 'laid' : 'kit',
      subject: 'kit:K1',
      data: laid ? { areaM2: 20 } : { ...(data as object) }
    }
  })
  return pairsOf(steps, kit)
}

const both = (c: number): KitData => ({ isoC: c, resinC: c })
const box: KitData = { place: 'box', placeC: 30 }

describe('pairs of readings of a kit', () => {
  test('the first reading and the next of the mixed kit, in the box that was stated', () => {
    const [pair, ...more] = pairs([0, { ...both(10), ...box }], [4, { ...both(18), mixed: true }])
    expect(more).toEqual([])
    expect(pair).toMatchObject({ from: { at: six, c: 10 }, mixed: { at: six + 4 * hourS, c: 18 } })
    expect(pair?.around(six + hourS)).toEqual({ toC: 30, hWM2K: kit.hWM2K })
  })

  test('parts read apart are a pair each', () => {
    expect(
      pairs([0, { isoC: 10, resinC: 11, ...box }], [4, { isoC: 17, resinC: 19, mixed: true }]).map(({ from, mixed }) => [from.c, mixed.c])
    ).toEqual([
      [10, 17],
      [11, 19]
    ])
  })

  test('a shell read in between ends none and begins none', () => {
    const [pair, ...more] = pairs([0, { ...both(10), ...box }], [2, both(25)], [4, { ...both(18), mixed: true }])
    expect(more).toEqual([])
    expect(pair?.from.c).toBe(10)
  })

  test('mixed half an hour before still counts, longer does not', () => {
    expect(pairs([0, { ...both(10), ...box }], [3.5, { mixed: true }], [4, both(18)])).toHaveLength(1)
    expect(pairs([0, { ...both(10), ...box }], [3.4, { mixed: true }], [4, both(18)])).toHaveLength(0)
  })

  test('a mixing that nobody read, spraying in between, or two days apart: none', () => {
    expect(pairs([0, { ...both(10), ...box }], [1, { mixed: true }], [4, { ...both(18), mixed: true }])).toHaveLength(0)
    expect(pairs([0, { ...both(10), ...box }], [2, 'laid'], [4, { ...both(18), mixed: true }])).toHaveLength(0)
    expect(pairs([0, { ...both(10), ...box }], [2, { usedM2: 10 }], [4, { ...both(18), mixed: true }])).toHaveLength(0)
    expect(pairs([0, { ...both(10), ...box }], [49, { ...both(18), mixed: true }])).toHaveLength(0)
  })

  test('moved in between: the surroundings change with it; nothing is known of a deck nobody stated', () => {
    const [pair] = pairs([0, { ...both(10), place: 'store', placeC: 12 }], [2, box], [6, { ...both(18), mixed: true }])
    expect(pair?.around(six + 1.9 * hourS)?.toC).toBe(12)
    expect(pair?.around(six + 2.1 * hourS)?.toC).toBe(30)
    const [onDeck] = pairs([0, { ...both(10), place: 'deck' }], [6, { ...both(18), mixed: true }])
    expect(onDeck?.around(six + hourS)).toBeNull()
    const [nowhere] = pairs([0, both(10)], [6, { ...both(18), mixed: true }])
    expect(nowhere?.around(six + hourS)).toBeNull()
  })
})
