import type { Rule } from './rule.js'
import { surfaceDry } from './statements.js'

export const fleeceDry: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    return surfaceDry(facts.fleeceDry, 'dry:fleece', 'state:fleece')
  }
}
