import { expect, it } from 'vitest'
import { substrateDry } from '../../../src/core/rules/substrate-dry.js'
import { check, gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
ruleTable('substrate-dry (common practice, no source)', substrateDry, 'spray', [
  ['stated dry', { substrateDry: said('dry') }, 'go', null],
  ['stated wet', { substrateDry: said('wet') }, 'no-go', 'dry:substrate'],
  ['rain since', { substrateDry: said('rain') }, 'no-go', 'state:dry'],
  ['dew since', { substrateDry: said('dew') }, 'no-go', 'state:dry'],
  ['never stated', { substrateDry: gone }, 'unknown', 'state:dry'],
  ['too old', { substrateDry: tooOld }, 'unknown', 'state:dry']
])

it('is true only when dry', () => {
  expect(check(substrateDry, 'spray', { substrateDry: said('dry', 5) })).toMatchObject({
    value: true,
    limit: null,
    margin: null,
    origin: 'statement'
  })
  expect(check(substrateDry, 'spray', { substrateDry: said('rain') })?.value).toBe(false)
  expect(check(substrateDry, 'spray', { substrateDry: tooOld })).toMatchObject({ value: null, stale: true })
})
