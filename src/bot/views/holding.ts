import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import { num, rows, str } from './read.js'
import { welderName } from './welder.js'

/** Metres on hold, said without being asked: all of them, whose they are, and how they come off hold. Nothing when there are none. */
export function heldLines({ numbers }: Answer, how: How, text: Text): readonly string[] {
  const onHoldM = num(numbers, 'onHoldM')
  if (onHoldM === null || !(onHoldM > 0)) return []
  const newM = num(numbers, 'newOnHoldM')
  const metres = (value: number) => amount(value, 'm', how)
  const each = rows(numbers, 'held')
    .slice(0, 10)
    .map((one) => `${welderName(str(one, 'name'), text)} ${metres(num(one, 'onHoldM') ?? 0)}`)
  const whose = each.length === 0 ? '' : ` (${each.join(', ')})`
  const fresh = newM !== null && newM > 0 && newM < onHoldM ? `, ${text.weld.newOnHold(metres(newM))}` : ''
  return [`${text.weld.onHold(metres(onHoldM))}${whose}${fresh}`, text.weld.toRelease]
}
