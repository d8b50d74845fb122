import type { Fact, Origin } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Instant } from '../instant.js'
import type { Outcome } from '../outcome.js'
import type { Rule } from './rule.js'

interface Step {
  readonly name: keyof Facts['startUp']
  readonly state: Fix
  readonly mend: Fix
}

/** In this order: hoses tight, both parts purged to waste, nozzle on, test spray good. */
const steps: readonly Step[] = [
  { name: 'tight', state: 'state:tight', mend: 'tighten:hoses' },
  { name: 'purged', state: 'state:purged', mend: 'purge:kit' },
  { name: 'nozzle', state: 'state:nozzle', mend: 'fit:nozzle' },
  { name: 'tested', state: 'state:tested', mend: 'test:spray' }
]

export const startUp: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source',
  check({ startUp: done }) {
    // A nozzle that is not on yet is a step to come, not a fault.
    for (const { name, mend } of steps) if (done[name].value === false && name !== 'nozzle') return verdict(done, 'no-go', false, mend)
    for (const { name, state, mend } of steps) {
      const { value } = done[name]
      if (value !== true) return verdict(done, 'unknown', null, value === null ? state : mend)
    }
    return verdict(done, 'go', true, null)
  }
}

/** Dated by the oldest of the four. */
function verdict(done: Facts['startUp'], outcome: Outcome, value: boolean | null, fix: Fix | null): Verdict {
  let at: Instant | null = null
  let origin: Origin | null = null
  let stale = false
  for (const { name } of steps) {
    const fact: Fact<boolean> = done[name]
    if (fact.at !== null && (at === null || fact.at < at)) at = fact.at
    origin = origin ?? fact.origin
    stale = stale || fact.stale
  }
  return { outcome, value, unit: null, limit: null, margin: null, spread: 0, origin, at, stale, fix, ease: null }
}
