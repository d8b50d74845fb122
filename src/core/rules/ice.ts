import { type Fact, isEstimate } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Outcome } from '../outcome.js'
import { round6 } from '../units.js'
import { interval } from './interval.js'
import { unknown } from './judge.js'
import type { Rule } from './rule.js'

const freezingC = 0
/** Surfaces differ: what reads a little above freezing may be ice a step further on. */
const nearC = 2
/** With air at least this warm a surface that nobody measured is taken to be free of ice. */
const warmAirC = 4

export const ice: Rule = {
  judges: { people: 'people' },
  source: 'physics: water freezes at 0 °C; the 2 K and the air temperature from memory',
  check(facts) {
    const { substrateC, airC, surfaceWet } = facts
    const { value, spread, origin, at, stale } = substrateC
    if (value === null || !Number.isFinite(value)) return unmeasured(substrateC, airC)
    const wet = surfaceWet.value
    const outcome =
      isEstimate(substrateC) && spread !== 0 ? interval(value, spread, [freezingC, nearC], (point) => onSurface(point, wet)) : onSurface(value, wet)
    // Only on something wet is freezing a no-go bound.
    const limit = wet === true ? freezingC : null
    const margin = limit === null ? null : value - limit
    return {
      outcome,
      value,
      unit: 'C',
      limit,
      margin,
      spread,
      origin,
      at,
      stale,
      fix: fixFor(outcome, facts, value),
      ease: margin === null ? null : round6(margin / (nearC - freezingC))
    }
  }
}

function onSurface(surfaceC: number, wet: boolean | null): Outcome {
  const c = round6(surfaceC)
  if (c > nearC) return 'go'
  if (c > freezingC) return wet === false ? 'go' : 'caution'
  if (wet === null) return 'unknown'
  return wet ? 'no-go' : 'caution'
}

function unmeasured(surface: Fact, air: Fact): Verdict {
  const coldest = air.value === null ? null : air.value - (isEstimate(air) ? 1.645 * air.spread : 0)
  const verdict = unknown(surface, 'C', 'read:substrate')
  return coldest !== null && coldest >= warmAirC ? { ...verdict, outcome: 'go', fix: null } : verdict
}

function fixFor(outcome: Outcome, facts: Facts, surfaceC: number): Fix | null {
  if (outcome === 'go') return null
  if (outcome !== 'unknown') return outcome === 'no-go' ? 'wait:ice' : 'watch:ice'
  return facts.surfaceWet.value === null && surfaceC <= freezingC ? 'state:dry' : 'read:substrate'
}
