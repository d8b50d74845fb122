import type { Rule } from './rule.js'
import { yesOrNo } from './statements.js'

/** Concrete only; that it is 28 days old proves nothing. */
export const deckMoisture: Rule = {
  judges: { spray: 'checklist' },
  source: 'ASTM D4263 plastic sheet test, at least 16 h, from memory',
  check(facts) {
    return facts.substrateKind === 'concrete' ? yesOrNo(facts.deckMoisture, 'dry:substrate', 'test:moisture') : null
  }
}
