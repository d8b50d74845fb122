import { type Fact, isEstimate } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Fix } from '../fix.js'

/** The reading that would settle a value made of several: the first one missing, else the first that is only an estimate. */
export function readingToTake(parts: readonly (readonly [Fact, Fix])[], otherwise: Fix): Fix {
  for (const [fact, fix] of parts) if (fact.value === null) return fix
  for (const [fact, fix] of parts) if (isEstimate(fact)) return fix
  return otherwise
}

/** The reading that a value of air and humidity lacks. */
export function airOrHumidity(facts: Facts): Fix {
  return readingToTake(
    [
      [facts.airC, 'read:air'],
      [facts.rhPct, 'read:humidity']
    ],
    'read:air'
  )
}

/** The reading that a value of air and wind lacks. */
export function airOrWind(facts: Facts): Fix {
  return readingToTake(
    [
      [facts.airC, 'read:air'],
      [facts.windKmh, 'read:wind']
    ],
    'read:air'
  )
}
