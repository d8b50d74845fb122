import fc from 'fast-check'
import type { Units } from '../../../src/bot/answer.js'
import { type Form, forms, type Item } from './items.js'
import { numeralOf, type Typed } from './numerals.js'

/** A message, who types it, and every number that it must be read as, by where it stands. */
export interface Message {
  readonly text: string
  readonly form: string
  readonly units: Units
  readonly expected: Readonly<Record<string, number | readonly number[]>>
}

const widthItem: Item = { path: 'coupon.widthsMm', words: [''], unit: 'mm', bare: { metric: 'mm', us: 'in' }, min: 0.1, max: 300 }
const gaps = [' ', '  ', ': ', ' = ', '\u00a0']

interface Said {
  readonly item: Item
  readonly word: number
  readonly gap: string
  readonly typed: Typed
}

function saidOf(item: Item, units: Units): fc.Arbitrary<Said> {
  return fc.record({ item: fc.constant(item), word: fc.nat(9), gap: fc.constantFrom(...gaps), typed: numeralOf(item, units) })
}

/** One as it is typed: `deck 18 °C`. */
function wordsOf({ item, word, gap, typed }: Said): string {
  const label = item.words[word % item.words.length] as string
  return label === '' ? typed.text : `${label}${gap}${typed.text}`
}

/** Gust below wind, dew point above air: said together they are refused, so one is left out. */
function consistent(all: readonly Said[]): readonly Said[] {
  const at = (path: string) => all.find(({ item }) => item.path === path)?.typed.value
  const [airC, dewC, wind, gust] = ['reading.airC', 'reading.dewPointC', 'reading.windKmh', 'reading.gustKmh'].map(at)
  return all.filter(({ item }) => {
    if (item.path === 'reading.dewPointC') return airC === undefined || (dewC as number) <= airC
    return item.path !== 'reading.gustKmh' || wind === undefined || (gust as number) >= wind
  })
}

/** Behind bare feet a number would be read as their inches, behind a bare whole number a fraction as its part. */
function widthsOf(units: Units): fc.Arbitrary<readonly Typed[]> {
  const one = numeralOf({ ...widthItem, unitNeeded: [''] }, units).filter(({ text }) => /^[\d.,]+$/.test(text))
  const last = numeralOf(widthItem, units).filter(({ text }) => /^[\d.,]+[^'’′\d]*$/u.test(text) && !/f/i.test(text))
  return fc.oneof(
    fc.array(one, { minLength: 1, maxLength: 4 }),
    last.map((typed) => [typed])
  )
}

function cased(text: string, how: number): string {
  if (how === 0) return text.toUpperCase().replaceAll('\u0130', 'I')
  if (how === 1) return text.normalize('NFD').replace(/\p{M}/gu, '')
  return text
}

const prefixes = ['', '/', '/seamhand ', 'seamhand ', '@seamhand ', '  ']
const separators = [' ', ', ', '; ', '  ', '\n']

function messageOf(form: Form, units: Units): fc.Arbitrary<Message> {
  return fc
    .record({
      head: fc.constantFrom(...form.heads),
      needed: fc.tuple(...form.needed.map((item) => saidOf(item, units))),
      any: fc
        .shuffledSubarray([...form.any], { maxLength: Math.min(5, form.any.length) })
        .chain((items) => fc.tuple(...items.map((item) => saidOf(item, units)))),
      widths: form.widths ? widthsOf(units) : fc.constant([]),
      tail: fc.constantFrom(...form.tails),
      prefix: fc.constantFrom(...prefixes),
      separator: fc.constantFrom(...separators),
      how: fc.nat(5)
    })
    .map(({ head, needed, any, widths, tail, prefix, separator, how }) => {
      const all = consistent([...(needed as readonly Said[]), ...(any as readonly Said[])])
      const words = [...widths.map(({ text }) => text).slice(0, 1), ...all.map(wordsOf)]
      const widthWords = widths.map(({ text }) => text).join(' ')
      const items = widths.length === 0 ? words : [widthWords, ...words.slice(1)]
      // The command and what must follow it stand together; the rest is parted as people part it.
      const text = `${prefix}${cased([head, ...items.slice(0, form.needed.length)].join(' '), how)}${items
        .slice(form.needed.length)
        .map((one) => `${separator}${cased(one, how)}`)
        .join('')}${tail === '' ? '' : ` ${cased(tail, how)}`}`
      const expected = Object.fromEntries(all.map(({ item, typed }) => [item.path, typed.value]))
      return {
        text,
        form: form.name,
        units,
        expected: widths.length === 0 ? expected : { ...expected, 'coupon.widthsMm': widths.map(({ value }) => value) }
      }
    })
}

/** Whole messages of the trade: three languages, both systems, every unit. All must be understood, with these values. */
export const wellFormed: fc.Arbitrary<Message> = fc.oneof(
  ...forms.flatMap((form) => (['metric', 'us'] as const).map((units) => messageOf(form, units)))
)

const nasty = [
  ...'0123456789.,-−–/½%°\'"’”′″@+*:;=<>()[]{}&#~`\\|_^$!? \t\n',
  '\u0000',
  '\u200b',
  '\u200d',
  '\u200f',
  '\u202e',
  '\u2066',
  '\ufeff',
  '\u0301',
  '\ud800',
  '٣',
  '３',
  '𝟓',
  '👷🏽‍♀️',
  'ß',
  'İ',
  'ﬁ',
  ' C',
  ' F',
  ' mm',
  ' m',
  ' ft',
  ' in',
  ' no ',
  ' sin ',
  '__proto__',
  'constructor',
  '1e3',
  'nan',
  'infinity',
  '0x10',
  '<!channel>'
]

export interface Edit {
  readonly at: number
  readonly what: 'insert' | 'remove' | 'replace' | 'double' | 'cut'
  readonly one: string
}

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.nat(1_000_000),
  what: fc.constantFrom('insert', 'insert', 'remove', 'replace', 'double', 'cut'),
  one: fc.constantFrom(...nasty)
})

function edited(text: string, { at, what, one }: Edit): string {
  const chars = Array.from(text)
  const place = at % (chars.length + 1)
  const [before, after] = [chars.slice(0, place), chars.slice(place)]
  if (what === 'insert') return [...before, one, ...after].join('')
  if (what === 'remove') return [...before, ...after.slice(1)].join('')
  if (what === 'replace') return [...before, one, ...after.slice(1)].join('')
  if (what === 'double') return [...before, ...after, ' ', ...after].join('')
  return before.join('')
}

/** A message of the trade that somebody typed badly: what is read of it must still be explained by what is typed. */
export const badlyTyped: fc.Arbitrary<Message> = fc
  .tuple(wellFormed, fc.array(edit, { minLength: 1, maxLength: 3 }))
  .map(([message, edits]) => ({ ...message, text: edits.reduce(edited, message.text), expected: {} }))

/** Anything at all. */
export const anyText: fc.Arbitrary<Message> = fc
  .record({
    text: fc.oneof(
      fc.string({ unit: 'binary', maxLength: 120 }),
      fc.array(fc.constantFrom(...nasty), { maxLength: 40 }).map((all) => all.join(''))
    ),
    head: fc.constantFrom('', ...forms.flatMap(({ heads }) => heads)),
    units: fc.constantFrom('metric', 'us')
  })
  .map(({ text, head, units }) => ({ text: `${head} ${text}`, form: 'any', units, expected: {} }))
