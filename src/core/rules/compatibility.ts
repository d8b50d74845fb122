import { stated, unknown } from './judge.js'
import type { Rule } from './rule.js'

export const compatibility: Rule = {
  judges: { spray: 'checklist', weld: 'checklist' },
  source: 'common practice, no source (bitumen); from memory (other materials)',
  check(facts) {
    const fact = facts.compatibility
    switch (fact.value) {
      case null:
        return unknown(fact, null, 'state:compatibility')
      case 'contact':
        return stated('no-go', false, fact, 'separate:contact')
      case 'ask':
        return stated('caution', null, fact, 'ask:maker')
      case 'compatible':
        return stated('go', true, fact, null)
    }
  }
}
