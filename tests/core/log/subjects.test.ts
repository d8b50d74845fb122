import { describe, expect, it } from 'vitest'
import { entryTypes } from '../../../src/core/log/entry.js'
import { touches } from '../../../src/core/log/subjects.js'

const at = '2026-05-04T06:10:00Z'
const day = '2026-05-04'

describe('touches', () => {
  it.each([
    ['reading', 'day:2026-05-04', { airC: 20 }, []],
    ['statement', 'day:2026-05-04', { substrateDry: true }, []],
    ['statement', 'day:2026-05-04', { compatibility: 'ask' }, ['site']],
    ['statement', 'day:2026-05-04', { deckMoisturePassed: true }, ['site']],
    ['kit', 'kit:K7', { isoC: 24 }, ['site']],
    ['kit', 'kit:K7', {}, ['site']],
    ['kit', 'kit:K7', { foam: { signs: [], verdict: 'good' } }, ['site', 'day:2026-05-04']],
    ['coupon', 'welder:robot', { widthMm: 41 }, ['day:2026-05-04']],
    ['welder', 'welder:robot', { event: 'off' }, ['day:2026-05-04']],
    ['void', 'void:3', { course: 4 }, ['site']],
    ['repair', 'void:3', {}, ['site', 'day:2026-05-04']],
    ['note', 'day:2026-05-04', { details: { drains: 'good' } }, ['site']],
    ['note', 'day:2026-05-04', { fire: { heat: true } }, []],
    ['note', 'punch:2', { text: 'x' }, ['site']],
    ['bond', 'day:2026-05-04', { substrate: 'board' }, []],
    ['seal', 'day:2026-05-04', { openEdgeM: 4 }, []],
    ['photo', 'void:3', { sha256: 'x' }, []],
    ['probe', 'void:3', { passed: true }, ['site']],
    ['laid', 'day:2026-05-04', { areaM2: 40 }, ['site']],
    ['laid', 'day:2026-05-04', { areaM2: 40, robotM: 20, handM: 3, kit: 'K7' }, ['site', 'welder:robot', 'welder:hand', 'kit:K7']],
    ['setting', 'site', { units: 'us' }, []],
    ['decision', 'day:2026-05-04', { activity: 'spray' }, []],
    ['override', 'day:2026-05-04', { reason: 'x' }, []]
  ] as const)('a %s of %s with %j moves its own subject first, then the others it changes', (type, subject, data, besides) => {
    expect(touches({ type, subject, data, at }, day)).toEqual([subject, ...besides])
  })

  it('gives every type its own subject, once', () => {
    for (const type of entryTypes) {
      const touched = touches({ type, subject: 'site', data: {}, at }, day)
      expect(touched[0]).toBe('site')
      expect(new Set(touched).size).toBe(touched.length)
    }
  })

  it('takes the day it is handed: the local one of the site when it was written', () => {
    expect(touches({ type: 'coupon', subject: 'welder:robot', data: {}, at: '2026-05-04T22:30:00Z' }, '2026-05-05')).toEqual([
      'welder:robot',
      'day:2026-05-05'
    ])
  })
})
