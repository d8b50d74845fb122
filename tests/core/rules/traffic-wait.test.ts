import { expect, it } from 'vitest'
import { trafficWait } from '../../../src/core/rules/traffic-wait.js'
import { check, now } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: from memory.
ruleTable('traffic-wait: 10 min or a thumb test (from memory)', trafficWait, 'weld', [
  ['no sheet laid today: nothing to say', { laidAt: null }, null, null],
  ['laid just now', { laidAt: now }, 'no-go', 'wait:traffic'],
  ['laid a second less than 10 min ago', { laidAt: now - 599 }, 'no-go', 'wait:traffic'],
  ['laid 10 min ago', { laidAt: now - 600 }, 'go', null],
  ['laid just now, thumb test stated', { laidAt: now, thumbTest: true }, 'go', null]
])

it('follows from the log', () => {
  expect(check(trafficWait, 'weld', { laidAt: now - 60 })).toMatchObject({ origin: 'log', at: now - 60, limit: null, margin: null, value: false })
})
