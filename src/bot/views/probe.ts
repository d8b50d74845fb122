import type { VoidCause, VoidOn } from '../../core/log/data.js'
import type { Json } from '../../core/log/entry.js'
import type { MendWhy } from '../../core/welds/mend.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf } from './clock.js'
import type { How } from './how.js'
import { numeral } from './number.js'
import { openLines } from './open.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, nums, oneOf, rows, str, strings } from './read.js'
import { pageOf } from './view.js'

const mostVoids = 40

/** `probe`: may the area be closed; the void that was spoken of; the list. */
export function probeView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { probe } = text
  const listed = rows(numbers, 'list')
  const [open, repaired, passed] = [num(numbers, 'open') ?? 0, num(numbers, 'repaired') ?? 0, num(numbers, 'passed') ?? 0]
  const any = open + repaired + passed > 0
  const said = [
    ...doubtLines(numbers, how, text),
    ...waitLine(numbers, answer, how, text),
    ...(num(numbers, 'void') === null ? [] : [voidLine(numbers, answer, how, text), ...mendLines(numbers, answer, how, text)]),
    any ? probe.counts(open, repaired, passed) : probe.noVoids,
    ...listed.slice(0, mostVoids).map((each) => voidLine(each, answer, how, text)),
    ...(listed.length > mostVoids ? [text.frame.more(listed.length - mostVoids)] : [])
  ]
  const page = pageOf(answer, { about: probe.closeArea, lines: said, details: rateLine(numbers, how, text) }, how, text)
  const wait = clockOf(str(numbers, 'waitUntil'), answer.at, how)
  if (answer.outcome !== 'go') return page
  const first = wait === null ? notYet(numbers, any, how, text) : `${shapes.caution} ${text.closing.mend.waitFirst(wait)}`
  const lines = [...openLines(rows(numbers, 'besides'), answer.at, how, text).map((line) => `${shapes['no-go']} ${line}`), ...page.lines]
  return { ...page, head: first ?? page.head, lines }
}

/** Counted, nothing stands open; but metres on hold, a failed square or a seam nobody probed say nothing good, and nobody reads past a GO. */
function notYet(numbers: Answer['numbers'], any: boolean, how: How, text: Text): string | null {
  const count = rows(numbers, 'besides').length
  if (count > 0) return `${shapes['no-go']} ${text.probe.closeArea}${text.frame.colon}${text.posts.open(count)}`
  if (any) return null
  const weldedM = num(numbers, 'weldedM') ?? 0
  return `${shapes.unknown} ${weldedM > 0 ? text.first.noVoids(amount(weldedM, 'm', how)) : text.first.noWelds}`
}

/** "void 1: course 4, end joint, at 3.2 m, 40 mm long, open". */
function voidLine(one: Readonly<Record<string, Json>>, { at }: Answer, how: How, { probe, frame, closing }: Text): string {
  const [course, distanceM, lengthMm] = [num(one, 'course'), num(one, 'distanceM'), num(one, 'lengthMm')]
  const on = oneOf<VoidOn>(one, 'on', probe.on)
  const state = oneOf<'open' | 'repaired' | 'passed'>(one, 'state', probe.states)
  const found = clockOf(str(one, 'at'), at, how)
  const causes = strings(one, 'causes').filter((cause): cause is VoidCause => Object.hasOwn(probe.causes, cause))
  const photos = num(one, 'photos') ?? 0
  const parts = [
    ...(course === null ? [] : [probe.course(course)]),
    ...(on === null ? [] : [probe.on[on]]),
    ...(distanceM === null ? [] : [probe.at(amount(distanceM, 'm', how))]),
    ...(lengthMm === null ? [] : [probe.long(amount(lengthMm, 'mm', how))]),
    ...causes.map((cause) => probe.causes[cause]),
    ...(photos > 0 ? [closing.mend.photos(photos)] : []),
    ...(found === null ? [] : [found]),
    ...(state === null ? [] : [probe.states[state]])
  ]
  const name = probe.number(num(one, 'void') ?? 0)
  return parts.length === 0 ? name : `${name}${frame.colon}${parts.join(', ')}`
}

/** What may have been typed wrong, or twice: it is logged as said, and may be taken back. */
function doubtLines(numbers: Answer['numbers'], how: How, { first }: Text): readonly string[] {
  const [same, most, longest] = [num(numbers, 'sameAs'), num(numbers, 'mostCourses'), num(numbers, 'longestM')]
  return [
    ...(same === null ? [] : [first.sameVoid(String(same))]),
    ...(most === null ? [] : [first.noCourse(String(most))]),
    ...(longest === null ? [] : [first.beyondRoof(amount(longest, 'm', how))])
  ].map((line) => `${shapes.caution} ${line}`)
}

/** Before anything else: a probe of a warm weld finds nothing. */
function waitLine(numbers: Answer['numbers'], { at }: Answer, how: How, { closing: { mend } }: Text): readonly string[] {
  const wait = clockOf(str(numbers, 'waitUntil'), at, how)
  return wait === null ? [] : [str(numbers, 'state') === 'passed' ? mend.probedWarm(wait) : mend.waitUntil(wait)]
}

/** How it is mended, what it hides; both times where an entry is dated otherwise than now. */
function mendLines(numbers: Answer['numbers'], { at }: Answer, how: How, { closing: { mend }, first }: Text): readonly string[] {
  const dated = clockOf(str(numbers, 'datedAt'), at, how)
  const under = nums(numbers, 'under')
  return [
    ...(dated === null ? [] : [mend.dated(dated)]),
    ...(str(numbers, 'state') === 'open' ? toMend(numbers, how, mend) : []),
    ...(flag(numbers, 'patched') === false && num(numbers, 'patchMm') !== null ? [mend.wantsPatch(num(numbers, 'void') ?? 0)] : []),
    ...(flag(numbers, 'stepsSaid') === false ? [first.stepsUnsaid] : []),
    ...(under.length === 0 ? [] : [mend.under(under.join(', '))])
  ]
}

function toMend(numbers: Answer['numbers'], how: How, mend: Text['closing']['mend']): readonly string[] {
  const [patchMm, probeMm] = [num(numbers, 'patchMm'), num(numbers, 'probeMm')]
  if (probeMm === null) return []
  const why = oneOf<MendWhy>(numbers, 'mendWhy', mend.why)
  const again = mend.probeAgain(amount(probeMm, 'mm', how))
  if (patchMm === null || why === null) return [`${mend.weld}; ${again}`]
  const length = amount(patchMm, 'mm', how)
  return [why === 'foam' ? mend.cutAndPatch(length) : mend.patch(mend.why[why], length)]
}

function rateLine(numbers: Answer['numbers'], how: How, { probe }: Text): readonly string[] {
  const [rate, upper] = [num(numbers, 'per100m'), num(numbers, 'per100mUpper90')]
  return rate === null ? [] : [probe.rate(numeral(rate, 2, how), upper === null ? null : numeral(upper, 2, how))]
}
