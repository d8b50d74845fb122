import { within } from '../physics/range.js'
import type { Cylinder } from './cylinder.js'
import { conductionTrail, type Surroundings, type Uniform } from './kit-model.js'
import { valueAt } from './trail.js'

/** A kit read, left in known surroundings, then mixed (or purged) and read again. */
export interface ReadingPair {
  readonly from: Uniform
  readonly mixed: Uniform
  readonly around: Surroundings
}

/** A mixing factor and its standard deviation, from how many pairs. */
export interface Learned {
  readonly mixing: number
  readonly spread: number
  readonly pairs: number
}

/** Bounds of a learned factor. */
const lowest = 1
const highest = 20
/** Fewer say less than the sheet does. */
const fewestPairs = 3
/** The newest are enough, and bound the work. */
const mostPairs = 40
/** Standard deviation of a reading with what is around it, K, and of the sheet's factor, as ln of a ratio (here 2). From memory. */
const readingK = 0.7
const priorLog = Math.LN2
/** Beyond this many standard deviations a reading pulls no harder: a mistyped one must not decide. */
const outlier = 3
const nodes = 7
const fine = 240

/**
 * The effective mixing factor of a type of kit, 1…20, by least squares over pairs of readings with the sheet's value as prior;
 * that value itself with fewer than three usable pairs. A pair counts when its surroundings are known and at least an hour and
 * at most 10 days lie between. RangeError for a body outside its ranges or a sheet's factor outside 1…1000.
 */
export function learnMixing(body: Cylinder, sheetMixing: number, pairs: readonly ReadingPair[]): Learned {
  within('mixing', sheetMixing, lowest, 1000)
  const prior = Math.min(sheetMixing, highest)
  const usable = pairs.slice(-mostPairs).flatMap((pair) => predictions(body, pair) ?? [])
  if (usable.length < fewestPairs) return { mixing: sheetMixing, spread: sheetMixing * priorLog, pairs: usable.length }
  const logs = Array.from({ length: fine + 1 }, (_, index) => (Math.log(highest) * index) / fine)
  const costs = logs.map((log) => ((log - Math.log(prior)) / priorLog) ** 2 + usable.reduce((sum, misses) => sum + costOf(misses, log), 0))
  const least = Math.min(...costs)
  const best = logs[costs.indexOf(least)] ?? 0
  const mixing = Math.exp(best)
  return { mixing, spread: mixing * deviation(logs, costs, least, best), pairs: usable.length }
}

/** How far the model misses the second reading, K, at each node of the factor; null for a pair that says nothing. */
function predictions(body: Cylinder, { from, mixed, around }: ReadingPair): readonly (readonly number[])[] | null {
  const tookS = mixed.at - from.at
  if (!(tookS >= 3600 && tookS <= 10 * 86_400 && usual(from.c) && usual(mixed.c))) return null
  const misses: number[] = []
  for (let node = 0; node < nodes; node += 1) {
    const factor = highest ** (node / (nodes - 1))
    const meanC = valueAt(conductionTrail(body, factor, from, mixed.at, around), 'meanC', mixed.at)
    if (meanC === null) return null
    misses.push(mixed.c - meanC)
  }
  return [misses]
}

function usual(c: number): boolean {
  return c >= -40 && c <= 80
}

/** In a straight line between the nodes; Huber's function, so that it grows no faster than linearly for an outlier. */
function costOf(misses: readonly number[], log: number): number {
  const place = (log / Math.log(highest)) * (nodes - 1)
  const node = Math.min(Math.floor(place), nodes - 2)
  const here = misses[node] ?? 0
  const size = Math.abs(here + ((misses[node + 1] ?? here) - here) * (place - node)) / readingK
  return size <= outlier ? size ** 2 : 2 * outlier * size - outlier ** 2
}

/** Standard deviation of ln of the factor about the best one, weighed by likelihood. */
function deviation(logs: readonly number[], costs: readonly number[], least: number, best: number): number {
  let sum = 0
  let squares = 0
  for (const [index, log] of logs.entries()) {
    const weight = Math.exp(-((costs[index] ?? 0) - least) / 2)
    sum += weight
    squares += weight * (log - best) ** 2
  }
  return Math.sqrt(squares / sum)
}
