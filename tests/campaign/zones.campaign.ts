import moment from 'moment-timezone'
import { expect, test } from 'vitest'
import { checkZone } from '../support/zones.js'

const firstYear = Number(process.env.YEAR ?? 2026)
const years = Number(process.env.COUNT ?? 10)

/** Every zone that both readers know: the engine's own list, and the names of before that moment-timezone keeps. */
function zones(): readonly string[] {
  const known = (zone: string) => {
    try {
      new Intl.DateTimeFormat('en', { timeZone: zone })
      return moment.tz.zone(zone) !== null
    } catch {
      return false
    }
  }
  return [...new Set([...Intl.supportedValuesOf('timeZone'), ...moment.tz.names()])].filter(known).sort()
}

test(`every zone by ${years} years from ${firstYear}: one morning post each local day`, () => {
  const all = zones()
  let days = 0
  const wrong: string[] = []
  const apart = new Map<string, number>()
  for (const zone of all) {
    const report = checkZone(zone, firstYear, years)
    days += report.days
    wrong.push(...report.wrong.map((date) => `${zone} ${date}`))
    if (report.apart.length > 0) apart.set(zone, report.apart.length)
  }
  // Listed, not hidden: days on which the data of the two readers are apart.
  process.stdout.write(
    `${JSON.stringify({ zones: all.length, days, wrong: wrong.length, dataOfEngine: process.versions.tz, dataOfOther: moment.tz.dataVersion, apart: Object.fromEntries(apart) })}\n`
  )
  expect(wrong).toEqual([])
  expect(all.length).toBeGreaterThan(400)
})
