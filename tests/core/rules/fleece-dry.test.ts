import { expect, it } from 'vitest'
import { fleeceDry } from '../../../src/core/rules/fleece-dry.js'
import { check, gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
ruleTable('fleece-dry (common practice, no source)', fleeceDry, 'spray', [
  ['stated dry', { fleeceDry: said('dry') }, 'go', null],
  ['stated wet', { fleeceDry: said('wet') }, 'no-go', 'dry:fleece'],
  ['rain since', { fleeceDry: said('rain') }, 'no-go', 'state:fleece'],
  ['dew since', { fleeceDry: said('dew') }, 'no-go', 'state:fleece'],
  ['never stated', { fleeceDry: gone }, 'unknown', 'state:fleece'],
  ['too old', { fleeceDry: tooOld }, 'unknown', 'state:fleece']
])

it('is true only when dry', () => {
  expect(check(fleeceDry, 'spray', { fleeceDry: said('dry', 5) })).toMatchObject({ value: true, limit: null, margin: null, origin: 'statement' })
  expect(check(fleeceDry, 'spray', { fleeceDry: said('rain') })?.value).toBe(false)
  expect(check(fleeceDry, 'spray', { fleeceDry: tooOld })).toMatchObject({ value: null, stale: true })
})
