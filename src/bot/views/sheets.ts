import type { Remaining } from '../../core/sheets/remaining.js'
import type { TakeoffLine } from '../../core/sheets/takeoff.js'
import type { Answer } from '../answer.js'
import type { SheetsWords } from '../text/sheets-words.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { num, nums, oneOf, row, rows } from './read.js'
import { lineAmount, packWords, sumWords } from './takeoff-sum.js'
import { pageOf } from './view.js'

const mostListed = 30

/** `sheets`: how many of what, then the cut list and the places, as far as a message has room. */
export function sheetsView(answer: Answer, how: How, text: Text): Page {
  const { sheets: words } = text
  const count = (name: string) => num(answer.numbers, name) ?? 0
  const about = `${words.courses(count('courses'))}, ${words.rolls(count('rolls'))}`
  const details = [...takeoffLines(answer, how, text), ...cutLines(answer, how, text), ...placeLines(answer, how, text)]
  return pageOf(
    answer,
    { about, lines: [...roofLines(answer, how, words), ...jointLines(answer, how, words), ...thingLines(answer, how, words)], details },
    how,
    text
  )
}

function roofLines({ numbers }: Answer, how: How, words: SheetsWords): readonly string[] {
  const [area, waste, least] = [num(numbers, 'areaM2'), num(numbers, 'wastePct'), num(numbers, 'rollsLeast')]
  const along = oneOf(numbers, 'along', words.along)
  const fewer = least !== null && least < (num(numbers, 'rolls') ?? 0)
  return [
    ...(area === null ? [] : [words.area(amount(area, 'm2', how))]),
    ...(along === null ? [] : [words.along[along]]),
    ...(waste === null ? [] : [words.waste(amount(waste, '%', how))]),
    ...(fewer ? [words.leastRolls(least)] : [])
  ]
}

function jointLines({ numbers }: Answer, how: How, words: SheetsWords): readonly string[] {
  const count = (name: string) => num(numbers, name) ?? 0
  const mm = (name: string) => amount(count(name), 'mm', how)
  const m = (name: string) => amount(count(name), 'm', how)
  const lengths = rows(numbers, 'stripLengths').map((one) => `${num(one, 'count')} × ${amount(num(one, 'lengthMm') ?? 0, 'mm', how)}`)
  const patches = count('patches') === 0 ? words.noPatches : words.patches(count('patches'))
  const strips = [words.strips(count('strips'), amount(count('stripMm') / 1000, 'm', how)), words.lengths(listed(lengths)), words.land(mm('landMm'))]
  const press = rows(numbers, 'handPressAt').length
  return [
    words.joints(count('endJoints')),
    ...(count('strips') === 0 ? [] : strips),
    patches,
    ...(press === 0 ? [] : [words.handPress(press)]),
    words.weld(m('robotWeldM'), m('handWeldM'), m('sideLapM'))
  ]
}

function thingLines({ numbers }: Answer, how: How, words: SheetsWords): readonly string[] {
  const [kits, nozzles, fasteners] = [num(numbers, 'kits'), num(numbers, 'nozzles'), num(numbers, 'fasteners')]
  return [
    ...zoneLines(row(numbers, 'zonesBy'), row(numbers, 'zones'), how, words),
    ...(kits === null || nozzles === null ? [] : [words.kits(kits, nozzles)]),
    ...(fasteners === null ? [] : [words.fasteners(fasteners)])
  ]
}

type Row = ReturnType<typeof row>

function zoneLines(by: Row, zones: Row, how: How, words: SheetsWords): readonly string[] {
  if (by === null) return []
  const standard = oneOf(by, 'standard', words.standards)
  const why = oneOf(by, 'why', words.noZones)
  if (why !== null || zones === null || standard === null) return why === null ? [] : [words.noZones[why]]
  const areas = Object.keys(zones).map((name) => `${name} ${amount(num(zones, name) ?? 0, 'm2', how)}`)
  return [words.zones(words.standards[standard], areas.join(' · ')), words.pattern]
}

/** What to buy, each with its sum, and what of it remains once some is laid. */
function takeoffLines({ numbers }: Answer, how: How, text: Text): readonly string[] {
  // Our own numbers: `sheetsNumbers` put these lines there as they are.
  const lines = rows(numbers, 'takeoff') as unknown as readonly TakeoffLine[]
  const left = rows(numbers, 'remaining') as unknown as readonly Remaining[]
  if (lines.length === 0) return []
  const { items, table, heads, limitNotSaid, engineers } = text.takeoff
  const said = lines.map((line) => {
    const sum = sumWords(line, how, text)
    const packs = line.sale === null || line.sale.of === 1 ? [] : [packWords(line, how, text)]
    return [`${items[line.item]}${text.frame.colon}${lineAmount(line, how, text)}`, ...packs, ...(sum === '' ? [] : [sum])].join(' · ')
  })
  const rest = left.map((one) => `${items[one.item]} ${lineAmount(one, how, text)}`)
  const still = (num(numbers, 'laidM2') ?? 0) > 0 ? [`${heads.left}${text.frame.colon}${rest.join(', ')}`] : []
  return [table, ...said, ...still, limitNotSaid, engineers]
}

/** Rolls that are cut alike stand together. */
function cutLines({ numbers }: Answer, how: How, { sheets: words }: Text): readonly string[] {
  const alike = new Map<string, { readonly first: readonly number[]; readonly cuts: string; readonly left: string }>()
  for (const one of rows(numbers, 'cutList')) {
    const cuts = nums(one, 'cutsMm').map((mm) => amount(mm / 1000, 'm', how))
    const left = amount((num(one, 'leftMm') ?? 0) / 1000, 'm', how)
    const key = `${cuts.join(' + ')}; ${left}`
    alike.set(key, { first: [...(alike.get(key)?.first ?? []), num(one, 'roll') ?? 0], cuts: cuts.join(' + '), left })
  }
  const lines = [...alike.values()].map(({ first, cuts, left }) => words.roll(ranges(first), cuts, left))
  return lines.length === 0 ? [] : [words.cutList, ...lines.slice(0, mostListed), ...(lines.length > mostListed ? ['…'] : [])]
}

/** 1–4, 7, 9–10. */
function ranges(numbers: readonly number[]): string {
  const parts: string[] = []
  let from = 0
  for (let i = 0; i < numbers.length; i += 1) {
    if (numbers[i + 1] === (numbers[i] as number) + 1) continue
    parts.push(from === i ? `${numbers[i]}` : `${numbers[from]}–${numbers[i]}`)
    from = i + 1
  }
  return parts.length > mostListed ? `${parts.slice(0, mostListed).join(', ')}, …` : parts.join(', ')
}

function placeLines({ numbers }: Answer, how: How, { sheets: words }: Text): readonly string[] {
  const placed = (list: string, name: string) =>
    rows(numbers, list).map((one) => words.place(num(one, name) ?? 0, amount(num(one, 'xM') ?? 0, 'm', how), amount(num(one, 'yM') ?? 0, 'm', how)))
  const [patches, press] = [placed('patchesAt', 'patch'), placed('handPressAt', 'strip')]
  return [...(patches.length === 0 ? [] : [words.patchPlaces, listed(patches)]), ...(press.length === 0 ? [] : [words.pressPlaces, listed(press)])]
}

function listed(items: readonly string[]): string {
  return items.length > mostListed ? `${items.slice(0, mostListed).join(' · ')} · …` : items.join(' · ')
}
