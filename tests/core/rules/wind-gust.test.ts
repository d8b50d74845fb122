import { expect, it } from 'vitest'
import { windGust } from '../../../src/core/rules/wind-gust.js'
import { forecast, gone, type Row, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('wind-gust, spraying: ≤ 35 km/h, caution above 25 (from memory)', windGust, 'spray', [
  ['on the caution', { gustKmh: reading(25) }, 'go', null],
  ['above the caution', { gustKmh: reading(25.000001) }, 'caution', 'shield:wind'],
  ['on the bound', { gustKmh: reading(35) }, 'caution', 'shield:wind'],
  ['above the bound', { gustKmh: reading(35.000001) }, 'no-go', 'wait:wind'],
  ['missing', { gustKmh: gone }, 'unknown', 'read:gust'],
  ['too old', { gustKmh: tooOld }, 'unknown', 'read:gust'],
  ['estimate clear', { gustKmh: forecast(10, 8) }, 'go', null],
  ['estimate across the caution', { gustKmh: forecast(20, 8) }, 'caution', 'shield:wind'],
  ['estimate across the bound', { gustKmh: forecast(30, 8) }, 'unknown', 'read:gust'],
  ['estimate clear above', { gustKmh: forecast(60, 8) }, 'no-go', 'wait:wind']
])

// Source: from memory.
const people: readonly Row[] = [
  ['on the caution', { gustKmh: reading(42) }, 'go', null],
  ['above the caution', { gustKmh: reading(42.000001) }, 'caution', 'wait:wind'],
  ['on the bound', { gustKmh: reading(56) }, 'caution', 'wait:wind'],
  ['above the bound', { gustKmh: reading(56.000001) }, 'no-go', 'wait:wind'],
  ['missing', { gustKmh: gone }, 'unknown', 'read:gust']
]
ruleTable('wind-gust, laying: ≤ 56 km/h, caution above 42 (from memory)', windGust, 'lay', people)
ruleTable('wind-gust, people: ≤ 56 km/h, caution above 42 (from memory)', windGust, 'people', people)

it('does not judge welding', () => {
  expect('weld' in windGust.judges).toBe(false)
})
