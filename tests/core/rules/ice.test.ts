import { expect, it } from 'vitest'
import { ice } from '../../../src/core/rules/ice.js'
import { check, forecast, gone, model, type Overrides, reading, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

const wet = (substrateC: number): Overrides => ({ substrateC: reading(substrateC), surfaceWet: said(true) })
const dry = (substrateC: number): Overrides => ({ substrateC: reading(substrateC), surfaceWet: said(false) })
const either = (substrateC: number): Overrides => ({ substrateC: reading(substrateC), surfaceWet: gone })

// Source: physics, water freezes at 0 °C; the 2 K and the air temperature from memory.
ruleTable('ice: surface ≤ 0 °C and wet (physics; 2 K and 4 °C from memory)', ice, 'people', [
  ['wet, on 0', wet(0), 'no-go', 'wait:ice'],
  ['wet, below 0', wet(-3), 'no-go', 'wait:ice'],
  ['wet, above 0', wet(0.000001), 'caution', 'watch:ice'],
  ['wet, on 2', wet(2), 'caution', 'watch:ice'],
  ['wet, above 2', wet(2.000001), 'go', null],
  ['dry, on 0', dry(0), 'caution', 'watch:ice'],
  ['dry, above 0', dry(0.000001), 'go', null],
  ['wet or not, on 0', either(0), 'unknown', 'state:dry'],
  ['wet or not, on 2', either(2), 'caution', 'watch:ice'],
  ['wet or not, above 2', either(2.000001), 'go', null],
  ['surface missing, air 4', { substrateC: gone, airC: reading(4) }, 'go', null],
  ['surface missing, air below 4', { substrateC: gone, airC: reading(3.999999) }, 'unknown', 'read:substrate'],
  ['surface missing, air may be below 4', { substrateC: gone, airC: forecast(6, 1.5) }, 'unknown', 'read:substrate'],
  ['surface and air missing', { substrateC: gone, airC: gone }, 'unknown', 'read:substrate'],
  ['surface too old in the cold', { substrateC: tooOld, airC: reading(0) }, 'unknown', 'read:substrate'],
  ['estimate clear, wet', { substrateC: model(8, 2), surfaceWet: said(true) }, 'go', null],
  ['estimate across 2, wet', { substrateC: model(4, 2), surfaceWet: said(true) }, 'caution', 'watch:ice'],
  ['estimate across 0, wet', { substrateC: model(1, 1), surfaceWet: said(true) }, 'unknown', 'read:substrate'],
  ['estimate clear below 0, wet', { substrateC: model(-5, 1), surfaceWet: said(true) }, 'no-go', 'wait:ice'],
  ['estimate across 0, dry', { substrateC: model(1, 1), surfaceWet: said(false) }, 'caution', 'watch:ice'],
  ['estimate across 0, wet or not', { substrateC: model(1, 1), surfaceWet: gone }, 'unknown', 'read:substrate']
])

it('has a bound only where there is water to freeze', () => {
  expect(check(ice, 'people', wet(1))).toMatchObject({ value: 1, unit: 'C', limit: 0, margin: 1, ease: 0.5 })
  expect(check(ice, 'people', dry(-1))).toMatchObject({ limit: null, margin: null, ease: null })
})
