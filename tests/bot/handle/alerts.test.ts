import { describe, expect, it } from 'vitest'
import type { Alerts } from '../../../src/core/weather/alert.js'
import { alertOf } from '../../support/alerts.js'
import { iso } from '../../support/instant.js'
import { numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const now = iso('2026-05-04T08:00:00Z')
const storm = alertOf({ instruction: 'Go inside.' })
const alerts: Alerts = { source: 'nws', asOf: now, all: [alertOf({ id: 'b', event: 'Flood Advisory', severity: 'minor' }), storm] }
const line = '△ Severe Thunderstorm Warning, 14:00–16:00 (US National Weather Service): follow the service’s instruction'

describe.each(['day', 'air 15 rh 50 wind 5 gust 8 no rain no thunder'])('%s', (text) => {
  it('shows the alerts of today as lines, and all of them as numbers', async () => {
    const reply = await (await open({ weather: 'sample' })).ask(text, { alerts, log: false })
    expect(reply.text.split('\n')).toContain(line)
    expect(reply.text).not.toContain('Flood Advisory')
    expect(numbersOf(reply)).toMatchObject({
      alertsKnown: true,
      alertsAsOf: '2026-05-04T08:00:00Z',
      alerts: [
        {
          event: 'Severe Thunderstorm Warning',
          severity: 'severe',
          urgency: 'immediate',
          certainty: 'observed',
          from: '2026-05-04T12:00:00Z',
          to: '2026-05-04T14:00:00Z',
          expiresAt: '2026-05-04T14:00:00Z',
          headline: null,
          instruction: 'Go inside.',
          source: 'nws'
        },
        { event: 'Flood Advisory', severity: 'minor' }
      ]
    })
  })

  it('changes no outcome, no finding and no decision', async () => {
    const [own, warned] = [await open({ weather: 'sample' }), await open({ weather: 'sample' })]
    const [without, shown] = [await own.ask(text), await warned.ask(text, { alerts })]
    expect([shown.outcome, shown.activities, shown.findings]).toEqual([without.outcome, without.activities, without.findings])
    expect(await warned.head()).toEqual(await own.head())
  })

  it('says where they are not known, and nothing where no service covers the site', async () => {
    const seamhand = await open({ weather: 'sample' })
    const unknown = await seamhand.ask(text, { alerts: { ...alerts, asOf: null, all: [] }, log: false })
    expect(unknown.text.split('\n')).toContain('? severe-weather alerts not known')
    const none = await seamhand.ask(text, { log: false })
    expect(none.text).not.toContain('alert')
    expect(numbersOf(none)).toMatchObject({ alerts: null, alertsKnown: null, alertsAsOf: null })
  })
})

it('day tomorrow has those of tomorrow alone', async () => {
  const next = alertOf({ id: 'c', event: 'Heat Advisory', from: iso('2026-05-05T10:00:00Z'), to: iso('2026-05-05T18:00:00Z') })
  const reply = await (await open({ weather: 'sample' })).ask('day tomorrow', { alerts: { ...alerts, all: [storm, next] } })
  expect(reply.text).toMatch(/^△ Heat Advisory, 12:00–20:00/m)
  expect(reply.text).not.toContain('Thunderstorm Warning')
})
