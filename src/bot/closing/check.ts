import type { Finding } from '../../core/finding.js'
import type { Fix } from '../../core/fix.js'
import type { Instant } from '../../core/instant.js'
import type { Outcome } from '../../core/outcome.js'
import type { FindingId } from '../answer.js'

/** A check that is stated, with nothing measured. */
export function check(rule: FindingId, outcome: Outcome, fix: Fix | null, at: Instant): Finding<FindingId> {
  return {
    rule,
    activity: 'lay',
    group: 'checklist',
    outcome,
    value: outcome === 'unknown' ? null : outcome === 'go',
    unit: null,
    limit: null,
    margin: null,
    spread: 0,
    origin: outcome === 'unknown' ? null : 'statement',
    at: outcome === 'unknown' ? null : at,
    stale: false,
    fix,
    ease: null
  }
}
