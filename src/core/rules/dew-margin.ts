import type { Facts } from '../facts.js'
import type { Activity, Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Limit } from '../limits/sheet.js'
import { type Fixes, judge } from './judge.js'
import { readingToTake } from './reading-to-take.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:substrate', low: 'wait:dew', high: 'wait:dew' }

export const dewMargin: Rule = {
  judges: { spray: 'conditions', weld: 'conditions' },
  source: 'ISO 8502-4 practice (3 K); welding from memory',
  check(facts, sheet, activity) {
    const weld = activity === 'weld'
    const fact = weld ? facts.sheetDewMarginK : facts.substrateDewMarginK
    const limit: Limit = weld ? sheet.limits.dewMarginWeld : sheet.limits.dewMarginSpray
    const verdict: Verdict = judge(fact, 'K', limit, fixes)
    return verdict.outcome === 'unknown' ? { ...verdict, fix: toRead(facts, activity) } : verdict
  }
}

function toRead(facts: Facts, activity: Activity): Fix {
  const surface = activity === 'weld' ? ([facts.sheetC, 'read:sheet'] as const) : ([facts.substrateC, 'read:substrate'] as const)
  return readingToTake([surface, [facts.airC, 'read:air'], [facts.rhPct, 'read:humidity']], surface[1])
}
