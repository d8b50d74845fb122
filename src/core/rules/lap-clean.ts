import type { Rule } from './rule.js'
import { yesOrNo } from './statements.js'

export const lapClean: Rule = {
  judges: { weld: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    return yesOrNo(facts.lapClean, 'clean:lap', 'state:lap')
  }
}
