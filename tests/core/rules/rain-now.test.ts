import { expect, it } from 'vitest'
import { rainNow } from '../../../src/core/rules/rain-now.js'
import { check, forecast, gone, type Row, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
const rows: readonly Row[] = [
  ['falling', { rainFalling: said(true) }, 'no-go', 'wait:rain'],
  ['none', { rainFalling: said(false) }, 'go', null],
  ['falling by forecast', { rainFalling: forecast(true) }, 'no-go', 'wait:rain'],
  ['none by forecast', { rainFalling: forecast(false) }, 'go', null],
  ['nothing known', { rainFalling: gone }, 'unknown', 'state:rain'],
  ['too old', { rainFalling: tooOld }, 'unknown', 'state:rain']
]
ruleTable('rain-now, spraying (common practice, no source)', rainNow, 'spray', rows)
ruleTable('rain-now, laying (common practice, no source)', rainNow, 'lay', rows)
ruleTable('rain-now, welding (common practice, no source)', rainNow, 'weld', rows)

it('is a statement: no limit, no margin, stale when it is too old', () => {
  expect(check(rainNow, 'spray', { rainFalling: said(true) })).toMatchObject({ value: true, limit: null, margin: null, origin: 'statement' })
  expect(check(rainNow, 'spray', { rainFalling: tooOld })).toMatchObject({ value: null, stale: true })
})
