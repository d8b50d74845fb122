import { type ReachWay, reachWays } from '../../core/kits/reach.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import { flag, num, oneOf, rows } from './read.js'

type Numbers = Answer['numbers']

const byName = Object.fromEntries(reachWays.map((way) => [way, way])) as Readonly<Record<ReachWay, ReachWay>>

/** How far a run may go by each way of working, and what a stop costs. */
export function runLines(numbers: Numbers, how: How, text: Text): readonly string[] {
  const { run } = text
  const ways = rows(numbers, 'ways').flatMap((one) => {
    const [way, reachM] = [oneOf<ReachWay>(one, 'how', byName), num(one, 'reachM')]
    if (way === null) return []
    return [`${run.ways[way]} ${reachM === null ? run.noLimit : amount(reachM, 'm', how)}`]
  })
  return ways.length === 0 ? [] : [run.reach(ways.join(' · ')), ...gelLine(numbers, how, text)]
}

function gelLine(numbers: Numbers, how: How, { run }: Text): readonly string[] {
  const [stopS, gelS] = [num(numbers, 'stopS'), num(numbers, 'nozzleGelS')]
  return flag(numbers, 'gelsAtStops') === true && stopS !== null && gelS !== null ? [run.gels(amount(stopS, 's', how), amount(gelS, 's', how))] : []
}

/** Said before the work begins: foam that cannot be covered in time, and nozzles that run out before it. */
export function runWarnings(numbers: Numbers, { run }: Text): readonly string[] {
  const [needed, perKit] = [num(numbers, 'nozzlesNeeded'), num(numbers, 'nozzlesPerKit')]
  if (num(numbers, 'stopEveryM') === 0) return [run.none]
  return flag(numbers, 'nozzlesShort') === true && needed !== null && perKit !== null ? [run.short(needed, perKit)] : []
}

/** The shortest open time of a day. */
export function shortestLine(numbers: Numbers, how: How, { run }: Text): readonly string[] {
  const [openTimeS, everyM] = [num(numbers, 'openTimeS'), num(numbers, 'stopEveryM')]
  return openTimeS === null || everyM === null || everyM === 0 ? [] : [run.shortest(amount(openTimeS, 's', how), amount(everyM, 'm', how))]
}
