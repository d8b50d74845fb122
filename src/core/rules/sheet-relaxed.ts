import type { Facts } from '../facts.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { stated, unknown } from './judge.js'
import { minutesSince } from './minutes-since.js'
import type { Rule } from './rule.js'

/** Below this air temperature a sheet relaxes slowly. */
const coldC = 10

/** How long an unrolled sheet has to lie, min: the longer time where it is cold, or nobody knows. */
export function relaxingMin(airC: number | null, { sheet }: LimitsSheet): number {
  return airC !== null && airC >= coldC ? sheet.relaxMin : sheet.relaxColdMin
}

export const sheetRelaxed: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source; times from memory',
  check(facts, sheet) {
    const fact = facts.sheetState
    switch (fact.value) {
      case null:
        return unknown(fact, null, 'state:unrolled')
      case 'rolled':
        return stated('no-go', false, fact, 'unroll:sheet')
      case 'relaxed':
        return stated('go', true, fact, null)
      case 'unrolled':
        return hasLain(facts, sheet) ? stated('go', true, fact, null) : stated('caution', null, fact, 'wait:relaxed')
    }
  }
}

function hasLain(facts: Facts, sheet: LimitsSheet): boolean {
  const lainMin = minutesSince(facts.sheetState.at, facts.at)
  return lainMin !== null && lainMin >= relaxingMin(facts.airC.value, sheet)
}
