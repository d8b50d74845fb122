import type { WelderFact } from '../facts.js'
import { type Outcome, rank } from '../outcome.js'
import type { Rule } from './rule.js'

/** Every welder in use must be cleared by its own coupon; the worst one speaks for them. */
export const coupon: Rule = {
  judges: { weld: 'checklist' },
  source: 'common practice, no source',
  check({ welders }) {
    let worst = welders[0] ?? null
    for (const welder of welders) if (worst === null || isWorse(welder, worst)) worst = welder
    const outcome = worst === null ? 'unknown' : outcomeOf(worst)
    return {
      outcome,
      value: worst?.widthMm ?? null,
      unit: 'mm',
      limit: null,
      margin: null,
      spread: 0,
      origin: worst === null ? null : 'log',
      at: worst?.at ?? null,
      stale: false,
      fix: outcome === 'go' ? null : 'weld:coupon',
      ease: null
    }
  }
}

function outcomeOf(welder: WelderFact): Outcome {
  if (welder.status === 'cleared') return 'go'
  return welder.status === 'none' ? 'unknown' : 'no-go'
}

function isWorse(a: WelderFact, b: WelderFact): boolean {
  const step = rank[outcomeOf(a)] - rank[outcomeOf(b)]
  if (step !== 0) return step > 0
  return a.widthMm !== null && b.widthMm !== null && a.widthMm < b.widthMm
}
