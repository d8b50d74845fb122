import { dayMarks, localDate } from '../../core/instant.js'
import type { KitState } from '../../core/log/states/kit.js'
import { firstInstantAt, nextWorkday } from '../../core/schedule.js'
import { convert } from '../../core/units.js'
import { boxCOf, timesOfKit } from '../decision/kit-times.js'
import type { Text } from '../text/text.js'
import { clock } from '../views/clock.js'
import { escapeText } from '../views/escape.js'
import type { How } from '../views/how.js'
import type { PostOn } from './post.js'

const mostKits = 6
/** Foretelling a kit takes its time, and nobody warms more in a night. */
const mostForetold = 12

/** A line for each kit that has to be seen to before the next work begins; nothing for one that will be ready as it stands. */
export function kitsTonight(on: PostOn, how: How, text: Text): readonly string[] {
  const kits = on.record.kits.filter(({ empty }) => !empty).slice(0, mostForetold)
  const lines = kits.flatMap((kit) => kitLine(kit, on, how, text))
  return lines.length > mostKits ? [...lines.slice(0, mostKits), text.frame.more(lines.length - mostKits)] : lines
}

function kitLine(kit: KitState, on: PostOn, how: How, text: Text): readonly string[] {
  const { settings, sheet, forecast, now } = on
  const said = (words: string) => [`${text.kit.name(escapeText(kit.name, 40))}${text.frame.colon}${words}`]
  if (kit.isoC === null && kit.resinC === null) return said(text.fixes['read:kit'])
  const times = timesOfKit(kit, { settings, sheet, forecast, boxC: boxCOf(on.record.kits), learned: on.memory.site.learned ?? null, now })
  const begins = nextBegin(on)
  const at = (instant: number) => clock(instant, now, how)
  if (kit.place?.value === 'box') return times.readyAt !== null && times.readyAt > begins ? said(text.kit.ready(at(times.readyAt))) : []
  if (times.startBy !== null) return times.startBy < begins ? said(text.kit.startBy(at(times.startBy))) : []
  // Too late for the box to be enough, or nothing is known of it: the sooner the better.
  return tooCold(kit, times.meanC, on) ? said(text.posts.boxNow) : []
}

function nextBegin({ settings, now }: PostOn): number {
  const date = nextWorkday(localDate(now, settings.zone), settings.days)
  return firstInstantAt(date, settings.hours.slice(0, 5), settings.zone) ?? dayMarks(date, settings.zone).noon
}

function tooCold({ isoC, resinC }: KitState, meanC: number | null, { sheet }: PostOn): boolean {
  const { min, unit } = sheet.limits.kitTemperature
  const minC = min === null ? null : convert(min, unit, 'C')
  const coldest = Math.min(...[meanC, isoC?.value ?? null, resinC?.value ?? null].filter((c) => c !== null))
  return minC !== null && coldest < minC
}
