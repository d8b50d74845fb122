import { airTemperature } from '../../../src/core/rules/air-temperature.js'
import { forecast, gone, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('air-temperature, spraying: ≥ 5 °C, caution below 7 (from memory)', airTemperature, 'spray', [
  ['below the bound', { airC: reading(4.999999) }, 'no-go', 'wait:air'],
  ['on the bound', { airC: reading(5) }, 'caution', 'wait:air'],
  ['below the caution', { airC: reading(6.999999) }, 'caution', 'wait:air'],
  ['on the caution', { airC: reading(7) }, 'go', null],
  ['far above', { airC: reading(45) }, 'go', null],
  ['missing', { airC: gone }, 'unknown', 'read:air'],
  ['too old', { airC: tooOld }, 'unknown', 'read:air'],
  ['not a number', { airC: reading(Number.NaN) }, 'unknown', 'read:air'],
  ['estimate clear above', { airC: forecast(10, 1.5) }, 'go', null],
  ['estimate across the caution', { airC: forecast(8, 1.5) }, 'caution', 'wait:air'],
  ['estimate across the bound', { airC: forecast(7, 1.5) }, 'unknown', 'read:air'],
  ['estimate just clear of the bound: 5 + 1.645 × 1', { airC: forecast(6.645, 1) }, 'caution', 'wait:air'],
  ['estimate just not clear of the bound', { airC: forecast(6.644, 1) }, 'unknown', 'read:air'],
  ['estimate clear below', { airC: forecast(2, 1.5) }, 'no-go', 'wait:air'],
  ['estimate without a known spread', { airC: forecast(20, Number.NaN) }, 'unknown', 'read:air']
])

// Source: from memory.
ruleTable('air-temperature, welding: ≥ −5 °C, caution below 5 (from memory)', airTemperature, 'weld', [
  ['below the bound', { airC: reading(-5.000001) }, 'no-go', 'wait:air'],
  ['on the bound', { airC: reading(-5) }, 'caution', 'wait:air'],
  ['below the caution', { airC: reading(4.999999) }, 'caution', 'wait:air'],
  ['on the caution', { airC: reading(5) }, 'go', null],
  ['missing', { airC: gone }, 'unknown', 'read:air'],
  ['estimate across the bound', { airC: forecast(-4, 1.5) }, 'unknown', 'read:air']
])
