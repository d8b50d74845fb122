import fc from 'fast-check'
import { expect, it } from 'vitest'
import { verifySite } from '../../src/bot/verify.js'
import { handleFaultOf } from '../support/messages/handled.js'
import { faultOf, wildFaultOf } from '../support/messages/judge.js'
import { anyText, badlyTyped, type Message, wellFormed } from '../support/messages/messages.js'
import { seamhands } from '../support/seamhand.js'

const seed = Number(process.env.SEED ?? 20_261_125)
const count = Number(process.env.COUNT ?? 1_000_000)
/** One in so many goes through the whole bot, on a store that flushes. */
const every = Number(process.env.EVERY ?? 100)
const open = seamhands()

/** Of ten messages six are whole, three badly typed, one is anything. */
const kinds = [
  { name: 'of the trade', part: 0.6, messages: wellFormed, judge: faultOf },
  { name: 'badly typed', part: 0.3, messages: badlyTyped, judge: wildFaultOf },
  { name: 'of anything', part: 0.1, messages: anyText, judge: wildFaultOf }
] as const

it.each(kinds)(`reads $part of ${count} messages $name from seed ${seed}, none in a wrong unit`, ({ part, messages, judge, name }) => {
  const numRuns = Math.ceil(count * part)
  const began = Date.now()
  let done = 0
  fc.assert(
    fc.property(messages, (message) => {
      done += 1
      if (done % 100_000 === 0) process.stdout.write(`${done} ${name}, ${Math.round((Date.now() - began) / 1000)} s\n`)
      const fault = judge(message)
      if (fault !== null) throw new Error(fault)
    }),
    { numRuns, seed }
  )
  process.stdout.write(`${done} ${name} judged, ${Math.round((done / (Date.now() - began)) * 1000)} a second\n`)
  expect(done).toBeGreaterThanOrEqual(numRuns)
})

it(`answers one in ${every} of them with the whole bot, and the chain holds`, async () => {
  const seamhand = await open({ weather: 'sample' })
  const began = Date.now()
  const tally: Record<string, number> = {}
  for (const { part, messages } of kinds) {
    const some: readonly Message[] = fc.sample(messages, { numRuns: Math.ceil((count * part) / every), seed: seed + 1 })
    for (const message of some) {
      const { fault, ended } = await handleFaultOf(message, seamhand)
      tally[ended] = (tally[ended] ?? 0) + 1
      expect(fault).toBeNull()
    }
  }
  const verdict = await verifySite(seamhand.store, { workspace: 'local', site: 'demo' }, [])
  process.stdout.write(`${JSON.stringify({ tally, entries: verdict?.entries, seconds: Math.round((Date.now() - began) / 1000) })}\n`)
  expect(verdict?.firstBad).toBeNull()
  expect(seamhand.bugs).toEqual([])
})
