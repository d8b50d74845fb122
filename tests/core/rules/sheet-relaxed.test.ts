import { sheetRelaxed } from '../../../src/core/rules/sheet-relaxed.js'
import { gone, reading, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source; times from memory.
ruleTable('sheet-relaxed: 30 min, 60 below 10 °C (common practice, no source; times from memory)', sheetRelaxed, 'spray', [
  ['rolled', { sheetState: said('rolled') }, 'no-go', 'unroll:sheet'],
  ['relaxed', { sheetState: said('relaxed') }, 'go', null],
  ['unrolled just now', { sheetState: said('unrolled') }, 'caution', 'wait:relaxed'],
  ['unrolled 29 min ago', { sheetState: said('unrolled', 29) }, 'caution', 'wait:relaxed'],
  ['unrolled 30 min ago', { sheetState: said('unrolled', 30) }, 'go', null],
  ['unrolled 59 min ago in the cold', { sheetState: said('unrolled', 59), airC: reading(9.9) }, 'caution', 'wait:relaxed'],
  ['unrolled 60 min ago in the cold', { sheetState: said('unrolled', 60), airC: reading(9.9) }, 'go', null],
  ['unrolled 30 min ago at 10 °C', { sheetState: said('unrolled', 30), airC: reading(10) }, 'go', null],
  ['unrolled 30 min ago, air not known', { sheetState: said('unrolled', 30), airC: gone }, 'caution', 'wait:relaxed'],
  ['unrolled, nobody knows when', { sheetState: { ...said('unrolled'), at: null } }, 'caution', 'wait:relaxed'],
  ['not stated today', { sheetState: gone }, 'unknown', 'state:unrolled'],
  ['stated on another day', { sheetState: tooOld }, 'unknown', 'state:unrolled']
])
