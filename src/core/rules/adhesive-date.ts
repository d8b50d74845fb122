import { stated, unknown } from './judge.js'
import type { Rule } from './rule.js'

export const adhesiveDate: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source',
  check(facts, sheet) {
    const { expiresOn, daysLeft } = facts.kit
    if (daysLeft === null || Number.isNaN(daysLeft)) return unknown(expiresOn, 'd', 'state:expiry')
    const outcome = daysLeft < 0 ? 'no-go' : daysLeft <= sheet.kit.expirySoonDays ? 'caution' : 'go'
    return stated(outcome, daysLeft, expiresOn, outcome === 'no-go' ? 'change:kit' : null, 'd')
  }
}
