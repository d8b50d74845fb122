import { expect, it } from 'vitest'
import { daylight } from '../../../src/core/rules/daylight.js'
import { check, now } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source. Minutes to sunset less the closing-up time.
ruleTable('daylight: ≥ 0 min, caution below 30 (common practice, no source)', daylight, 'spray', [
  ['below the bound', { daylightMin: -0.000001 }, 'no-go', 'wait:daylight'],
  ['on the bound', { daylightMin: 0 }, 'caution', 'wait:daylight'],
  ['below the caution', { daylightMin: 29.999999 }, 'caution', 'wait:daylight'],
  ['on the caution', { daylightMin: 30 }, 'go', null],
  ['sun down, whatever the number', { daylightMin: 900, sunUp: false }, 'no-go', 'wait:daylight'],
  ['polar day', { daylightMin: null, sunUp: true }, 'go', null],
  ['polar night', { daylightMin: null, sunUp: false }, 'no-go', 'wait:daylight']
])

it('is reckoned for every activity that must close up', () => {
  expect(Object.keys(daylight.judges)).toEqual(['spray', 'lay', 'weld'])
  expect(check(daylight, 'weld', { daylightMin: 45 })).toMatchObject({ value: 45, unit: 'min', limit: 0, margin: 45, spread: 0, at: now })
})
