import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { num } from './read.js'
import { pageOf } from './view.js'

/** `strip`: how long to cut it, how it lands, how much there is to weld. */
export function stripView(answer: Answer, how: How, text: Text): Page {
  const { numbers, findings } = answer
  const { strip } = text
  const mm = (name: string) => shown(num(numbers, name), how)
  const [length, land, least, radius] = [mm('lengthMm'), mm('landMm'), mm('minWidthMm'), mm('cornerRadiusMm')]
  const [all, robot, hand] = [mm('weldPerimeterMm'), mm('robotMm'), mm('handMm')]
  const landSaid = findings.some(({ rule, outcome }) => rule === 'strip-land' && outcome !== 'go')
  const lines = [
    ...(length === null ? [] : [strip.length(length)]),
    ...(land === null || landSaid ? [] : [strip.land(land, least)]),
    ...(radius === null ? [] : [strip.corners(radius)]),
    ...(all === null || robot === null || hand === null ? [] : [strip.perimeter(all, robot, hand)])
  ]
  return pageOf(answer, { about: strip.pieces(num(numbers, 'count') ?? 1), lines }, how, text)
}

function shown(valueMm: number | null, how: How): string | null {
  return valueMm === null ? null : amount(valueMm, 'mm', how)
}
