import { expect, it } from 'vitest'
import { seamDry } from '../../../src/core/rules/seam-dry.js'
import { check, gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
ruleTable('seam-dry (common practice, no source)', seamDry, 'weld', [
  ['stated dry', { seamDry: said('dry') }, 'go', null],
  ['stated wet', { seamDry: said('wet') }, 'no-go', 'dry:seam'],
  ['rain since', { seamDry: said('rain') }, 'no-go', 'state:lap'],
  ['dew since', { seamDry: said('dew') }, 'no-go', 'state:lap'],
  ['never stated', { seamDry: gone }, 'unknown', 'state:lap'],
  ['too old', { seamDry: tooOld }, 'unknown', 'state:lap']
])

it('is true only when dry', () => {
  expect(check(seamDry, 'weld', { seamDry: said('dry', 5) })).toMatchObject({ value: true, limit: null, margin: null, origin: 'statement' })
  expect(check(seamDry, 'weld', { seamDry: said('rain') })?.value).toBe(false)
  expect(check(seamDry, 'weld', { seamDry: tooOld })).toMatchObject({ value: null, stale: true })
})
