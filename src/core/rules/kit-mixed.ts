import { stated, unknown } from './judge.js'
import { minutesSince } from './minutes-since.js'
import type { Rule } from './rule.js'

export const kitMixed: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source; its age from memory',
  check(facts, sheet) {
    const fact = facts.kit.mixed
    if (fact.value === null) return unknown(fact, null, 'state:mixed')
    if (!fact.value) return stated('no-go', false, fact, 'mix:kit')
    const sinceMin = minutesSince(fact.at, facts.at)
    const fresh = sinceMin !== null && sinceMin <= sheet.kit.mixedMaxMin
    return stated(fresh ? 'go' : 'caution', true, fact, 'mix:kit')
  }
}
