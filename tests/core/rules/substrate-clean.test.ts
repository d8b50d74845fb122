import { substrateClean } from '../../../src/core/rules/substrate-clean.js'
import { gone, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source; how long it holds from memory.
ruleTable('substrate-clean (common practice, no source)', substrateClean, 'spray', [
  ['stated clean', { substrateClean: said(true) }, 'go', null],
  ['stated dirty', { substrateClean: said(false) }, 'no-go', 'clean:substrate'],
  ['never stated', { substrateClean: gone }, 'unknown', 'state:clean'],
  ['too old', { substrateClean: tooOld }, 'unknown', 'state:clean']
])
