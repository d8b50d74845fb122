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
  { name: 'weather answers', run: () => judged('weather answers', answers, answerFault) },
  { name: 'limits sheets', run: () => judged('limits sheets', sheetFiles, sheetFault) },
  { name: 'outline files', run: () => judged('outline files', outlineFiles, outlineFault) }
] as const

/** Says ten times how far it is, and which one took longest: what keeps a reader busy is a find too. */
function progressOf(name: string, runs: number): { readonly done: (tookMs: number, one: unknown) => void } {
  const began = Date.now()
  let [done, longestMs, longest] = [0, 0, '']
  return {
    done: (tookMs, one) => {
      done += 1
      if (tookMs > longestMs) [longestMs, longest] = [tookMs, JSON.stringify(one).slice(0, 300)]
      if (done % Math.max(1, Math.floor(runs / 10)) !== 0) return
      process.stdout.write(`${done} ${name}, ${Math.round((Date.now() - began) / 1000)} s, the longest ${Math.round(longestMs)} ms: ${longest}\n`)
    }
  }
}

function judged<T>(name: string, all: fc.Arbitrary<T>, judge: (one: T) => string | null): void {
  const progress = progressOf(name, count)
  fc.assert(
    fc.property(all, (one) => {
      const from = performance.now()
      const fault = judge(one)
      progress.done(performance.now() - from, one)
      if (fault !== null) throw new Error(fault)
    }),
    { numRuns: count, seed }
  )
}

it.each(kinds)(`${count} $name from seed ${seed}: refused by name or read`, ({ run }) => run())

/** One in ten: each takes the whole engine several times. */
it(`${count / 10} forecasts of hours that no roof has seen, from seed ${seed}: every question gets an answer`, async () => {
  const seamhand = await open()
  const numRuns = Math.ceil(count / 10)
  const progress = progressOf('forecasts', numRuns)
  await fc.assert(
    fc.asyncProperty(wildForecasts(now), async (forecast) => {
      const from = performance.now()
      const fault = await askedFault(forecast, seamhand, now, ['spray', 'air', 'weld', 'day', 'day 2026-05-05', 'kit K1 deck 20'])
      progress.done(performance.now() - from, { startedAt: forecast.hours[0]?.at, hours: forecast.hours.length })
      if (fault !== null) throw new Error(fault)
    }),
    { numRuns, seed }
  )
})
