import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const wait: Fixes = { read: 'read:gust', low: 'wait:wind', high: 'wait:wind' }
const shield: Fixes = { ...wait, caution: 'shield:wind' }

export const windGust: Rule = {
  judges: { spray: 'conditions', lay: 'conditions', people: 'people' },
  source: 'from memory',
  check(facts, sheet, activity) {
    const { windGustSpray, windGustLay, windGustPeople } = sheet.limits
    if (activity === 'spray') return judge(facts.gustKmh, 'km/h', windGustSpray, shield)
    return judge(facts.gustKmh, 'km/h', activity === 'lay' ? windGustLay : windGustPeople, wait)
  }
}
