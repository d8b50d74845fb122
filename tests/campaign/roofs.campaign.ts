import fc from 'fast-check'
import { expect, it } from 'vitest'
import { layOut } from '../../src/core/sheets/lay-out.js'
import { faultsOf } from '../support/sheets/judge-layout.js'
import { type Roof, roofs } from '../support/sheets/roofs.js'

const seed = Number(process.env.SEED ?? 20_261_125)
const count = Number(process.env.COUNT ?? 10_000)

/** Every roof whose layout an overlay of its pieces finds wrong is named with what it takes to lay it again. */
it(`lays ${count} roofs from seed ${seed} without a fault`, () => {
  const wrong: string[] = []
  let laid = 0
  for (const roof of fc.sample(roofs, { numRuns: count, seed })) {
    const faults = judged(roof)
    if (faults !== null) laid += 1
    if (laid % 1000 === 0) process.stdout.write(`${laid} laid, ${wrong.length} wrong\n`)
    if (faults !== null && faults.length > 0) wrong.push(`${JSON.stringify(roof)}: ${faults.join('; ')}`)
  }
  process.stdout.write(`${laid} of ${count} roofs laid, the others narrower than a sheet; ${wrong.length} wrong\n`)
  for (const one of wrong.slice(0, 20)) process.stdout.write(`${one}\n`)
  expect(wrong.length).toBe(0)
  expect(laid).toBeGreaterThan(count * 0.8)
})

function judged({ outline, sizes, along }: Roof): readonly string[] | null {
  try {
    const layout = layOut(outline, sizes, along)
    return layout === null ? null : faultsOf(layout)
  } catch (thrown) {
    return [String(thrown)]
  }
}
