import type { LapsedBy } from '../../core/facts.js'
import type { Json } from '../../core/log/entry.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { driftWords } from './drift.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { flag, num, oneOf, str } from './read.js'

/** "robot: cleared to weld, 41 mm". */
export function welderLine(welder: Readonly<Record<string, Json>>, how: How, text: Text): string {
  const { coupon, labels, frame } = text
  const name = welderName(str(welder, 'name'), text)
  const widthMm = num(welder, 'widthMm')
  const width = widthMm === null ? '' : `, ${labels.width} ${amount(widthMm, 'mm', how)}`
  const said = `${name}${frame.colon}${clearanceWords(flag(welder, 'cleared'), oneOf<LapsedBy>(welder, 'lapsedBy', coupon.lapsedBy), text)}${width}`
  return [said, ...driftWords(welder, text)].join(' · ')
}

export function clearanceWords(cleared: boolean | null, lapsedBy: LapsedBy | null, { coupon }: Text): string {
  if (cleared === true) return coupon.cleared
  return lapsedBy === null ? coupon.notCleared : coupon.notClearedBy(coupon.lapsedBy[lapsedBy])
}

/** `robot` and `hand` in the language, any other name as it is. */
export function welderName(name: string | null, text: Text): string {
  if (name === null) return text.coupon.welder
  return name === 'robot' || name === 'hand' ? text.labels[name] : escapeText(name, 40)
}
