import { drawDay } from '../../src/adapters/pictures/day.js'
import { toPng } from '../../src/adapters/pictures/png.js'
import { sixDays } from '../support/day-pictures.js'
import type { BenchResult } from './rules.js'
import { median } from './times.js'

/** The picture of a day as PNG, from data to bytes: six days of the invented week, in three languages. */
export function benchPicture(): BenchResult {
  const charts = Object.values(sixDays())
  const draw = () => charts.map((chart) => time(() => toPng(drawDay(chart))))
  draw()
  const value = median(Array.from({ length: 5 }, draw).flat())
  return {
    name: 'picture of a day, PNG',
    peer: 'the bar alone; six days of the invented week; one at a time on one thread',
    value,
    bar: 100,
    unit: 'ms',
    ok: value <= 100
  }
}

function time(run: () => unknown): number {
  const start = performance.now()
  run()
  return performance.now() - start
}
