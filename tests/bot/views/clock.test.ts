import { describe, expect, it } from 'vitest'
import { clock, clockOf, dateOf, weekday } from '../../../src/bot/views/clock.js'
import { metric, morning } from '../../support/answers.js'

describe('clock', () => {
  it('is the time of the site, with the day when it is another day there', () => {
    expect(clock(morning, morning, metric)).toBe('08:10')
    expect(clock(morning + 86_400, morning, metric)).toBe('Tue 5 May 08:10')
    expect(clock(morning + 86_400, morning, { ...metric, lang: 'es' })).toBe('mar 5 may 08:10')
    expect(clock(morning + 86_400, morning, { ...metric, lang: 'fr' })).toBe('mar. 5 mai 08:10')
    expect(clock(morning, morning, { ...metric, zone: 'America/Denver' })).toBe('00:10')
  })

  it('reads ISO text and dates, and says nothing of what is none', () => {
    expect(clockOf('2026-05-04T06:10:00Z', morning, metric)).toBe('08:10')
    expect(clockOf(null, morning, metric)).toBeNull()
    expect(clockOf('soon', morning, metric)).toBeNull()
    expect(dateOf('2027-01-31', metric)).toBe('31 Jan 2027')
    expect(dateOf('never', metric)).toBeNull()
  })

  it('knows that 1 is Monday', () => {
    expect([1, 7].map((day) => weekday(day, metric))).toEqual(['Mon', 'Sun'])
  })
})
