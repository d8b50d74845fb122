import fc from 'fast-check'
import { it } from 'vitest'
import { askedFault } from '../support/fuzz/asked.js'
import { sheetFault, sheetFiles } from '../support/fuzz/limits.js'
import { outlineFault, outlineFiles } from '../support/fuzz/outline.js'
import { answerFault, answers, wildForecasts } from '../support/fuzz/weather.js'
import { seamhands } from '../support/seamhand.js'

const seed = Number(process.env.SEED ?? 20_261_125)
const count = Number(process.env.COUNT ?? 10_000)
const open = seamhands()
const now = 1_777_881_600

const kinds = [
  { name: 'weather answers', run: () => judged(answers, answerFault) },
  { name: 'limits sheets', run: () => judged(sheetFiles, sheetFault) },
  { name: 'outline files', run: () => judged(outlineFiles, outlineFault) }
] as const

function judged<T>(all: fc.Arbitrary<T>, judge: (one: T) => string | null): void {
  fc.assert(
    fc.property(all, (one) => {
      const fault = judge(one)
      if (fault !== null) throw new Error(fault)
    }),
    { numRuns: count, seed }
  )
}

it.each(kinds)(`${count} $name from seed ${seed}: refused by name or read`, ({ run }) => run())

/** One in ten: each takes the whole engine several times. */
it(`${count / 10} forecasts of hours that no roof has seen, from seed ${seed}: every question gets an answer`, async () => {
  const seamhand = await open()
  await fc.assert(
    fc.asyncProperty(wildForecasts(now), async (forecast) => {
      const fault = await askedFault(forecast, seamhand, now, ['spray', 'air', 'weld', 'day', 'day 2026-05-05', 'kit K1 deck 20'])
      if (fault !== null) throw new Error(fault)
    }),
    { numRuns: Math.ceil(count / 10), seed }
  )
})
