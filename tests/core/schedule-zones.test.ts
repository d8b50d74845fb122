import { describe, expect, test } from 'vitest'
import { checkZone } from '../support/zones.js'

// Source: moment-timezone with its own zone data, a reader and data other than those in use. All zones by ten years:
// `npm run campaign -- zones`.
const odd = [
  'Europe/Berlin',
  'America/New_York',
  'America/Santiago',
  'Australia/Lord_Howe',
  'Asia/Gaza',
  'America/Nuuk',
  'Antarctica/Troll',
  'Africa/Cairo',
  'Pacific/Chatham',
  'Asia/Kathmandu',
  'Pacific/Kiritimati'
]

describe('the morning post by another reader of the clocks', () => {
  test.each(odd)('%s: once a local day around every change of 2027, and each tenth day', (zone) => {
    const { days, wrong, apart } = checkZone(zone, 2027, 1, 10)
    expect([days, wrong, apart]).toEqual([365, [], []])
  })
})
