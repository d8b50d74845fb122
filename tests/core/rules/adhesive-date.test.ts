import { expect, it } from 'vitest'
import { adhesiveDate } from '../../../src/core/rules/adhesive-date.js'
import { check, gone, said } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

const left = (daysLeft: number) => ({ kit: { expiresOn: said('2026-05-04'), daysLeft } })

// Source: common practice, no source.
ruleTable('adhesive-date: not past expiry, caution in the last 14 days (common practice, no source)', adhesiveDate, 'spray', [
  ['15 days left', left(15), 'go', null],
  ['14 days left', left(14), 'caution', null],
  ['its last day', left(0), 'caution', null],
  ['the day after', left(-1), 'no-go', 'change:kit'],
  ['not known', { kit: { expiresOn: gone, daysLeft: null } }, 'unknown', 'state:expiry']
])

it('counts in days, without a limit', () => {
  expect(check(adhesiveDate, 'spray', left(-3))).toMatchObject({ value: -3, unit: 'd', limit: null, margin: null, origin: 'statement' })
})
