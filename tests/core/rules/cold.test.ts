import { cold } from '../../../src/core/rules/cold.js'
import { forecast, gone, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: ECCC wind chill bands (2001 index).
ruleTable('cold: ≥ −27 °C wind chill, caution below −10 (ECCC wind chill bands)', cold, 'people', [
  ['on the caution', { feltC: reading(-10) }, 'go', null],
  ['below the caution', { feltC: reading(-10.000001) }, 'caution', 'rest:warm'],
  ['on the bound', { feltC: reading(-27) }, 'caution', 'rest:warm'],
  ['below the bound', { feltC: reading(-27.000001) }, 'no-go', 'wait:cold'],
  ['air missing', { feltC: gone, airC: gone }, 'unknown', 'read:air'],
  ['wind missing', { feltC: gone, windKmh: gone }, 'unknown', 'read:wind'],
  ['too old', { feltC: tooOld, airC: tooOld }, 'unknown', 'read:air'],
  ['estimate clear', { feltC: forecast(0, 2) }, 'go', null],
  ['estimate across the caution', { feltC: forecast(-9, 2) }, 'caution', 'rest:warm'],
  ['estimate across the bound', { feltC: forecast(-26, 2), windKmh: forecast(20, 5) }, 'unknown', 'read:wind'],
  ['estimate clear below', { feltC: forecast(-35, 2) }, 'no-go', 'wait:cold']
])
