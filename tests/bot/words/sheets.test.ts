import { describe, expect, test } from 'vitest'
import type { SheetsSaid } from '../../../src/bot/words/said.js'
import { metric, refused, said, us } from './reader.js'

function sheetsOf(text: string, reader = metric): SheetsSaid {
  const one = said(text, reader)
  if (one.command !== 'sheets') expect.fail(`${text} is ${one.command}`)
  return one.sheets
}

function outerOf(text: string, reader = metric) {
  return sheetsOf(text, reader).outline?.outer.map(({ at }) => at)
}

const rectangle = [
  [0, 0],
  [24_000, 0],
  [24_000, 36_000],
  [0, 36_000]
]

describe('an outline said as a rectangle', () => {
  test.each([
    'sheets 24x36 m',
    'sheets 24x36',
    '/sheets 24 x 36 m',
    'sheets 24m x 36m',
    'sheets 24mx36m',
    'sheets 24 by 36 m',
    'sheets 24×36 m',
    'sheets 2400x3600 cm',
    'láminas 24,0 por 36 m',
    'feuilles 24 sur 36 m',
    'lés 24,0 x 36,0',
    'sheets 24 m x 3600 cm',
    'sheets 0,0 24,0 24,36 0,36',
    'sheets 0,0 24,0 24,36 0,36 m',
    'sheets 0 m, 0 m 24 m, 0 m 24 m, 36 m 0 m, 36 m',
    'sheets 0.0,0 24.0,0; 24,36.0; 0,36'
  ])('%s', (text) => {
    expect(outerOf(text)).toEqual(rectangle)
  })

  test.each(["sheets 80'x120'", 'sheets 80x120', 'sheets 80 ft x 120 ft', "sheets 0,0 80,0 80',120' 0,120"])('%s in feet', (text) => {
    // 1 ft = 0.3048 m exactly, by definition (1959 agreement).
    expect(outerOf(text, us)?.[2]).toEqual([24_384, 36_576])
  })

  test('feet and inches', () => {
    expect(outerOf('sheets 16\'6" x 20 ft')?.[2]?.[0]).toBeCloseTo(16.5 * 304.8, 6)
  })

  test('nothing said is the site’s roof', () => {
    expect(sheetsOf('sheets along y')).toMatchObject({ outline: null, along: 'y' })
  })
})

describe('notches and openings', () => {
  test.each(['notch 6x8 ne', 'notch ne 6x8', 'muesca 6x8 noreste', 'encoche 6x8 nord-est', 'notch 6x8 m NE'])('%s', (notch) => {
    const corners = outerOf(`sheets 24x36 ${notch}`)
    expect(corners).toEqual([
      [0, 0],
      [24_000, 0],
      [24_000, 28_000],
      [18_000, 28_000],
      [18_000, 36_000],
      [0, 36_000]
    ])
  })

  test('every corner takes one, in the same sense', () => {
    const corners = outerOf('sheets 10x10 notch 1x2 sw notch 2x1 se notch 1x1 ne notch 3x3 no') ?? []
    const twice = corners.reduce((sum, [x, y], i) => sum + x * (corners[(i + 1) % 12]?.[1] ?? 0) - y * (corners[(i + 1) % 12]?.[0] ?? 0), 0)
    // 100 − 2 − 2 − 1 − 9 m², anticlockwise: the shoelace formula.
    expect([corners.length, twice / 2e6]).toEqual([12, 86])
  })

  test.each([
    'opening 2x1.2 at 5,9',
    'opening at 5,9 2x1.2',
    'abertura 2x1,2 a 5,9',
    'ouverture 2 x 1,2 m à 5,9 m',
    'skylight 5,9 7,9 7,10.2 5,10.2'
  ])('%s', (opening) => {
    const openings = sheetsOf(`sheets 24x36 ${opening}`).outline?.openings ?? []
    expect(openings.map((corners) => corners.map(({ at }) => at))).toEqual([
      [
        [5000, 9000],
        [7000, 9000],
        [7000, 10_200],
        [5000, 10_200]
      ]
    ])
  })

  test('what goes with it, in any order', () => {
    const one = sheetsOf('sheets zones en height 8 24x36 along x sheet 1.5 lap 100 roll 25')
    expect(one).toMatchObject({ zones: 'en', heightM: 8, along: 'x', widthM: 1.5, lapMm: 100, rollM: 25 })
  })
})

describe('what is not understood', () => {
  test.each([
    ['sheets 1,250x36 m', 'ambiguous-number', '1,250'],
    ['sheets 0x36', 'out-of-range', '0'],
    ['sheets -3x4', 'out-of-range', '-3'],
    ['sheets 24x2000 m', 'out-of-range', '2000 m'],
    ['sheets 24 36', 'unknown-word', '24'],
    ['sheets 5,9,7,9', 'bad-number', '9,7,9'],
    ['sheets 24x36 kg', 'unknown-word', 'kg'],
    ['sheets 24x36 F', 'wrong-unit', '36 F'],
    ['sheets 24x36 12x4', 'duplicate', '12x4'],
    ['sheets 24x36 0,0 1,0 1,1', 'inconsistent', '24x36'],
    ['sheets 0,0 9,0 9,9 0,9 notch 1x1 ne', 'inconsistent', 'notch 1x1 ne'],
    ['sheets 24x36 notch 6x8', 'missing', 'notch'],
    ['sheets 24x36 notch 6x8 ne notch 1x1 ne', 'duplicate', 'notch 1x1 ne'],
    ['sheets 24x36 notch 24x8 ne', 'inconsistent', 'notch 24x8 ne'],
    ['sheets 24x36 opening 2x1.2', 'missing', 'opening'],
    ['sheets 24x36 opening at 5,9', 'missing', 'opening'],
    ['sheets opening 2x1.2 at 5,9', 'missing', 'outline'],
    ['sheets 24x36 at 5,9', 'inconsistent', 'at'],
    ['sheets 24x36 along z', 'unknown-word', 'z'],
    ['sheets 24x36 zones din', 'unknown-word', 'din']
  ])('%s: %s at %s', (text, code, word) => {
    expect(refused(text)).toMatchObject({ code, word })
  })
})
