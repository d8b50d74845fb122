import { describe, expect, it } from 'vitest'
import { type Alert, isCurrent, isSevere, severities, standing } from '../../../src/core/weather/alert.js'
import { alertOf } from '../../support/alerts.js'
import { iso } from '../../support/instant.js'

const noon = iso('2026-05-04T12:00:00Z')
const hourS = 3600
const [from, to] = [noon - 4 * hourS, noon + 6 * hourS]

const ids = (all: readonly Alert[], now: number, asOf: number | null = now) =>
  standing({ source: 'nws', asOf, all }, now, from, to).map(({ id }) => id)

describe('standing', () => {
  it('has those that touch the time and are not over, both ends taken as they are', () => {
    const all = [
      alertOf({ id: 'before', from: from - hourS, to: from }),
      alertOf({ id: 'into', from: from - hourS, to: noon + 1 }),
      alertOf({ id: 'over', from, to: noon }),
      alertOf({ id: 'ahead', from: to - 1, to: to + hourS }),
      alertOf({ id: 'after', from: to, to: to + hourS })
    ]
    expect(ids(all, noon)).toEqual(['into', 'ahead'])
  })

  it('has the worst first, one that does not say how bad it is after the severe', () => {
    const all = (['minor', 'unknown', 'extreme', 'moderate', 'severe'] as const).map((severity) => alertOf({ id: severity, severity }))
    expect(ids(all, noon)).toEqual(severities)
    expect(all.filter(isSevere).map(({ id }) => id)).toEqual(['unknown', 'extreme', 'severe'])
  })

  it('keeps one whose message is out of date only while the service lately had it among those in force', () => {
    const all = [alertOf({ expiresAt: noon - hourS, to: to - hourS })]
    expect(ids(all, noon, noon - 1800)).toEqual(['a'])
    expect(ids(all, noon, noon - 1801)).toEqual([])
    expect(ids([alertOf({ expiresAt: noon + 1 })], noon, noon - 1801)).toEqual(['a'])
    expect(ids([alertOf({ expiresAt: noon })], noon, noon - 1801)).toEqual([])
  })

  it('is empty where no service covers the place', () => {
    expect(standing(null, noon, from, to)).toEqual([])
  })
})

it('an answer counts as all there is for half an hour, none at all never', () => {
  const alerts = { source: 'nws', asOf: noon, all: [] }
  expect(isCurrent(alerts, noon + 1800)).toBe(true)
  expect(isCurrent(alerts, noon + 1801)).toBe(false)
  expect(isCurrent({ ...alerts, asOf: null }, noon)).toBe(false)
})
