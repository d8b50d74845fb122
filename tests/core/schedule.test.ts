import { describe, expect, test } from 'vitest'
import { due, firstInstantAt, isStale, nextSlot, type Scheduled } from '../../src/core/schedule.js'
import { iso } from '../support/instant.js'
import { readTruth } from '../truth/rows.js'

interface Change {
  readonly zone: string
  readonly at: string
  readonly offsetBeforeS: number
  readonly offsetAfterS: number
}

// Source: IANA time zone database 2025b, printed by zdump (tests/truth/clock-changes.json): another reader than the library.
const changes = (readTruth('clock-changes.json') as { readonly rows: readonly Change[] }).rows

/** The clocks of the zone around one change, as seconds of a wall clock counted as if it were UTC. */
function wall(at: number, change: Change): number {
  return at + (at < iso(change.at) ? change.offsetBeforeS : change.offsetAfterS)
}

/** By looking at every minute of two days: the definition itself, no cleverness. */
function byLooking(date: string, time: string, change: Change): number | null {
  const day = iso(`${date}T00:00:00Z`)
  const from = iso(`${date}T${time}:00Z`)
  for (let at = day - 86_400; at < day + 2 * 86_400; at += 60) {
    const shown = wall(at, change)
    if (shown >= from && shown < day + 86_400) return at
  }
  return null
}

describe('the first instant of a local day at or after a time', () => {
  test('six zones change their clocks twice', () => {
    expect(new Set(changes.map(({ zone }) => zone)).size).toBe(6)
    expect(changes).toHaveLength(12)
  })

  for (const change of changes) {
    test(`${change.zone} on the day of ${change.at}: every quarter of an hour`, () => {
      const local = new Date((iso(change.at) + change.offsetAfterS) * 1000).toISOString().slice(0, 10)
      const before = new Date((iso(change.at) + change.offsetBeforeS - 1) * 1000).toISOString().slice(0, 10)
      for (const date of new Set([local, before])) {
        for (let minute = 0; minute < 1440; minute += 15) {
          const time = `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`
          expect([time, firstInstantAt(date, time, change.zone)]).toEqual([time, byLooking(date, time, change)])
        }
      }
    })
  }

  test('a jump and a time shown twice, by hand', () => {
    expect(firstInstantAt('2026-03-08', '02:30', 'America/New_York')).toBe(iso('2026-03-08T07:00:00Z'))
    expect(firstInstantAt('2026-11-01', '01:30', 'America/New_York')).toBe(iso('2026-11-01T05:30:00Z'))
    expect(firstInstantAt('2026-04-24', '00:00', 'Africa/Cairo')).toBe(iso('2026-04-23T22:00:00Z'))
    expect(firstInstantAt('2026-10-04', '02:15', 'Australia/Lord_Howe')).toBe(iso('2026-10-03T15:30:00Z'))
  })

  test('null where the date has no such instant, and for nonsense', () => {
    // Nuuk went from 22:00 to 23:00 on its clock in other years; in 2026 from 23:00 of Saturday to Sunday 00:00 (zdump).
    expect(firstInstantAt('2026-03-28', '23:30', 'America/Nuuk')).toBeNull()
    // Samoa had no 30 December 2011 (zdump): the whole day was jumped over.
    expect(firstInstantAt('2011-12-30', '12:00', 'Pacific/Apia')).toBeNull()
    expect(firstInstantAt('2026-02-30', '12:00', 'UTC')).toBeNull()
    expect(firstInstantAt('2026-05-04', '25:00', 'UTC')).toBeNull()
    expect(firstInstantAt('2026-05-04', '12:00', 'Nowhere/Else')).toBeNull()
  })
})

const site: Scheduled = {
  workspace: 'T1',
  name: 'north',
  zone: 'Europe/Berlin',
  times: { morning: '05:30', evening: '17:00' },
  days: [1, 2, 3, 4, 5, 6],
  posts: ['morning', 'evening'],
  closed: false
}
/** 2026-05-04 is a Monday; Berlin is two hours ahead. */
const dueAt = iso('2026-05-04T03:30:00Z')

