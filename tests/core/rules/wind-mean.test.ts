import { windMean } from '../../../src/core/rules/wind-mean.js'
import { forecast, gone, type Row, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('wind-mean, spraying: ≤ 25 km/h, caution above 15 (from memory)', windMean, 'spray', [
  ['on the caution', { windKmh: reading(15) }, 'go', null],
  ['above the caution', { windKmh: reading(15.000001) }, 'caution', 'shield:wind'],
  ['on the bound', { windKmh: reading(25) }, 'caution', 'shield:wind'],
  ['above the bound', { windKmh: reading(25.000001) }, 'no-go', 'wait:wind'],
  ['missing', { windKmh: gone }, 'unknown', 'read:wind'],
  ['too old', { windKmh: tooOld }, 'unknown', 'read:wind'],
  ['estimate clear', { windKmh: forecast(6, 5) }, 'go', null],
  ['estimate across the caution', { windKmh: forecast(14, 5) }, 'caution', 'shield:wind'],
  ['estimate across the bound', { windKmh: forecast(20, 5) }, 'unknown', 'read:wind'],
  ['estimate clear above', { windKmh: forecast(40, 5) }, 'no-go', 'wait:wind']
])

// Source: HSE roof work advice, 23 mph mean (37.01 km/h).
const people: readonly Row[] = [
  ['on the caution', { windKmh: reading(27) }, 'go', null],
  ['above the caution', { windKmh: reading(27.000001) }, 'caution', 'wait:wind'],
  ['on the bound', { windKmh: reading(37) }, 'caution', 'wait:wind'],
  ['above the bound', { windKmh: reading(37.000001) }, 'no-go', 'wait:wind'],
  ['missing', { windKmh: gone }, 'unknown', 'read:wind'],
  ['estimate across the bound', { windKmh: forecast(33, 5) }, 'unknown', 'read:wind']
]
ruleTable('wind-mean, laying: ≤ 37 km/h, caution above 27 (HSE roof work advice; caution from memory)', windMean, 'lay', people)
ruleTable('wind-mean, people: ≤ 37 km/h, caution above 27 (HSE roof work advice; caution from memory)', windMean, 'people', people)

// Source: from memory.
ruleTable('wind-mean, welding: ≤ 40 km/h, caution above 25 (from memory)', windMean, 'weld', [
  ['on the caution', { windKmh: reading(25) }, 'go', null],
  ['above the caution', { windKmh: reading(25.000001) }, 'caution', 'shield:wind'],
  ['on the bound', { windKmh: reading(40) }, 'caution', 'shield:wind'],
  ['above the bound', { windKmh: reading(40.000001) }, 'no-go', 'wait:wind'],
  ['missing', { windKmh: gone }, 'unknown', 'read:wind']
])
