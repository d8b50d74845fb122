import { lapClean } from '../../../src/core/rules/lap-clean.js'
import { gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source; how long it holds from memory.
ruleTable('lap-clean (common practice, no source)', lapClean, 'weld', [
  ['stated clean', { lapClean: said(true) }, 'go', null],
  ['stated dirty', { lapClean: said(false) }, 'no-go', 'clean:lap'],
  ['never stated', { lapClean: gone }, 'unknown', 'state:lap'],
  ['too old', { lapClean: tooOld }, 'unknown', 'state:lap']
])
