import { fromIso, type Instant, localTime } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import type { Closing, Path } from '../../core/plan/last-sheet.js'
import type { Staged } from '../../core/plan/stage.js'
import type { Work } from '../../core/plan/what-fits.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clock } from './clock.js'
import type { How } from './how.js'
import { flag, num, oneOf, row, rows, str } from './read.js'
import { runWarnings } from './run.js'

const mostHours = 4

export type Numbers = Readonly<Record<string, Json>>

export function instantIn(numbers: Numbers, name: string): Instant | null {
  const text = str(numbers, name)
  return text === null ? null : fromIso(text)
}

/** The plan in lines: last sheet by and why, what is still to weld, what fits, what to stage. `about`: an instant of that day. */
export function planLines(numbers: Numbers, about: Instant, now: Instant, how: How, text: Text): readonly string[] {
  return [
    ...lastSheetLine(numbers, about, now, how, text),
    ...backlogLine(numbers, how, text),
    ...fitsLine(numbers, how, text),
    ...unsureLine(numbers, about, how, text),
    ...stageLine(numbers, text),
    ...runWarnings(numbers, text)
  ]
}

function lastSheetLine(numbers: Numbers, about: Instant, now: Instant, how: How, { day }: Text): readonly string[] {
  const [by, close] = [instantIn(numbers, 'lastSheetBy'), instantIn(numbers, 'closeBy')]
  if (by === null || close === null) return []
  const [closing, path] = [oneOf<Closing>(numbers, 'closing', day.closing), oneOf<Path>(numbers, 'bindingPath', day.path)]
  const closed = `${clock(close, about, how)}${closing === null ? '' : ` (${day.closing[closing]})`}`
  const said = by < now ? day.noMore(clock(by, about, how), closed) : day.lastSheet(clock(by, about, how), closed)
  return [path === null ? said : `${said} · ${day.path[path]}`]
}

function backlogLine(numbers: Numbers, how: How, { day }: Text): readonly string[] {
  const [robotM, handM] = [num(numbers, 'backlogRobotM') ?? 0, num(numbers, 'backlogHandM') ?? 0]
  return robotM > 0 || handM > 0 ? [day.backlog(amount(robotM, 'm', how), amount(handM, 'm', how))] : []
}

function fitsLine(numbers: Numbers, how: How, { day }: Text): readonly string[] {
  const [areaM2, work] = [num(numbers, 'fitsM2'), oneOf<Work>(numbers, 'bindingWork', day.works)]
  return areaM2 === null || work === null || !(areaM2 > 0) ? [] : [day.fits(amount(Math.floor(areaM2), 'm2', how), day.works[work])]
}

/** Hours that are not known: never counted, and what they would add once readings say so. */
function unsureLine(numbers: Numbers, about: Instant, how: How, { day }: Text): readonly string[] {
  const unsure = row(numbers, 'unsure')
  if (unsure === null) return []
  const hours = rows(unsure, 'hours').flatMap((one) => {
    const [from, to] = [instantIn(one, 'from'), instantIn(one, 'to')]
    return from === null || to === null ? [] : [`${localTime(from, how.zone)}–${localTime(to, how.zone)}`]
  })
  const said = hours.slice(0, mostHours).join(', ')
  if (flag(unsure, 'all') === true) return [day.allUnknown(said)]
  const [areaM2, kits, first] = [num(unsure, 'fitsM2'), num(unsure, 'kits'), instantIn(unsure, 'firstSprayAt')]
  const area = areaM2 === null || !(areaM2 > 0) ? null : amount(Math.floor(areaM2), 'm2', how)
  const withKits = area === null || kits === null ? area : `${area} (${day.staged.kits(kits)})`
  const earlier = first === null || str(unsure, 'firstSprayAt') === str(numbers, 'firstSprayAt') ? null : clock(first, about, how)
  return [day.ifKnown(said, withKits, earlier)]
}

function stageLine(numbers: Numbers, { day }: Text): readonly string[] {
  const list = rows(numbers, 'stage').flatMap((one) => {
    const [what, count, warming] = [oneOf<Staged['what']>(one, 'what', day.staged), num(one, 'count'), num(one, 'warming')]
    if (what === null || count === null) return []
    return [`${day.staged[what](count)}${warming === null ? '' : ` (${day.warming(warming)})`}`]
  })
  return list.length === 0 ? [] : [day.stage(list.join(', '))]
}

/** When the deck dries and when dew comes, where that is known. */
export function dryLines(numbers: Numbers, about: Instant, how: How, { day }: Text): readonly string[] {
  const [dry, dew] = [instantIn(numbers, 'dryAt'), instantIn(numbers, 'dewFrom')]
  const spray = dry === null ? null : instantIn(numbers, 'firstSprayAt')
  const parts = [
    ...(dry === null ? [] : [day.dry(clock(dry, about, how))]),
    ...(spray === null ? [] : [day.firstSpray(clock(spray, about, how))]),
    ...(dew === null ? [] : [day.dew(clock(dew, about, how))])
  ]
  return parts.length === 0 ? [] : [parts.join(' · ')]
}
