import moment from 'moment-timezone'
import { localDate, localTime } from '../../src/core/instant.js'
import { due, firstInstantAt, type Scheduled } from '../../src/core/schedule.js'

/**
 * What one zone did in some years. The other reader is moment-timezone with the zone data that it brings along; the library in use
 * reads those of the JavaScript engine.
 */
export interface ZoneReport {
  readonly days: number
  /** Days on which the morning post is not due exactly once, at the first instant of 05:30 or later by the other reader's clock. */
  readonly wrong: readonly string[]
  /** Days around which the two readers' clocks are apart: other data, not other reckoning. */
  readonly apart: readonly string[]
}

const morning = '05:30'
const morningS = 5 * 3600 + 30 * 60
const dayS = 86_400
const anyDay = [1, 2, 3, 4, 5, 6, 7]

/** Every local day of some years in a zone, or every so many and all around a change of the clocks: from 1 January of the first year. */
export function checkZone(zone: string, firstYear: number, years: number, every = 1): ZoneReport {
  const other = moment.tz.zone(zone)
  if (other === null) throw new Error(`no zone data for ${zone}`)
  /** The clock on the wall, as seconds counted as if it were UTC. */
  const wall = (at: number) => at - other.utcOffset(at * 1000) * 60
  const wrong: string[] = []
  const apart: string[] = []
  const first = Date.UTC(firstYear, 0, 1) / 1000
  const last = Date.UTC(firstYear + years, 0, 1) / 1000
  for (let day = first; day < last; day += dayS) {
    const changes = wall(day - dayS) - wall(day + 2 * dayS) !== -3 * dayS
    if (!changes && (day / dayS) % every !== 0) continue
    const date = new Date(day * 1000).toISOString().slice(0, 10)
    if (isApart(day, zone, wall)) apart.push(date)
    else if (!isOnce(date, day, zone, wall)) wrong.push(date)
  }
  return { days: (last - first) / dayS, wrong, apart }
}

/** At any sixth hour from a day before to a day after: where only the hour of the change differs, that day is wrong, not apart. */
function isApart(day: number, zone: string, wall: (at: number) => number): boolean {
  for (let at = day - dayS; at <= day + 2 * dayS; at += 6 * 3600) {
    if (new Date(wall(at) * 1000).toISOString().slice(0, 16) !== `${localDate(at, zone)}T${localTime(at, zone)}`) return true
  }
  return false
}

function isOnce(date: string, day: number, zone: string, wall: (at: number) => number): boolean {
  const at = firstInstantAt(date, morning, zone)
  if (at === null) return false
  const shown = (instant: number) => wall(instant) - day
  if (!(shown(at) >= morningS && shown(at) < dayS)) return false
  // Nothing before it shows that time of that day.
  for (let before = at - 60; before >= at - 5 * 3600; before -= 900) if (shown(before) >= morningS) return false
  const site: Scheduled = { workspace: 'w', name: 's', zone, times: { morning }, days: anyDay, posts: ['morning'], closed: false }
  const keys = (instant: number) => due(instant, site, ['morning']).due.map(({ key }) => key)
  const own = `w/s/morning/${date}`
  return !keys(at - 1).includes(own) && keys(at).join() === own && keys(at + 3600).join() === own
}
