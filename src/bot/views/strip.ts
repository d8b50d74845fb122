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
  const count = num(numbers, 'count') ?? 1
  const landSaid = findings.some(({ rule, outcome }) => rule === 'strip-land' && outcome !== 'go')
  const lines = [
    ...(length === null ? [] : [strip.length(length)]),
    ...(land === null || landSaid ? [] : [strip.land(land, least)]),
    ...(radius === null ? [] : [strip.corners(radius)]),
    ...(all === null || robot === null || hand === null ? [] : [(count > 1 ? strip.each : strip.perimeter)(all, robot, hand)]),
    ...togetherLine(numbers, count, how, text),
    ...rollLines(numbers, how, text)
  ]
  return pageOf(answer, { about: strip.pieces(count), lines }, how, text)
}

function togetherLine(numbers: Answer['numbers'], count: number, how: How, { strip }: Text): readonly string[] {
  const metres = (name: string) => amount(((num(numbers, name) ?? 0) * count) / 1000, 'm', how)
  return count > 1 && num(numbers, 'rolls') === null ? [strip.together(metres('weldPerimeterMm'), metres('robotMm'), metres('handMm'))] : []
}

/** How many a roll gives, and how many rolls are needed where the strips were counted. */
function rollLines(numbers: Answer['numbers'], how: How, { strip }: Text): readonly string[] {
  const [rollM, perRoll, rolls] = [num(numbers, 'rollM'), num(numbers, 'perRoll'), num(numbers, 'rolls')]
  if (rollM === null || perRoll === null) return []
  return [[strip.fromRoll(amount(rollM, 'm', how), perRoll), ...(rolls === null ? [] : [strip.rolls(rolls)])].join(' · ')]
}

function shown(valueMm: number | null, how: How): string | null {
  return valueMm === null ? null : amount(valueMm, 'mm', how)
}
