import { expect, it } from 'vitest'
import { humidity } from '../../../src/core/rules/humidity.js'
import { check, forecast, gone, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('humidity: caution above 85 % (from memory)', humidity, 'spray', [
  ['on the caution', { rhPct: reading(85) }, 'go', null],
  ['above it', { rhPct: reading(85.000001) }, 'caution', 'wait:humidity'],
  ['saturated: never a no-go', { rhPct: reading(100) }, 'caution', 'wait:humidity'],
  ['missing', { rhPct: gone }, 'unknown', 'read:humidity'],
  ['too old', { rhPct: tooOld }, 'unknown', 'read:humidity'],
  ['estimate clear', { rhPct: forecast(60, 7) }, 'go', null],
  ['estimate across the caution', { rhPct: forecast(80, 7) }, 'caution', 'wait:humidity'],
  ['estimate clear above', { rhPct: forecast(98, 7) }, 'caution', 'wait:humidity']
])

it('has no no-go bound', () => {
  expect(check(humidity, 'spray', { rhPct: reading(90) })).toMatchObject({ limit: null, margin: null, value: 90, unit: '%' })
})
