import { describe, expect, test } from 'vitest'
import { refused, said } from './reader.js'

/** outside contract §5, ends included: message with `_` for the number, unit, least, most; a least in brackets is itself outside. */
const ranges: readonly (readonly [message: string, unit: string, min: number, max: number, open?: 'open'])[] = [
  ['air air _', 'C', -60, 60],
  ['air deck _', 'C', -60, 100],
  ['air sheet _', 'C', -60, 100],
  ['air rh _', '%', 0, 100, 'open'],
  ['air dew _', 'C', -60, 40],
  ['air wind _', 'km/h', 0, 300],
  ['air gust _', 'km/h', 0, 300],
  ['air sun _', 'W/m2', 0, 1500],
  ['air rain _', '%', 0, 100],
  ['kit K7 _', 'C', -40, 80],
  ['kit iso _', 'C', -40, 80],
  ['kit resin _', 'C', -40, 80],
  ['weld robot _', 'mm', 0, 300, 'open'],
  ['weld robot set _', 'C', 0, 700],
  ['weld robot speed _', 'm/min', 0, 30],
  ['weld robot 40 thick _', 'mm', 0, 10],
  ['strip _', 'm', 0, 10, 'open'],
  ['strip 2 gap _', 'mm', -100, 150],
  ['strip 2 sheets _', '', 1, 100],
  ['probe course 1 _ mm', 'mm', 0, 10_000, 'open'],
  ['probe course 1 40 at _', 'm', 0, 1000],
  ['kit K1 left _ 50 %', '%', 0, 100],
  ['kit K1 left 50 _', '%', 0, 100],
  ['foam _', 's', 1, 600]
]

const rows = ranges.map(([message, unit, min, max, open]) => ({ message, unit, min, max, open }))

describe.each(rows)('$message', ({ message, unit, min, max, open }) => {
  const bounds = (value: number): string => message.replace('_', String(value))

  test('takes its ends', () => {
    expect(said(bounds(max))).toBeDefined()
    if (open) expect(refused(bounds(min)).code).toBe('out-of-range')
    else expect(said(bounds(min))).toBeDefined()
  })

  test('refuses what lies beyond, with the range', () => {
    for (const value of [min - 1, max + 1]) {
      const { code, detail } = refused(bounds(value))
      expect(code).toBe('out-of-range')
      expect(detail).toMatchObject({ min, max, unit })
    }
  })
})

test('a range holds in JSON units: 140 F is 60 C', () => {
  expect(said('air 140 F')).toMatchObject({ reading: { airC: 60 } })
  expect(refused('air 140.1 F')).toMatchObject({ code: 'out-of-range', word: '140.1 F', detail: { label: 'air', min: -60, max: 60, unit: 'C' } })
})

test('a count is whole', () => {
  expect(refused('strip 2 sheets 1.5').code).toBe('bad-number')
  expect(refused('probe course 1.5 40 mm').code).toBe('bad-number')
})
