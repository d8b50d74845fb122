import { describe, expect, it } from 'vitest'
import type { WelderFact } from '../../../src/core/facts.js'
import { lapsedByWeather } from '../../../src/core/welds/lapsed-by-weather.js'
import { now } from '../../support/facts.js'

const lapsed = (name: string, lapsedBy: WelderFact['lapsedBy'], at = now): WelderFact => ({ name, status: 'lapsed', lapsedBy, widthMm: 41, at })

describe('welders that the weather lapsed', () => {
  it.each(['half-day', 'air', 'sheet', 'wind', 'cloud', 'rain'] as const)('are told once for a coupon: %s', (by) => {
    const found = lapsedByWeather([lapsed('robot', by)], [])

    expect(found).toEqual([{ name: 'robot', lapsedBy: by, couponAt: now }])
    expect(lapsedByWeather([lapsed('robot', by)], found)).toEqual([])
    // Another cause of the same coupon is no news: the welder stands already.
    expect(lapsedByWeather([lapsed('robot', 'rain')], found)).toEqual([])
    expect(lapsedByWeather([lapsed('robot', by, now + 60)], found)).toHaveLength(1)
    expect(lapsedByWeather([lapsed('hand', by)], found)).toHaveLength(1)
  })

  it('are none that a person lapsed, that failed, that are cleared or have no coupon today', () => {
    const others: WelderFact[] = [
      lapsed('A1', 'restart'),
      { ...lapsed('B1', 'failed'), status: 'failed' },
      { ...lapsed('C1', null), status: 'cleared' },
      { ...lapsed('D1', null), status: 'none' },
      { name: 'E1', status: 'none', lapsedBy: null, widthMm: null, at: null }
    ]

    expect(lapsedByWeather(others, [])).toEqual([])
  })
})
