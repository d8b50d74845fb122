import { expect, it } from 'vitest'
import { activities } from '../../src/core/finding.js'
import { askedOnce, judges, weatherJudges } from '../../src/core/judges.js'
import { facts, forecast, gone, reading, said, sheet } from '../support/facts.js'

const common = sheet()
const days = [
  facts({}),
  facts({
    windKmh: forecast(30, 5),
    gustKmh: forecast(50, 8),
    airC: reading(4),
    sheetDewMarginK: reading(0),
    rainChancePct: said(60),
    rainFalling: said(true)
  }),
  facts({ sunUp: false, substrateC: gone, substrateDewMarginK: gone, airC: gone, daylightMin: -30, rainChancePct: forecast(30), windKmh: gone })
]

it.each([
  ['all', judges],
  ['those of weather and people', weatherJudges]
])('%s, asked once, give every activity the verdicts that it would get by asking each itself', (_, all) => {
  const { asked, seats } = askedOnce(all)
  for (const day of days) {
    const verdicts = asked.map(({ check, activity }) => check(day, common, activity))
    for (const activity of activities) {
      expect(seats[activity].map(({ judge }) => judge)).toEqual(all[activity])
      for (const { judge, place } of seats[activity]) expect(verdicts[place]).toEqual(judge.check(day, common, judge.activity))
    }
  }
})

it('asks fewer than sit', () => {
  const { asked, seats } = askedOnce(weatherJudges)
  expect(asked.length).toBeLessThan(0.6 * activities.reduce((sum, activity) => sum + seats[activity].length, 0))
  expect(new Set(asked.map(({ rule, activity }) => `${rule} ${activity}`)).size).toBe(asked.length)
})
