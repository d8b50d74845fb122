import type { Rule } from './rule.js'
import { surfaceDry } from './statements.js'

export const seamDry: Rule = {
  judges: { weld: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    return surfaceDry(facts.seamDry, 'dry:seam', 'state:lap')
  }
}
