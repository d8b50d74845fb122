import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf, dateOf } from './clock.js'
import { escapeText } from './escape.js'
import { heldLines } from './holding.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, rows, str } from './read.js'
import { pageOf } from './view.js'

/** A yield this far off the plan is named with its usual causes. */
const driftPctFrom = 10

/** `laid`: the area of the day, metres welded, yield against plan. */
export function laidView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { laid } = text
  const say = (name: string, unit: string) => shown(num(numbers, name), unit, how)
  const [area, robot, hand] = [say('areaM2', 'm2'), say('robotM', 'm'), say('handM', 'm')]
  const [real, plan] = [say('yieldM2PerKit', 'm2'), say('planM2PerKit', 'm2')]
  const driftPct = num(numbers, 'driftPct')
  const same = clockOf(str(numbers, 'sameAt'), answer.at, how)
  const lines = [
    ...(same === null ? [] : [`${shapes.caution} ${text.first.sameLaid(same)}`]),
    ...(robot === null || hand === null ? [] : [laid.welded(robot, hand)]),
    real === null ? laid.noPlan : laid.yield(real, plan),
    ...(driftPct === null || !(Math.abs(driftPct) > driftPctFrom) ? [] : [laid.drift(amount(Math.abs(driftPct), '%', how), driftPct > 0)]),
    ...kitLines(answer, how, text),
    ...heldLines(answer, how, text)
  ]
  return pageOf(answer, { about: area === null ? text.activities.lay : laid.area(area), lines, details: yieldLines(answer, how, text) }, how, text)
}

/** Which kit the area was put down to, where nobody said; and that it was said to be empty. */
function kitLines({ numbers, at }: Answer, how: How, { yields }: Text): readonly string[] {
  const name = escapeText(str(numbers, 'kit') ?? '?', 40)
  const emptied = clockOf(str(numbers, 'kitEmptiedAt'), at, how)
  return [...(flag(numbers, 'kitAssumed') === true ? [yields.assumed(name)] : []), ...(emptied === null ? [] : [yields.wasEmpty(name, emptied)])]
}

const mostLots = 12
const mostDays = 7

/** How far the kits of each lot and of the last days went. */
function yieldLines({ numbers }: Answer, how: How, { yields }: Text): readonly string[] {
  const line = (row: Readonly<Record<string, Json>>, said: (name: string, real: string, kits: number) => string, name: string) => {
    const [real, kits, driftPct] = [num(row, 'm2PerKit') ?? 0, num(row, 'kits') ?? 0, num(row, 'driftPct') ?? 0]
    const off = Math.abs(driftPct) > driftPctFrom ? ` · ${yields.off(amount(Math.abs(driftPct), '%', how), driftPct > 0)}` : ''
    return `${said(name, amount(real, 'm2', how), kits)}${off}`
  }
  const name = (row: Readonly<Record<string, Json>>) => str(row, 'name') ?? '?'
  return [
    ...rows(numbers, 'yieldByLot')
      .slice(-mostLots)
      .map((row) => line(row, yields.lot, escapeText(name(row), 40))),
    ...rows(numbers, 'yieldByDay')
      .slice(-mostDays)
      .map((row) => line(row, yields.day, dateOf(name(row), how) ?? name(row)))
  ]
}

function shown(value: number | null, unit: string, how: How): string | null {
  return value === null ? null : amount(value, unit, how)
}
