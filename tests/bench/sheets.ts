import { layOut } from '../../src/core/sheets/lay-out.js'
import type { SheetSizes } from '../../src/core/sheets/layout.js'
import { notchedRectangle, outlineOf } from '../../src/core/sheets/outline.js'
import type { Polygon, Ring } from '../../src/core/sheets/polygon.js'
import { sizesOf } from '../../src/core/sheets/sizes.js'
import { sheet } from '../support/facts.js'
import type { BenchResult } from './rules.js'

const bar = 200

/** A roof of 50 × `depthM` m with ten openings, one after another across it. */
function roofOf(depthM: number): Polygon {
  const openings = Array.from({ length: 10 }, (_, i): Ring => {
    const [x, y] = [3000 + i * 4500, ((i + 0.5) * depthM * 1000) / 11]
    return [
      [x, y],
      [x + 2000, y],
      [x + 2000, y + 1200],
      [x, y + 1200]
    ]
  })
  return outlineOf(notchedRectangle(50_000, depthM * 1000, []), openings)
}

function medianMs(roof: Polygon, sizes: SheetSizes): number {
  const times = Array.from({ length: 15 }, () => {
    const start = performance.now()
    layOut(roof, sizes, null)
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[7] as number
}

/** Laying a roof out, in both directions: 2,000 m² in ms, and sixteen times the roof against n log n. */
export function benchSheets(): readonly BenchResult[] {
  const sizes = sizesOf(sheet())
  const [small, large] = [medianMs(roofOf(40), sizes), medianMs(roofOf(640), sizes)]
  const growth = large / small
  const allowed = (16 * Math.log(16 * 60)) / Math.log(60)
  return [
    { unit: 'ms', name: 'a roof of 2,000 m² with ten openings laid out', peer: 'ms', value: small, bar, ok: small <= bar },
    { name: 'sixteen times that roof', peer: 'the small one (n log n)', value: growth, bar: allowed, ok: growth <= allowed }
  ]
}
