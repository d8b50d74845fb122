import { deckMoisture } from '../../../src/core/rules/deck-moisture.js'
import { gone, said } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: ASTM D4263 plastic sheet test, from memory.
ruleTable('deck-moisture (ASTM D4263, from memory)', deckMoisture, 'spray', [
  ['concrete, test passed', { substrateKind: 'concrete', deckMoisture: said(true) }, 'go', null],
  ['concrete, test failed', { substrateKind: 'concrete', deckMoisture: said(false) }, 'no-go', 'dry:substrate'],
  ['concrete, no test', { substrateKind: 'concrete', deckMoisture: gone }, 'unknown', 'test:moisture'],
  ['board: nothing to say', { substrateKind: 'board', deckMoisture: said(false) }, null, null]
])
