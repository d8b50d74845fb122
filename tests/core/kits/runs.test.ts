import { describe, expect, test } from 'vitest'
import { kitOpenTimeS } from '../../../src/core/kits/kit-open-time.js'
import { openTimeS } from '../../../src/core/kits/open-time.js'
import { nozzlesFor, runsFor } from '../../../src/core/kits/runs.js'
import { emptyKit } from '../../../src/core/log/states/kit.js'
import { sheet } from '../../support/facts.js'

// Worked by hand from the built-in numbers: the gun at 60 m/min with a fan of 300 mm over sheets of 2 m advances 0.15 m/s, unrolling is
// 2/3 m/s; 5 s to the first sheet, 10 s to roll in. Common practice, no source; the rates are invented.
const built = sheet()
const gelling = (nozzleGelS: number) => ({ ...built, foam: { ...built.foam, nozzleGelS } })

describe('a run of foam', () => {
  test('60 s open: 45 s of spraying, stop and cover after 6.75 m; half a sheet in 55 s is 8.25 m; following has no limit', () => {
    const runs = runsFor(60, built)
    expect(runs?.stopM).toBeCloseTo(6.75, 9)
    expect(runs?.stopEveryM).toBeCloseTo(6.75, 9)
    expect(runs?.flopM).toBeCloseTo(8.25, 9)
    expect(runs?.followM).toBeNull()
    expect(runs?.stopS).toBeCloseTo(5 + 6.75 / (2 / 3) + 10, 9)
    expect(runs?.runsPerSheet).toBe(3)
  })

  test('following is limited where unrolling is the slower', () => {
    const slow = { ...built, crew: { ...built.crew, unrollMMin: 6 } }
    // (60 − 10 − 10) ÷ (1/0.1 − 1/0.15)
    expect(runsFor(60, slow)?.followM).toBeCloseTo(12, 9)
  })

  test('never more than a roll, and nothing where the time is used up before the start', () => {
    expect(runsFor(600, built)?.stopEveryM).toBe(20)
    expect(runsFor(15, built)).toMatchObject({ stopM: 0, stopEveryM: 0, runsPerSheet: null })
    expect(runsFor(null, built)).toBeNull()
    expect(runsFor(Number.NaN, built)).toBeNull()
  })
})

describe('nozzles of a kit', () => {
  test('one for each of the 90 ÷ 38.4 sheets where a stop is over before foam sets in the nozzle', () => {
    // 25.125 s a stop against 30 s.
    expect(nozzlesFor(runsFor(60, built), built)).toEqual({ needed: 3, perKit: 10, short: false, gelsAtStops: false })
  })

  test('one for each run where it is not: 3 runs a sheet', () => {
    expect(nozzlesFor(runsFor(60, built), gelling(25))).toEqual({ needed: 8, perKit: 10, short: false, gelsAtStops: true })
  })

  test('they run out before the foam on a hot deck', () => {
    // 30 s open: 2.25 m a run, 18.4 s a stop, 9 runs a sheet.
    expect(nozzlesFor(runsFor(30, built), gelling(15))).toMatchObject({ needed: 22, short: true })
  })

  test('nothing is said where no run is possible', () => {
    expect(nozzlesFor(runsFor(15, built), built)).toBeNull()
    expect(nozzlesFor(null, built)).toBeNull()
  })
})

describe('open time of a kit', () => {
  const at = 1
  const kit = (gelS: number, substrateC: number) => ({
    ...emptyKit('K1'),
    foam: { value: { signs: [], verdict: 'good' as const, gelS, substrateC }, at, seq: 1 }
  })
  const plain = (c: number) => openTimeS(c, built.foam.openTime) as number

  test('is scaled by its test spray as long as the substrate stays within 5 K of it', () => {
    const scale = 40 / plain(20)
    expect(kitOpenTimeS(20, kit(40, 20), built)).toBeCloseTo(40, 9)
    expect(kitOpenTimeS(25, kit(40, 20), built)).toBeCloseTo(plain(25) * scale, 9)
    expect(kitOpenTimeS(15, kit(40, 20), built)).toBeCloseTo(plain(15) * scale, 9)
    expect(kitOpenTimeS(25.1, kit(40, 20), built)).toBe(plain(25.1))
    expect(kitOpenTimeS(14.9, kit(40, 20), built)).toBe(plain(14.9))
  })

  test('another kit has none', () => {
    expect(kitOpenTimeS(20, emptyKit('K2'), built)).toBe(plain(20))
    expect(kitOpenTimeS(90, kit(40, 20), built)).toBeNull()
  })
})
