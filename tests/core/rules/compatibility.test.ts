import { expect, it } from 'vitest'
import { compatibility } from '../../../src/core/rules/compatibility.js'
import { check, gone, type Row, said } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source (bitumen); from memory (other materials).
const rows: readonly Row[] = [
  ['compatible or separated', { compatibility: said('compatible') }, 'go', null],
  ['the maker must be asked', { compatibility: said('ask') }, 'caution', 'ask:maker'],
  ['contact', { compatibility: said('contact') }, 'no-go', 'separate:contact'],
  ['never stated', { compatibility: gone }, 'unknown', 'state:compatibility']
]
ruleTable('compatibility, spraying (common practice, no source)', compatibility, 'spray', rows)
ruleTable('compatibility, welding (common practice, no source)', compatibility, 'weld', rows)

it('is true when compatible, false in contact, else null', () => {
  const value = (state: 'compatible' | 'ask' | 'contact') => check(compatibility, 'spray', { compatibility: said(state) })?.value
  expect([value('compatible'), value('contact'), value('ask')]).toEqual([true, false, null])
})
