import type { Place } from '../../core/log/data.js'
import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf, dateOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { numeral } from './number.js'
import type { Page } from './page.js'
import { flag, num, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

const mostKits = 12

/** `kit`: the kit spoken of, when it is ready, and all kits. */
export function kitView(answer: Answer, how: How, text: Text): Page {
  const { numbers, at } = answer
  const { kit } = text
  const kits = rows(numbers, 'kits')
  const name = str(numbers, 'kit')
  const [own, others] = [kits.filter((each) => str(each, 'name') === name), kits.filter((each) => str(each, 'name') !== name)]
  const when = (key: string) => clockOf(str(numbers, key), at, how)
  const [ready, likely, cold, startBy] = [when('readyAt'), when('likelyAt'), when('coldAt'), when('startBy')]
  const lines = [
    ...own.flatMap((each) => unevenLine(each, text, how)),
    ...partsLine(numbers, how, text),
    ...own.filter((each) => flag(each, 'stopped') !== true).flatMap((each) => leftOf(each, text, how)),
    ...(ready === null ? [] : [likely === null || likely === ready ? kit.ready(ready) : text.warming.likely(likely, ready)]),
    ...learnedLine(numbers, how, text),
    ...(startBy === null ? [] : [kit.startBy(startBy)]),
    ...(cold === null ? [] : [kit.cold(cold)])
  ]
  const list = kits.slice(0, mostKits).map((each) => kitLine(each, answer, how, text))
  const more = kits.length > mostKits ? [text.frame.more(kits.length - mostKits)] : []
  const details = kits.length === 0 ? [kit.none] : [...list, ...more]
  const [one] = own
  const about = one === undefined || name === null ? text.labels.kit : kit.name(escapeText(name, 40))
  const page =
    one !== undefined && flag(one, 'empty') === true && flag(one, 'stopped') !== true
      ? pageOf(
          { ...answer, outcome: null, findings: [] },
          { about: `${about}${text.frame.colon}${kit.empty}`, lines: emptyLines(one, text, how), details },
          how,
          text
        )
      : pageOf(answer, { about, lines, details }, how, text)
  // What is wrong with another kit comes after what was asked.
  return { ...page, lines: [...page.lines, ...others.filter((each) => flag(each, 'empty') !== true).flatMap((each) => unevenLine(each, text, how))] }
}

/** Nothing is to be read of a kit that is empty. */
function emptyLines(one: Readonly<Record<string, Json>>, { yields }: Text, how: How): readonly string[] {
  const used = num(one, 'usedM2')
  return [...(used === null || used === 0 ? [] : [yields.used(amount(used, 'm2', how))]), yields.next]
}

function learnedLine(numbers: Answer['numbers'], how: How, { warming }: Text): readonly string[] {
  const [factor, pairs] = [num(numbers, 'mixing'), num(numbers, 'learnedFrom')]
  return factor === null || pairs === null || pairs === 0 ? [] : [warming.learned(numeral(factor, 1, how), pairs)]
}

function partsLine(numbers: Answer['numbers'], how: How, { kit }: Text): readonly string[] {
  const celsius = (name: string) => shown(num(numbers, name), how)
  const [iso, resin, shell, mean, core] = [celsius('isoC'), celsius('resinC'), celsius('shellC'), celsius('meanC'), celsius('coreC')]
  const read = [...(iso === null ? [] : [`${kit.iso} ${iso}`]), ...(resin === null ? [] : [`${kit.resin} ${resin}`])]
  const model = shell === null || mean === null || core === null ? [] : [kit.parts(shell, mean, core)]
  return [...(read.length === 0 ? [] : [read.join(' · ')]), ...model]
}

/** "K7: iso 24 °C, resin 23 °C, mixed 07:10, warm box, expires 1 May 2027, lot A1". */
function kitLine(one: Readonly<Record<string, Json>>, { at }: Answer, how: How, text: Text): string {
  const { kit, frame } = text
  const [iso, resin] = [shown(num(one, 'isoC'), how), shown(num(one, 'resinC'), how)]
  const [mixed, expires] = [clockOf(str(one, 'mixedAt'), at, how), dateOf(str(one, 'expiresOn'), how)]
  const place = oneOf<Place>(one, 'place', kit.places)
  const lot = str(one, 'lot')
  const parts = [
    ...(iso === null ? [] : [`${kit.iso} ${iso}`]),
    ...(resin === null ? [] : [`${kit.resin} ${resin}`]),
    ...(mixed === null ? [] : [kit.mixed(mixed)]),
    ...(place === null ? [] : [kit.places[place]]),
    ...(expires === null ? [] : [kit.expires(expires)]),
    ...(lot === null ? [] : [kit.lot(escapeText(lot, 40))]),
    ...leftOf(one, text, how),
    ...(flag(one, 'empty') === true ? [kit.empty] : [])
  ]
  const name = escapeText(str(one, 'name') ?? '?', 40)
  return parts.length === 0 ? name : `${name}${frame.colon}${parts.join(', ')}`
}

function leftOf(one: Readonly<Record<string, Json>>, { yields }: Text, how: How): readonly string[] {
  const [iso, resin] = [num(one, 'isoLeftPct'), num(one, 'resinLeftPct')]
  return iso === null || resin === null ? [] : [yields.left(amount(iso, '%', how), amount(resin, '%', how))]
}

/** What was sprayed of such a kit may not hold. */
function unevenLine(one: Readonly<Record<string, Json>>, { yields }: Text, how: How): readonly string[] {
  const [iso, resin] = [num(one, 'isoLeftPct'), num(one, 'resinLeftPct')]
  if (flag(one, 'stopped') !== true || iso === null || resin === null) return []
  return [yields.uneven(escapeText(str(one, 'name') ?? '?', 40), amount(iso, '%', how), amount(resin, '%', how))]
}

function shown(value: number | null, how: How): string | null {
  return value === null ? null : amount(value, 'C', how)
}
