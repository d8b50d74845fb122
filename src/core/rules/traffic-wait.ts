import { certain } from '../fact.js'
import { stated } from './judge.js'
import { minutesSince } from './minutes-since.js'
import type { Rule } from './rule.js'

/** Minutes before a fresh sheet takes a foot, a knee or a wheel. */
export const trafficWaitMin = 10

export const trafficWait: Rule = {
  judges: { weld: 'checklist' },
  source: 'from memory',
  check(facts) {
    const sinceMin = minutesSince(facts.laidAt, facts.at)
    if (facts.laidAt === null || sinceMin === null) return null
    const ready = facts.thumbTest || sinceMin >= trafficWaitMin
    return stated(ready ? 'go' : 'no-go', ready, certain(ready, facts.laidAt, 'log'), 'wait:traffic')
  }
}
