import { describe, expect, test } from 'vitest'
import { type Grid, gridOf, interiorC } from '../../../src/core/roof/grid.js'
import { eigenOf } from '../../../src/core/roof/modes.js'
import { seeded } from '../../support/random-log.js'

/** A step of a build-up by elimination (Thomas), as any textbook has it: cells after a step with the surface at `surfaceC`. */
function eliminated({ cells, perStep, conductance }: Grid, cellC: readonly number[], surfaceC: number): number[] {
  const at = (values: ArrayLike<number>, i: number) => values[i] as number
  const diagonal = Array.from({ length: cells }, (_, i) => at(perStep, i) + at(conductance, i) + at(conductance, i + 1))
  const right = cellC.map((c, i) => at(perStep, i) * c)
  right[0] = at(right, 0) + at(conductance, 0) * surfaceC
  right[cells - 1] = at(right, cells - 1) + at(conductance, cells) * interiorC
  for (let i = 1; i < cells; i += 1) {
    const share = at(conductance, i) / at(diagonal, i - 1)
    diagonal[i] = at(diagonal, i) - share * at(conductance, i)
    right[i] = at(right, i) + share * at(right, i - 1)
  }
  const out = new Array<number>(cells).fill(0)
  for (let i = cells - 1; i >= 0; i -= 1) out[i] = (at(right, i) + (i + 1 < cells ? at(conductance, i + 1) * at(out, i + 1) : 0)) / at(diagonal, i)
  return out
}

function byModes(grid: Grid, modes: readonly number[], surfaceC: number): number[] {
  return modes.map((mode, k) => (grid.fade[k] as number) * mode + (grid.taken[k] as number) * surfaceC)
}

function cellsOf({ toCells, restC }: Grid, modes: readonly number[]): number[] {
  return toCells.map((row, i) => modes.reduce((sum, mode, k) => sum + (row[k] as number) * mode, restC[i] as number))
}

describe('a matrix taken apart', () => {
  test('second differences: 2 − 2·cos(kπ/(n + 1)), sines for vectors (textbook result, from memory)', () => {
    for (const n of [1, 2, 7, 30]) {
      const matrix = Array.from({ length: n }, (_, i) => Float64Array.from({ length: n }, (__, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)))
      const { values, vectors } = eigenOf(matrix)
      const expected = Array.from({ length: n }, (_, k) => 2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1)))
      ;[...values].sort((a, b) => a - b).forEach((value, k) => void expect(value).toBeCloseTo(expected[k] as number, 12))
      for (const [k, vector] of vectors.entries()) {
        const turned = matrix.map((row) => row.reduce((sum, each, j) => sum + each * (vector[j] as number), 0))
        turned.forEach((each, i) => void expect(each).toBeCloseTo((values[k] as number) * (vector[i] as number), 12))
      }
    }
  })
})

describe('a build-up by its modes', () => {
  test('a hundred steps of any build-up end where elimination ends', () => {
    const random = seeded(11)
    for (let round = 0; round < 40; round += 1) {
      const layers = Array.from({ length: 1 + Math.floor(random() * 4) }, () => ({
        thicknessM: 0.0005 * 400 ** random(),
        rhoKgM3: 20 * 400 ** random(),
        cJKgK: 400 + 1600 * random(),
        kWMK: 0.02 * 2500 ** random()
      }))
      const grid = gridOf(layers, 300)
      let cells = Array.from({ length: grid.cells }, () => -20 + 60 * random())
      let modes = grid.toModes.map((row) => row.reduce((sum, share, i) => sum + share * ((cells[i] as number) - (grid.restC[i] as number)), 0))
      for (let step = 0; step < 100; step += 1) {
        const surfaceC = -20 + 80 * random()
        const heldAtZero = (eliminated(grid, cells, 0)[0] as number) - (grid.restC[0] as number)
        expect(modes.reduce((sum, mode, k) => sum + (grid.given[k] as number) * mode, 0)).toBeCloseTo(heldAtZero, 8)
        cells = eliminated(grid, cells, surfaceC)
        modes = byModes(grid, modes, surfaceC)
      }
      cellsOf(grid, modes).forEach((c, i) => void expect(c).toBeCloseTo(cells[i] as number, 8))
      const warmed = (eliminated(grid, Array(grid.cells).fill(0), 1)[0] as number) - (eliminated(grid, Array(grid.cells).fill(0), 0)[0] as number)
      expect(grid.downWm2K).toBeCloseTo((grid.conductance[0] as number) * (1 - warmed), 6)
    }
  })

  test('the same layers give the same grid, another step another', () => {
    const layers = [{ thicknessM: 0.1, rhoKgM3: 30, cJKgK: 1400, kWMK: 0.03 }]
    expect(gridOf(layers, 300)).toBe(gridOf(layers, 300))
    expect(gridOf(layers, 60).fade[0]).toBeGreaterThan(gridOf(layers, 300).fade[0] as number)
  })
})
