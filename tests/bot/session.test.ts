import { expect, test } from 'vitest'
import { type SiteView, StoreError } from '../../src/bot/ports.js'
import { nobodyAsks } from '../../src/bot/session/nobody.js'
import { remember } from '../../src/bot/session/remember.js'
import { openSession } from '../../src/bot/session/session.js'
import { firstPrev } from '../../src/core/log/entry.js'
import { emptyDay } from '../../src/core/log/states/day.js'
import { emptySite } from '../../src/core/log/states/site.js'
import { demoSite } from '../../src/core/site.js'
import { instantOf } from '../support/seamhand.js'

const key = { workspace: 'local', site: 'demo' }
/** 01:30 in Berlin: the local day has begun, that of UTC has not. */
const night = instantOf('2026-05-03T23:30:00Z')

/** A view of rows that writes down what is read of it, a line a call. */
function watched(states: Readonly<Record<string, object>>) {
  const reads: string[] = []
  const rowOf = (subject: string) =>
    states[subject] === undefined ? [] : [{ subject, state: { lastAt: night, lastSeq: 1, is: states[subject] }, seq: 1 }]
  const view = {
    key,
    head: { seq: 1, hash: firstPrev },
    base: demoSite,
    state: async (subject: string) => {
      reads.push(subject)
      return rowOf(subject)[0] ?? null
    },
    statesAt: async (subjects: readonly string[]) => {
      reads.push(subjects.join(' '))
      return subjects.flatMap(rowOf)
    }
  }
  return { reads, view: view as unknown as SiteView }
}

test('what nearly every question asks for is read in one go, by the day of the site', async () => {
  const today = { ...emptyDay, laidAt: night - 60 }
  const { reads, view } = watched({ 'day:2026-05-04': today, site: { ...emptySite, kit: 'K7' } })
  const memory = await remember(await openSession(nobodyAsks(key, night, 'slack'), view))
  expect(reads).toEqual(['site day:2026-05-04 day:2026-05-03', 'kit:K7'])
  expect(memory.today).toEqual(today)
  expect(memory.yesterday).toEqual(emptyDay)
  expect(memory.kit.name).toBe('K7')
})

test('a subject is read once, however often it is asked for', async () => {
  const { reads, view } = watched({})
  const session = await openSession(nobodyAsks(key, night, 'slack'), view)
  for (const subject of ['void:1', 'void:1', 'day:2026-05-04', 'day:2026-05-01'] as const) expect(await session.state(subject)).toBeNull()
  expect(reads.slice(1)).toEqual(['void:1', 'day:2026-05-01'])
})

// The runner fails a file in which a rejection was handled by nobody.
test('a store that is away is said at once, and nothing fails unseen', async () => {
  const { view } = watched({})
  const away = { ...view, statesAt: () => Promise.reject(new StoreError('away')) }
  await expect(openSession(nobodyAsks(key, night, 'slack'), away)).rejects.toThrow('away')
  await new Promise((resolve) => setTimeout(resolve, 5))
})
