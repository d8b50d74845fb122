import type { Fact } from '../fact.js'
import type { SurfaceState } from '../facts.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import { stated, unknown } from './judge.js'

/** A surface stated dry: rain or dew since has taken that back, so that it must be dried and stated again. */
export function surfaceDry(fact: Fact<SurfaceState>, dry: Fix, state: Fix): Verdict {
  if (fact.value === null) return unknown(fact, null, state)
  if (fact.value === 'dry') return stated('go', true, fact, null)
  return stated('no-go', false, fact, fact.value === 'wet' ? dry : state)
}

/** A yes or no that a person states: yes goes, no stops. */
export function yesOrNo(fact: Fact<boolean>, mend: Fix, state: Fix): Verdict {
  if (fact.value === null) return unknown(fact, null, state)
  return stated(fact.value ? 'go' : 'no-go', fact.value, fact, mend)
}
