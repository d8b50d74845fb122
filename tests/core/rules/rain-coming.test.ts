import { expect, it } from 'vitest'
import { rainComing } from '../../../src/core/rules/rain-coming.js'
import { check, forecast, gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory. A chance on a bound is on its worse side.
ruleTable('rain-coming by chance: no-go from 50 %, caution from 20 % (from memory)', rainComing, 'spray', [
  ['below the caution', { rainChancePct: said(19.999999) }, 'go', null],
  ['on the caution', { rainChancePct: said(20) }, 'caution', 'close:openings'],
  ['below the bound', { rainChancePct: said(49.999999) }, 'caution', 'close:openings'],
  ['on the bound', { rainChancePct: said(50) }, 'no-go', 'wait:rain'],
  ['certain', { rainChancePct: said(100) }, 'no-go', 'wait:rain'],
  ['none', { rainChancePct: said(0) }, 'go', null],
  ['a chance beats an amount', { rainChancePct: said(10), rainAmountMm: forecast(5) }, 'go', null],
  ['estimate clear', { rainChancePct: forecast(5, 5) }, 'go', null],
  ['estimate across the caution', { rainChancePct: forecast(20, 5) }, 'caution', 'close:openings'],
  ['estimate reaching the bound exactly', { rainChancePct: forecast(50 - 1.645, 1) }, 'unknown', 'state:chance'],
  ['estimate across the bound', { rainChancePct: forecast(48, 5) }, 'unknown', 'state:chance'],
  ['estimate clear above', { rainChancePct: forecast(80, 5) }, 'no-go', 'wait:rain'],
  ['nothing known', { rainChancePct: gone }, 'unknown', 'state:chance'],
  ['too old', { rainChancePct: tooOld }, 'unknown', 'state:chance']
])

// Source: from memory.
ruleTable('rain-coming by amount: no-go from 0.2 mm, caution above 0 (from memory)', rainComing, 'lay', [
  ['none', { rainChancePct: gone, rainAmountMm: forecast(0) }, 'go', null],
  ['some', { rainChancePct: gone, rainAmountMm: forecast(0.000001) }, 'caution', 'close:openings'],
  ['below the bound', { rainChancePct: gone, rainAmountMm: forecast(0.199999) }, 'caution', 'close:openings'],
  ['on the bound', { rainChancePct: gone, rainAmountMm: forecast(0.2) }, 'no-go', 'wait:rain'],
  ['estimate across the bound', { rainChancePct: gone, rainAmountMm: forecast(0.2, 0.1) }, 'unknown', 'state:chance']
])

it('never stops welding', () => {
  expect(Object.keys(rainComing.judges)).toEqual(['spray', 'lay'])
})

it('tells which of the two it judged by its unit', () => {
  expect(check(rainComing, 'spray', { rainChancePct: said(30) })).toMatchObject({ unit: '%', limit: 50, margin: 20 })
  expect(check(rainComing, 'spray', { rainChancePct: gone, rainAmountMm: forecast(0.1) })).toMatchObject({ unit: 'mm', limit: 0.2, margin: 0.1 })
  expect(check(rainComing, 'spray', { rainChancePct: tooOld })?.stale).toBe(true)
})
