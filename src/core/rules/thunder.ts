import { certain, type Fact } from '../fact.js'
import type { Facts } from '../facts.js'
import { stated, unknown } from './judge.js'
import { minutesSince } from './minutes-since.js'
import type { Rule } from './rule.js'

/** Nobody goes back up until this many minutes after the last thunder. */
const waitMin = 30

/** Value: thunder, heard or forecast. */
export const thunder: Rule = {
  judges: { people: 'people' },
  source: 'NOAA 30-minute rule, OSHA/NOAA fact sheet FS-3863',
  check(facts) {
    const { thunderHeardAt, noThunder, thunderThisHour, thunderWithin2h } = facts
    const sinceMin = minutesSince(thunderHeardAt, facts.at)
    if (thunderHeardAt !== null && sinceMin !== null && sinceMin <= waitMin) {
      return stated('no-go', true, certain(true, thunderHeardAt, 'statement'), 'wait:thunder')
    }
    // A person on the roof beats the forecast of this hour, but not of the next.
    if (noThunder.value === true) {
      return stated(thunderThisHour === true || thunderWithin2h === true ? 'caution' : 'go', false, noThunder, 'wait:thunder')
    }
    if (thunderThisHour === null && thunderWithin2h === null) return unknown(noThunder, null, 'state:thunder')
    if (thunderThisHour === true) return stated('no-go', true, forecast(facts), 'wait:thunder')
    return stated(thunderWithin2h === true ? 'caution' : 'go', thunderWithin2h === true, forecast(facts), 'wait:thunder')
  }
}

function forecast(facts: Facts): Fact<boolean> {
  return { value: null, at: facts.at, origin: 'forecast', spread: 0, stale: false }
}
