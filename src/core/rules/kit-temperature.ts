import type { Fact } from '../fact.js'
import type { Verdict } from '../finding.js'
import { rank } from '../outcome.js'
import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const measured: Fixes = { read: 'read:kit', low: 'warm:kit', high: 'cool:kit' }
/** A reading on the shell of an unmixed kit says nothing of its mean. */
const unmixed: Fixes = { read: 'mix:kit', low: 'warm:kit', high: 'cool:kit' }

export const kitTemperature: Rule = {
  judges: { spray: 'conditions' },
  source: 'common practice, no source',
  check(facts, sheet) {
    // Mixed since the reading: what is missing now is another reading.
    const fixes = facts.kit.unmixed && facts.kit.mixed.value !== true ? unmixed : measured
    const part = (fact: Fact) => judge(fact, 'C', sheet.limits.kitTemperature, fixes)
    return worse(part(facts.kit.isoC), part(facts.kit.resinC))
  }
}

/** The worse outcome, then the smaller margin. */
function worse(iso: Verdict, resin: Verdict): Verdict {
  if (iso.outcome !== resin.outcome) return rank[resin.outcome] > rank[iso.outcome] ? resin : iso
  return (resin.margin ?? 0) < (iso.margin ?? 0) ? resin : iso
}
