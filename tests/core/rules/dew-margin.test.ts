import { describe, expect, it } from 'vitest'
import { dewMargin } from '../../../src/core/rules/dew-margin.js'
import { check, forecast, gone, model, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'
import { expected, rowsOf } from '../../truth/rows.js'

// Source: ISO 8502-4 practice, a surface at least 3 °C above the dew point, pass on 3.0.
ruleTable('dew-margin, spraying: ≥ 3 K, caution below 4 (ISO 8502-4 practice)', dewMargin, 'spray', [
  ['below the bound', { substrateDewMarginK: reading(2.999999) }, 'no-go', 'wait:dew'],
  ['on the bound', { substrateDewMarginK: reading(3) }, 'caution', 'wait:dew'],
  ['on the caution', { substrateDewMarginK: reading(4) }, 'go', null],
  ['substrate missing', { substrateDewMarginK: gone, substrateC: gone }, 'unknown', 'read:substrate'],
  ['air missing', { substrateDewMarginK: gone, airC: gone }, 'unknown', 'read:air'],
  ['humidity missing', { substrateDewMarginK: gone, rhPct: gone }, 'unknown', 'read:humidity'],
  ['too old', { substrateDewMarginK: tooOld, substrateC: tooOld }, 'unknown', 'read:substrate'],
  ['estimate clear', { substrateDewMarginK: model(7, 1.5) }, 'go', null],
  ['estimate across the caution', { substrateDewMarginK: model(5, 1) }, 'caution', 'wait:dew'],
  ['estimate across the bound, substrate modelled', { substrateDewMarginK: model(4, 1), substrateC: model(14, 1) }, 'unknown', 'read:substrate'],
  ['estimate across the bound, humidity forecast', { substrateDewMarginK: model(4, 1), rhPct: forecast(60, 7) }, 'unknown', 'read:humidity'],
  ['estimate clear below', { substrateDewMarginK: model(0, 1) }, 'no-go', 'wait:dew']
])

// Source: from memory.
ruleTable('dew-margin, welding: ≥ 1 K, caution below 3 (from memory)', dewMargin, 'weld', [
  ['below the bound', { sheetDewMarginK: reading(0.999999) }, 'no-go', 'wait:dew'],
  ['on the bound', { sheetDewMarginK: reading(1) }, 'caution', 'wait:dew'],
  ['on the caution', { sheetDewMarginK: reading(3) }, 'go', null],
  ['sheet missing', { sheetDewMarginK: gone, sheetC: gone }, 'unknown', 'read:sheet'],
  ['estimate across the bound', { sheetDewMarginK: model(2, 1), sheetC: model(12, 1) }, 'unknown', 'read:sheet']
])

it('looks at the surface that is worked on', () => {
  const dewed = { substrateDewMarginK: reading(0), sheetDewMarginK: reading(5) }
  expect(check(dewMargin, 'spray', dewed)?.value).toBe(0)
  expect(check(dewMargin, 'weld', dewed)?.value).toBe(5)
})

// Source: each row of the file names its own (a coating-inspection hand-out with worked readings; the 3 °C rule computed).
describe('published readings against the 3 °C rule', () => {
  const rows = rowsOf('psychrometrics.json', '1f').filter((row) => 'margin' in row.expected && 'pass' in row.expected)

  it('has rows', () => {
    expect(rows.length).toBeGreaterThan(5)
  })

  it.each(rows.map((row) => [row.id, row.quantity, row] as const))('%s %s', (_, __, row) => {
    const outcome = check(dewMargin, 'spray', { substrateDewMarginK: reading(expected(row, 'margin')) })?.outcome
    expect(outcome !== 'no-go').toBe(expected(row, 'pass') === 1)
  })
})
