import { timesOfKit } from '../decision/kit-times.js'
import type { Text } from '../text/text.js'
import { clock } from '../views/clock.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import { numeral } from '../views/number.js'
import type { PostOn } from './post.js'

/** The kit in use, while it is still warming: ready for certain and likely, and whether that was learned from readings. */
export function kitNow(on: PostOn, how: How, text: Text): readonly string[] {
  const { memory, settings, sheet, forecast, now } = on
  const { kit, site } = memory
  const learned = site.learned ?? null
  if (kit.empty || (kit.isoC === null && kit.resinC === null)) return []
  const { readyAt, likelyAt } = timesOfKit(kit, { settings, sheet, forecast, boxC: null, learned, now })
  if (readyAt === null || readyAt <= now) return []
  const parts = [
    likelyAt === null || likelyAt >= readyAt
      ? text.kit.ready(clock(readyAt, now, how))
      : text.warming.likely(clock(likelyAt, now, how), clock(readyAt, now, how)),
    ...(learned === null ? [] : [text.warming.learned(numeral(learned.mixing, 1, how), learned.pairs)])
  ]
  return [`${text.kit.name(escapeText(kit.name, 40))}${text.frame.colon}${parts.join(' · ')}`]
}
