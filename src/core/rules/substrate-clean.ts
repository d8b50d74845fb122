import type { Rule } from './rule.js'
import { yesOrNo } from './statements.js'

export const substrateClean: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source; its age from memory',
  check(facts) {
    return yesOrNo(facts.substrateClean, 'clean:substrate', 'state:clean')
  }
}