describe('what is due', () => {
  test('from the minute on, for three hours; then it is stale', () => {
    const slot = { key: 'T1/north/morning/2026-05-04', kind: 'morning', date: '2026-05-04', dueAt }
    expect(due(dueAt - 1, site, ['morning'])).toEqual({ due: [], stale: [] })
    expect(due(dueAt, site, ['morning'])).toEqual({ due: [slot], stale: [] })
    expect(due(dueAt + 3 * 3600, site, ['morning'])).toEqual({ due: [slot], stale: [] })
    expect(due(dueAt + 3 * 3600 + 1, site, ['morning'])).toEqual({ due: [], stale: [slot] })
    expect(due(iso('2026-05-04T22:00:00Z'), site, ['morning'])).toEqual({ due: [], stale: [] })
    expect(isStale(dueAt, Number.NaN)).toBe(true)
  })

  test('kinds in order of their time; only kinds asked for, wanted and timed', () => {
    const evening = iso('2026-05-04T15:00:00Z')
    expect(due(evening, site, ['morning', 'evening']).due.map(({ kind }) => kind)).toEqual(['evening'])
    expect(due(evening, { ...site, times: { morning: '16:00', evening: '15:00' } }, ['morning', 'evening']).due.map(({ kind }) => kind)).toEqual([
      'evening',
      'morning'
    ])
    expect(due(dueAt, site, ['watch']).due).toEqual([])
    expect(due(dueAt, { ...site, posts: ['evening'] }, ['morning']).due).toEqual([])
    expect(due(dueAt, { ...site, posts: [] }, ['morning']).due).toEqual([])
  })

  test('on the days of the site only, by its own calendar', () => {
    const sunday = iso('2026-05-10T03:30:00Z')
    expect(due(sunday, site, ['morning']).due).toEqual([])
    expect(due(sunday, { ...site, days: [7] }, ['morning']).due).toHaveLength(1)
    // In Auckland it is Monday already.
    const auckland = { ...site, zone: 'Pacific/Auckland', days: [1] }
    expect(due(iso('2026-05-10T17:30:00Z'), auckland, ['morning']).due.map(({ date }) => date)).toEqual(['2026-05-11'])
  })

  test('nothing of a closed site', () => {
    expect(due(dueAt, { ...site, closed: true }, ['morning'])).toEqual({ due: [], stale: [] })
  })

  test('once a local day in every zone: quarter by quarter through the days of a change', () => {
    for (const change of changes) {
      const keys = new Set<string>()
      let turns = 0
      const midnight = Math.floor(iso(change.at) / 86_400) * 86_400
      const own = { ...site, zone: change.zone, times: { morning: '01:30' }, days: [1, 2, 3, 4, 5, 6, 7] }
      for (let at = midnight - 86_400; at < midnight + 2 * 86_400; at += 900) {
        for (const { key } of due(at, own, ['morning']).due) {
          if (!keys.has(key)) turns += 1
          keys.add(key)
        }
      }
      expect([change.zone, turns]).toEqual([change.zone, keys.size])
      expect(keys.size).toBeGreaterThanOrEqual(2)
      expect(keys.size).toBeLessThanOrEqual(4)
    }
  })
})

describe('the next post', () => {
  const site: Scheduled = {
    workspace: 'local',
    name: 'north',
    zone: 'Europe/Berlin',
    times: { evening: '17:00', morning: '02:30' },
    days: [1, 2, 3, 4, 5],
    posts: ['evening', 'morning'],
    closed: false
  }
  const kinds = ['evening', 'morning']

  test.each([
    ['later today', '2026-05-04T08:00:00Z', 'evening', '2026-05-04T15:00:00Z'],
    ['at its own instant: the one after', '2026-05-04T15:00:00Z', 'morning', '2026-05-05T00:30:00Z'],
    ['over a weekend', '2026-05-08T15:00:00Z', 'morning', '2026-05-11T00:30:00Z'],
    // Source: IANA time zone database: on 29 March 2026 the clocks of Berlin jump from 02:00 to 03:00, at 01:00 UTC.
    ['in a gap of the clocks, the first instant after it', '2026-03-28T20:00:00Z', 'morning', '2026-03-29T01:00:00Z']
  ])('%s', (name, now, kind, at) => {
    const days = name.startsWith('in a gap') ? [7] : site.days
    expect(nextSlot(iso(now), { ...site, days }, kinds)).toMatchObject({ kind, dueAt: iso(at) })
  })

  test('none of a closed site, of one without days, or of kinds that nobody wants', () => {
    const now = iso('2026-05-04T08:00:00Z')
    for (const part of [{ closed: true }, { days: [] }, { posts: [] }]) expect(nextSlot(now, { ...site, ...part }, kinds)).toBeNull()
  })
})
