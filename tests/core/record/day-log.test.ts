import { describe, expect, test } from 'vitest'
import type { Entry, EntryType, JsonObject } from '../../../src/core/log/entry.js'
import { counting, dayLog } from '../../../src/core/record/day-log.js'

function logged(seq: number, type: EntryType, data: JsonObject, at = `2026-05-04T0${seq}:00:00Z`, day = '2026-05-04') {
  const entry: Entry = {
    v: 1,
    workspace: 'local',
    site: 'demo',
    seq,
    at,
    loggedAt: at,
    author: 'U1',
    via: 'ask',
    type,
    subject: 'site',
    data,
    prev: ''
  }
  return { entry, hash: `h${seq}`, day }
}

describe('the log of a day', () => {
  test('in order of what happened, not of what was logged', () => {
    const lines = dayLog([logged(1, 'reading', { airC: 1 }), logged(2, 'reading', { airC: 2 }, '2026-05-04T00:30:00Z')], '2026-05-04')
    expect(lines.map(({ entry }) => entry.seq)).toEqual([2, 1])
  })

  test('what was undone stays in it and counts no more', () => {
    const lines = dayLog([logged(1, 'reading', { airC: 1 }), logged(2, 'undo', { target: 1 })], '2026-05-04')
    expect(lines[0]).toMatchObject({ undoneBy: 2, data: { airC: 1 } })
    expect(counting(lines, 'reading')).toEqual([])
  })

  test('the last correction that was not undone counts, weeks later too', () => {
    const lines = dayLog(
      [
        logged(1, 'coupon', { widthMm: 41 }),
        logged(2, 'correction', { target: 1, data: { widthMm: 40 } }, '2026-05-20T08:00:00Z', '2026-05-20'),
        logged(3, 'correction', { target: 1, data: { widthMm: 39 } }, '2026-05-21T08:00:00Z', '2026-05-21'),
        logged(4, 'undo', { target: 3 }, '2026-05-21T08:01:00Z', '2026-05-21')
      ],
      '2026-05-04'
    )
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatchObject({ data: { widthMm: 40 }, correctedBy: 2, undoneBy: null })
    expect(lines[0]?.entry.data).toEqual({ widthMm: 41 })
  })
})
