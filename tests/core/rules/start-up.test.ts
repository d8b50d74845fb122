import { expect, it } from 'vitest'
import { startUp } from '../../../src/core/rules/start-up.js'
import { check, gone, now, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

// Source: common practice, no source.
ruleTable('start-up: tight, purged, nozzle on, test spray (common practice, no source)', startUp, 'spray', [
  ['all stated', {}, 'go', null],
  ['a leak', { startUp: { tight: said(false) } }, 'no-go', 'tighten:hoses'],
  ['not purged', { startUp: { purged: said(false) } }, 'no-go', 'purge:kit'],
  ['test spray bad', { startUp: { tested: said(false) } }, 'no-go', 'test:spray'],
  ['a leak beats what is missing', { startUp: { tight: gone, tested: said(false) } }, 'no-go', 'test:spray'],
  ['nozzle stated off', { startUp: { nozzle: said(false) } }, 'unknown', 'fit:nozzle'],
  ['tight missing', { startUp: { tight: gone } }, 'unknown', 'state:tight'],
  ['purged missing', { startUp: { purged: gone } }, 'unknown', 'state:purged'],
  ['nozzle missing', { startUp: { nozzle: gone } }, 'unknown', 'state:nozzle'],
  ['tested missing', { startUp: { tested: gone } }, 'unknown', 'state:tested'],
  ['the first missing is named', { startUp: { purged: gone, tested: gone } }, 'unknown', 'state:purged'],
  ['stated before the last start', { startUp: { tight: tooOld } }, 'unknown', 'state:tight']
])

it('is dated by the oldest of the four', () => {
  const at = { startUp: { tight: said(true, 50), purged: said(true, 40), nozzle: said(true, 30), tested: said(true, 20) } }
  expect(check(startUp, 'spray', at)).toMatchObject({ at: now - 3000, origin: 'statement', value: true, stale: false })
  expect(check(startUp, 'spray', { startUp: { purged: tooOld } })).toMatchObject({ stale: true, value: null })
})
