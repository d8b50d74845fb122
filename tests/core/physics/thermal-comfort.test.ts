import { heatIndex as library, p_sat } from 'jsthermalcomfort'
import { describe, expect, test } from 'vitest'
import { heatIndexC } from '../../../src/core/physics/heat-index.js'
import { saturationIcePa, saturationWaterPa } from '../../../src/core/physics/saturation.js'

// A general library, jsthermalcomfort 0.0.2, beside ours over a grid. Of what we reckon it has the heat index and the saturation
// pressure; it has neither wind chill nor WBGT (those are held by published rows alone). Its heat index is the bare regression of
// Rothfusz: where the procedure of the NWS differs from that, the differences stand below with their reasons.

const grid = (from: number, to: number, step: number) => Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step)
const toC = (f: number) => (f - 32) / 1.8

interface Cell {
  readonly airF: number
  readonly rhPct: number
  readonly ours: number
  readonly theirs: number
}

const cells: readonly Cell[] = grid(60, 115, 1).flatMap((airF) =>
  grid(5, 100, 5).map((rhPct) => ({
    airF,
    rhPct,
    ours: heatIndexC(toC(airF), rhPct) * 1.8 + 32,
    theirs: library(airF, rhPct, { units: 'IP', round: false })
  }))
)
const simple = ({ airF, rhPct }: Cell) => (0.5 * (airF + 61 + (airF - 68) * 1.2 + rhPct * 0.094) + airF) / 2 < 80
const dry = ({ airF, rhPct }: Cell) => rhPct < 13 && airF >= 80 && airF <= 112
const humid = ({ airF, rhPct }: Cell) => rhPct > 85 && airF >= 80 && airF <= 87

describe('the heat index of a general library', () => {
  test('is ours where the NWS uses the regression as it stands', () => {
    const same = cells.filter((cell) => !simple(cell) && !dry(cell) && !humid(cell))
    expect(same.length).toBeGreaterThan(500)
    for (const { ours, theirs, airF, rhPct } of same) expect(Math.abs(ours - theirs), `${airF} °F, ${rhPct} %`).toBeLessThan(1e-9)
  })

  test('differs in cool air: there the NWS uses the simple formula, to which the regression was never fitted', () => {
    const cool = cells.filter(simple)
    const worst = Math.max(...cool.map(({ ours, theirs }) => Math.abs(ours - theirs)))
    expect(cool.every(({ ours }) => ours < 80)).toBe(true)
    expect(worst, `by up to ${worst.toFixed(1)} °F`).toBeGreaterThan(5)
  })

  test('differs by the two adjustments of the NWS: less in dry air, more in humid', () => {
    for (const cell of cells.filter((each) => !simple(each) && dry(each))) {
      const { airF, rhPct, ours, theirs } = cell
      expect(theirs - ours).toBeCloseTo(((13 - rhPct) / 4) * Math.sqrt((17 - Math.abs(airF - 95)) / 17), 9)
    }
    for (const cell of cells.filter((each) => !simple(each) && humid(each))) {
      const { airF, rhPct, ours, theirs } = cell
      expect(ours - theirs).toBeCloseTo(((rhPct - 85) / 10) * ((87 - airF) / 5), 9)
    }
  })

  test('in °C its coefficients are rounded: up to 0.1 K off its own in °F', () => {
    const off = cells.filter((cell) => !simple(cell) && !dry(cell) && !humid(cell))
    for (const { airF, rhPct, ours } of off) expect(Math.abs(library(toC(airF), rhPct, { round: false }) - toC(ours))).toBeLessThan(0.1)
  })
})

describe('the saturation pressure of a general library', () => {
  // Both are Hyland and Wexler's as in the ASHRAE Handbook; the library rounds to 0.1 Pa, and has ice alone below 0 °C.
  test.each([
    ['over water', grid(0, 60, 2.5), saturationWaterPa],
    ['over ice', grid(-40, -2.5, 2.5), saturationIcePa]
  ] as const)('%s', (_, list, ours) => {
    for (const c of list) expect(Math.abs(ours(c) - p_sat(c)), `${c} °C: ${ours(c)} against ${p_sat(c)} Pa`).toBeLessThan(0.0501)
  })
})
