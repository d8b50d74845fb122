import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { num, str } from './read.js'

/** "widths are falling …, at this rate short in 2 coupons → check …": said before a coupon fails. Nothing without a drift. */
export function driftWords(numbers: Answer['numbers'], { weld }: Text): readonly string[] {
  const kind = str(numbers, 'drift')
  if (kind !== 'falling' && kind !== 'low') return []
  const shortIn = num(numbers, 'shortIn')
  return [`${weld[kind]}${shortIn === null ? '' : `, ${weld.shortIn(shortIn)}`} → ${weld.checkDrift}`]
}
