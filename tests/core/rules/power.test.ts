import { expect, it } from 'vitest'
import { power } from '../../../src/core/rules/power.js'
import { check, gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('power: drop ≤ 5 %, caution above 3 (from memory)', power, 'weld', [
  ['on the caution', { dropPct: said(3) }, 'go', null],
  ['above the caution', { dropPct: said(3.000001) }, 'caution', 'shorten:lead'],
  ['on the bound', { dropPct: said(5) }, 'caution', 'shorten:lead'],
  ['above the bound', { dropPct: said(5.000001) }, 'no-go', 'shorten:lead'],
  ['above the bound, measured at the tool', { dropPct: said(8), powerMeasured: true }, 'caution', 'shorten:lead'],
  ['measured at the tool and good', { dropPct: said(1), powerMeasured: true }, 'go', null],
  ['nothing stated today', { dropPct: gone }, 'unknown', 'state:lead'],
  ['nothing stated today, measured flag alone', { dropPct: gone, powerMeasured: true }, 'unknown', 'state:lead'],
  ['stated on another day', { dropPct: tooOld }, 'unknown', 'state:lead']
])

it('tells limit and margin', () => {
  expect(check(power, 'weld', { dropPct: said(4) })).toMatchObject({ value: 4, unit: '%', limit: 5, margin: 1, ease: 0.5 })
})
