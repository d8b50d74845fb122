import { expect, it } from 'vitest'
import { heat } from '../../../src/core/rules/heat.js'
import { check, forecast, gone, model, reading, sheet, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: OSHA heat index protective measures, high risk from 103 °F (39.4 °C); NWS classes, caution from 80 °F (26.7), extreme
// danger from 125 °F (51.7): from memory.
ruleTable('heat without a heat plan: ≤ 39.4 °C (OSHA heat index bands)', heat, 'people', [
  ['on the caution', { heatIndexC: reading(26.7) }, 'go', null],
  ['above the caution', { heatIndexC: reading(26.700001) }, 'caution', 'rest:shade'],
  ['on the bound', { heatIndexC: reading(39.4) }, 'caution', 'rest:shade'],
  ['above the bound', { heatIndexC: reading(39.400001) }, 'no-go', 'wait:heat'],
  ['extreme danger', { heatIndexC: reading(51.7) }, 'no-go', 'wait:heat'],
  ['air missing', { heatIndexC: gone, airC: gone }, 'unknown', 'read:air'],
  ['humidity missing', { heatIndexC: gone, rhPct: gone }, 'unknown', 'read:humidity'],
  ['too old', { heatIndexC: tooOld, rhPct: tooOld }, 'unknown', 'read:humidity'],
  ['estimate clear', { heatIndexC: forecast(20, 2) }, 'go', null],
  ['estimate across the caution', { heatIndexC: forecast(26, 2) }, 'caution', 'rest:shade'],
  ['estimate across the bound', { heatIndexC: forecast(38, 2), airC: forecast(33, 1.5) }, 'unknown', 'read:air'],
  ['estimate across the bound, air read', { heatIndexC: forecast(38, 2), rhPct: forecast(60, 7) }, 'unknown', 'read:humidity'],
  ['estimate clear above', { heatIndexC: forecast(45, 2) }, 'no-go', 'wait:heat']
])

const planned = { ...sheet(), site: { ...sheet().site, heatPlan: true } }
ruleTable(
  'heat with a heat plan: < 51.7 °C (NWS heat index classes, from memory)',
  heat,
  'people',
  [
    ['above the bound without a plan', { heatIndexC: reading(45) }, 'caution', 'rest:shade'],
    ['below the bound', { heatIndexC: reading(51.699999) }, 'caution', 'rest:shade'],
    ['on the bound', { heatIndexC: reading(51.7) }, 'no-go', 'wait:heat'],
    ['on the caution', { heatIndexC: reading(26.7) }, 'go', null]
  ],
  planned
)

ruleTable('heat: WBGT over the alert limit for heavy work (NIOSH 2016-106; 415 W from memory)', heat, 'people', [
  ['below', { wbgtC: reading(22.9) }, 'go', null],
  ['above', { wbgtC: reading(23) }, 'caution', 'rest:shade'],
  ['estimate that may be above', { wbgtC: model(22, 1) }, 'caution', 'rest:shade'],
  ['estimate clear below', { wbgtC: model(20, 1) }, 'go', null],
  ['never softens a no-go', { wbgtC: reading(15), heatIndexC: reading(45) }, 'no-go', 'wait:heat']
])

it('tells the bound that counts', () => {
  expect(check(heat, 'people', { heatIndexC: reading(30) }, planned)).toMatchObject({ limit: 51.7, unit: 'C' })
  expect(check(heat, 'people', { heatIndexC: reading(30) })).toMatchObject({ limit: 39.4, unit: 'C' })
})

it('names WBGT where that makes it a caution: its value, and the alert limit of NIOSH 2016-106 for 415 W', () => {
  const limit = 59.9 - 14.1 * Math.log10(415)
  const found = check(heat, 'people', { wbgtC: reading(25), heatIndexC: reading(24) })
  // The finding itself stays that of the heat index and its no-go bound.
  expect(found).toMatchObject({ outcome: 'caution', value: 24, unit: 'C', limit: 39.4 })
  expect(found?.because).toMatchObject({ of: 'wbgt', value: 25, unit: 'C', spread: 0, origin: 'reading' })
  expect(found?.because?.limit).toBeCloseTo(limit, 5)
  expect(found?.because?.margin).toBeCloseTo(limit - 25, 5)
  expect(check(heat, 'people', { wbgtC: model(22, 1), heatIndexC: reading(24) })?.because).toMatchObject({ value: 22, spread: 1, origin: 'model' })
})

it('does not where the heat index is one by itself, or WBGT is below', () => {
  expect(check(heat, 'people', { wbgtC: reading(30), heatIndexC: reading(30) })).not.toHaveProperty('because')
  expect(check(heat, 'people', { wbgtC: reading(20), heatIndexC: reading(24) })).not.toHaveProperty('because')
  expect(check(heat, 'people', { wbgtC: gone, heatIndexC: reading(24) })).not.toHaveProperty('because')
})
