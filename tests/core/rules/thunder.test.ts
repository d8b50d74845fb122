import { expect, it } from 'vitest'
import { thunder } from '../../../src/core/rules/thunder.js'
import { check, gone, now, said, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

const noWord = { noThunder: gone }

// Source: NOAA 30-minute rule, OSHA/NOAA fact sheet FS-3863.
ruleTable('thunder: 30 minutes after the last (NOAA 30-minute rule, FS-3863)', thunder, 'people', [
  ['heard now', { thunderHeardAt: now }, 'no-go', 'wait:thunder'],
  ['heard 30 min ago', { thunderHeardAt: now - 1800 }, 'no-go', 'wait:thunder'],
  ['heard a second more than 30 min ago, none since', { thunderHeardAt: now - 1801 }, 'go', null],
  [
    'heard 20 min ago, "no thunder" said since: the 30 minutes still run',
    { thunderHeardAt: now - 1200, noThunder: said(true) },
    'no-go',
    'wait:thunder'
  ],
  ['none stated', { noThunder: said(true) }, 'go', null],
  ['none stated without any forecast', { noThunder: said(true), thunderThisHour: null, thunderWithin2h: null }, 'go', null],
  ['none stated, forecast this hour', { noThunder: said(true), thunderThisHour: true }, 'caution', 'wait:thunder'],
  ['none stated, forecast within 2 h', { noThunder: said(true), thunderWithin2h: true }, 'caution', 'wait:thunder'],
  ['forecast this hour', { ...noWord, thunderThisHour: true, thunderWithin2h: true }, 'no-go', 'wait:thunder'],
  ['forecast within 2 h', { ...noWord, thunderThisHour: false, thunderWithin2h: true }, 'caution', 'wait:thunder'],
  ['forecast: none', { ...noWord, thunderThisHour: false, thunderWithin2h: false }, 'go', null],
  ['nothing known', { ...noWord, thunderThisHour: null, thunderWithin2h: null }, 'unknown', 'state:thunder'],
  ['statement too old, no forecast', { noThunder: tooOld, thunderThisHour: null, thunderWithin2h: null }, 'unknown', 'state:thunder']
])

it('says where it comes from', () => {
  expect(check(thunder, 'people', { thunderHeardAt: now - 60 })).toMatchObject({ value: true, origin: 'statement', at: now - 60 })
  expect(check(thunder, 'people', noWord)).toMatchObject({ value: false, origin: 'forecast' })
  expect(check(thunder, 'people', { noThunder: tooOld, thunderThisHour: null, thunderWithin2h: null })?.stale).toBe(true)
})
