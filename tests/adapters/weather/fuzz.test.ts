import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeForecast } from '../../../src/core/weather/forecast.js'
import { emptyHour } from '../../../src/core/weather/hour.js'
import { askedFault } from '../../support/fuzz/asked.js'
import { answerFault, answers, wildForecasts } from '../../support/fuzz/weather.js'
import { seamhands } from '../../support/seamhand.js'

/** A seeded slice of `npm run campaign -- fuzz`. */
const open = seamhands()
const now = 1_777_881_600

describe('answers of weather services, changed on the way', () => {
  it('are refused by name, or give hours that can be', () => {
    fc.assert(
      fc.property(answers, (answer) => {
        expect(answerFault(answer)).toBeNull()
      }),
      { numRuns: 30 }
    )
  })

  it('with any hours that can be get an answer', async () => {
    const seamhand = await open()
    await fc.assert(
      fc.asyncProperty(wildForecasts(now), async (forecast) => {
        expect(await askedFault(forecast, seamhand, now, ['spray', 'air', 'weld'])).toBeNull()
      }),
      { numRuns: 12 }
    )
  })
})

// Shrunk: a forecast of −89 °C moved by its own spread was outside what the formulas take, and the answer was a failure inside.
it('air as cold as can be, moved by its spread, is still reckoned', async () => {
  const seamhand = await open()
  const hours = Array.from({ length: 30 }, (_, i) => ({ ...emptyHour(now + i * 3600), airC: -89, rhPct: 96, windKmh: 0 }))
  const forecast = makeForecast({ source: 'met', issuedAt: now, sample: false, hours })
  expect(await askedFault(forecast, seamhand, now, ['spray', 'air', 'weld', 'day'])).toBeNull()
})
