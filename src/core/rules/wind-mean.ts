import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const wait: Fixes = { read: 'read:wind', low: 'wait:wind', high: 'wait:wind' }
/** Drift and a cooled seam can be screened, a sheet in people's hands cannot. */
const shield: Fixes = { ...wait, caution: 'shield:wind' }

export const windMean: Rule = {
  judges: { spray: 'conditions', lay: 'conditions', weld: 'conditions', people: 'people' },
  source: 'HSE roof work advice, 23 mph mean (laying, people); from memory (spraying, welding)',
  check(facts, sheet, activity) {
    const { windMeanSpray, windMeanLay, windMeanWeld, windMeanPeople } = sheet.limits
    if (activity === 'spray') return judge(facts.windKmh, 'km/h', windMeanSpray, shield)
    if (activity === 'weld') return judge(facts.windKmh, 'km/h', windMeanWeld, shield)
    return judge(facts.windKmh, 'km/h', activity === 'lay' ? windMeanLay : windMeanPeople, wait)
  }
}
