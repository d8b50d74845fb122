import { expect, it } from 'vitest'
import type { WelderFact } from '../../../src/core/facts.js'
import { coupon } from '../../../src/core/rules/coupon.js'
import { check, now } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

const welder = (name: string, status: WelderFact['status'], widthMm: number | null): WelderFact => {
  return { name, status, lapsedBy: status === 'lapsed' ? 'restart' : null, widthMm, at: widthMm === null ? null : now - 600 }
}
const cleared = welder('robot', 'cleared', 41)

// Source: common practice, no source.
ruleTable('coupon: every welder in use is cleared (common practice, no source)', coupon, 'weld', [
  ['one cleared', { welders: [cleared] }, 'go', null],
  ['failed', { welders: [cleared, welder('hand', 'failed', 30)] }, 'no-go', 'weld:coupon'],
  ['lapsed', { welders: [welder('hand', 'lapsed', 42), cleared] }, 'no-go', 'weld:coupon'],
  ['in use without a coupon', { welders: [cleared, welder('hand', 'none', null)] }, 'unknown', 'weld:coupon'],
  ['a failed one beats one without', { welders: [welder('hand', 'none', null), welder('robot', 'failed', 30)] }, 'no-go', 'weld:coupon'],
  ['no welder', { welders: [] }, 'unknown', 'weld:coupon']
])

it('shows the worst: its width, its time', () => {
  const both = { welders: [cleared, welder('hand', 'cleared', 39), welder('robot2', 'cleared', 44)] }
  expect(check(coupon, 'weld', both)).toMatchObject({ value: 39, unit: 'mm', limit: null, margin: null, origin: 'log', at: now - 600 })
  expect(check(coupon, 'weld', { welders: [] })).toMatchObject({ value: null, origin: null, at: null })
})
