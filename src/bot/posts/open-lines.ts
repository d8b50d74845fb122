import type { VoidState } from '../../core/log/states/void.js'
import type { WelderState } from '../../core/log/states/welder.js'
import type { Text } from '../text/text.js'
import { amount } from '../views/amount.js'
import { welderName } from '../views/decision.js'
import type { How } from '../views/how.js'
import type { PostOn } from './post.js'

const mostVoids = 10

/** A line for each thing that still stands open at the end of the day. */
export function openLines(on: PostOn, how: How, text: Text): readonly string[] {
  const voids = on.record.voids.filter(({ state }) => state !== 'passed').sort((a, b) => a.number - b.number)
  return [...voidLines(voids, how, text), ...on.record.welders.flatMap((welder) => heldLine(welder, how, text))]
}

function voidLines(voids: readonly VoidState[], how: How, text: Text): readonly string[] {
  const lines = voids.map((each) => voidLine(each, how, text))
  return lines.length > mostVoids ? [...lines.slice(0, mostVoids), text.frame.more(lines.length - mostVoids)] : lines
}

/** "void 1: course 4, end joint, at 3.2 m, 40 mm long, open". */
function voidLine({ number, state, found }: VoidState, how: How, { probe, frame }: Text): string {
  const parts = [
    probe.course(found.course),
    probe.on[found.on],
    ...(found.distanceM === null ? [] : [probe.at(amount(found.distanceM, 'm', how))]),
    probe.long(amount(found.lengthMm, 'mm', how)),
    probe.states[state]
  ]
  return `${probe.number(number)}${frame.colon}${parts.join(', ')}`
}

/** Metres welded while not cleared, or before a coupon that failed. */
function heldLine({ name, onHoldM }: WelderState, how: How, text: Text): readonly string[] {
  return onHoldM > 0 ? [`${welderName(name, text)}${text.frame.colon}${text.coupon.onHold(amount(onHoldM, 'm', how))}`] : []
}
