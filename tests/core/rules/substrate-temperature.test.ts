import { substrateTemperature } from '../../../src/core/rules/substrate-temperature.js'
import { gone, model, reading, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('substrate-temperature: 5 … 50 °C, caution below 7 and above 45 (from memory)', substrateTemperature, 'spray', [
  ['below the low bound', { substrateC: reading(4.999999) }, 'no-go', 'wait:substrate'],
  ['on the low bound', { substrateC: reading(5) }, 'caution', 'wait:substrate'],
  ['on the low caution', { substrateC: reading(7) }, 'go', null],
  ['on the high caution', { substrateC: reading(45) }, 'go', null],
  ['above the high caution', { substrateC: reading(45.000001) }, 'caution', 'wait:substrate'],
  ['on the high bound', { substrateC: reading(50) }, 'caution', 'wait:substrate'],
  ['above the high bound', { substrateC: reading(50.000001) }, 'no-go', 'wait:substrate'],
  ['missing', { substrateC: gone }, 'unknown', 'read:substrate'],
  ['too old', { substrateC: tooOld }, 'unknown', 'read:substrate'],
  ['estimate clear', { substrateC: model(25, 3) }, 'go', null],
  ['estimate across the low caution', { substrateC: model(9, 2) }, 'caution', 'wait:substrate'],
  ['estimate across the low bound', { substrateC: model(7, 2) }, 'unknown', 'read:substrate'],
  ['estimate across the high bound', { substrateC: model(48, 3) }, 'unknown', 'read:substrate'],
  ['estimate clear above', { substrateC: model(60, 3) }, 'no-go', 'wait:substrate']
])
