import { describe, expect, it } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { sunEvents } from '../../../src/core/gather/daylight.js'
import { gather, gathererThen } from '../../../src/core/gather/gather.js'
import { roofOf } from '../../../src/core/gather/roof-of.js'
import { demoSite } from '../../../src/core/site.js'
import { sheet as sheetOf } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { remembered } from '../../support/remembered.js'

const sheet = sheetOf()
const now = iso('2026-05-04T08:00:00Z')
const forecast = sampleForecast(now, demoSite.zone)
const sun = sunEvents(demoSite, '2026-05-04')
const memory = remembered(
  [
    [now - 600, 'reading', 'day', { airC: 19, rhPct: 50, windKmh: 10, gustKmh: 15, substrateC: 21 }],
    [now - 600, 'statement', 'day', { rainFalling: false, substrateDry: true, substrateClean: true, fleeceDry: true }],
    [now - 600, 'kit', 'kit:K1', { isoC: 25, resinC: 24, mixed: true }]
  ],
  now
)
const roof = roofOf(memory, forecast, sheet, now, 14)

describe('the facts of instants to come', () => {
  it('are, looked up together, those looked up one by one, each as it will be known then', () => {
    const then = gathererThen(memory, forecast, sun, sheet, roof)
    for (const hours of [0, 0.25, 0.75, 1.5, 3, 5, 9, 11.9, 13]) {
      const at = now + hours * 3600
      expect(then(at), `after ${hours} h`).toEqual(gather(memory, forecast, sun, sheet, at, at, roof))
    }
  })

  it('know a forecast that will be too old then, where those of a plan know it as it is now', () => {
    const at = now + 13 * 3600
    expect(gathererThen(memory, forecast, sun, sheet, roof)(at).windKmh.value).toBeNull()
    expect(gather(memory, forecast, sun, sheet, at, now, roof).windKmh.value).not.toBeNull()
  })

  it('stand in order of name, as a decision is hashed', () => {
    const names = Object.keys(gather(memory, forecast, sun, sheet, now, now, roof))
    expect(names).toEqual([...names].sort())
  })
})
