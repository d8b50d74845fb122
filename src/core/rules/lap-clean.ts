import { yesOrNo } from './statements.js'
import type { Rule } from './rule.js'

export const lapClean: Rule = {
  judges: { weld: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    return yesOrNo(facts.lapClean, 'clean:lap', 'state:lap')
  }
}
