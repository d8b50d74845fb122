import type { Rule } from './rule.js'
import { surfaceDry } from './statements.js'

export const substrateDry: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    return surfaceDry(facts.substrateDry, 'dry:substrate', 'state:dry')
  }
}
