import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { errorCodes } from '../../../src/bot/answer.js'
import { commandWords } from '../../../src/bot/words/command-words.js'
import { allForms } from '../../../src/bot/words/forms.js'
import { readWords } from '../../../src/bot/words/read.js'
import { kitVocabulary } from '../../../src/bot/words/vocabularies/kit.js'
import { probeVocabulary } from '../../../src/bot/words/vocabularies/probe.js'
import { siteVocabulary } from '../../../src/bot/words/vocabularies/site.js'
import { sprayVocabulary } from '../../../src/bot/words/vocabularies/spray.js'
import { stripVocabulary } from '../../../src/bot/words/vocabularies/strip.js'
import { welderVocabulary } from '../../../src/bot/words/vocabularies/welder.js'
import { metric, us } from './reader.js'

const vocabularies = [sprayVocabulary, welderVocabulary, stripVocabulary, probeVocabulary, kitVocabulary, siteVocabulary]
const words = vocabularies.flatMap((vocabulary) => Object.values(vocabulary).flatMap((meaning) => allForms(meaning.words)))
const commands = Object.values(commandWords).flatMap((one) => allForms(one))
const bits = [
  '20',
  '-5',
  '1,250',
  '0.125',
  '1/2',
  '1 1/2',
  '½',
  "6'",
  '6"',
  '°C',
  'F',
  '%',
  'mm',
  'm',
  'ft',
  'km/h',
  'V',
  'AWG',
  'm2',
  'K7',
  'robot',
  'x4',
  '@07:30',
  '@',
  'no',
  'sin',
  'sans',
  '2099-01-01',
  'today',
  '<@U1>',
  '<!channel>',
  '*',
  ',',
  ':',
  '=',
  '٢٠',
  '1e9',
  '\u0000',
  '\u202e',
  '__proto__',
  'constructor',
  '06:00-18:00',
  'mon-sat',
  '50,8',
  'Europe/Berlin',
  'demo-1'
]
const token = fc.oneof(
  fc.constantFrom(...words),
  fc.constantFrom(...bits),
  fc.integer({ min: -400, max: 1200 }).map(String),
  fc.string({ unit: 'grapheme', maxLength: 6 })
)
const message = fc
  .tuple(fc.constantFrom(...commands, ''), fc.array(token, { maxLength: 12 }), fc.constantFrom(' ', ', ', ''))
  .map(([command, tokens, gap]) => `${command} ${tokens.join(gap)}`)

/** Bounds of every number that may come out, by its key: outside contract §5, wider where it gives none. */
const bounds: Readonly<Record<string, readonly [number, number]>> = {
  airC: [-60, 60],
  substrateC: [-60, 100],
  sheetC: [-60, 100],
  rhPct: [0, 100],
  dewPointC: [-60, 40],
  windKmh: [0, 300],
  gustKmh: [0, 300],
  sunWm2: [0, 1500],
  rainChancePct: [0, 100],
  isoC: [-40, 80],
  resinC: [-40, 80],
  placeC: [-60, 100],
  widthsMm: [0, 300],
  setC: [0, 700],
  speedMMin: [0, 30],
  thicknessMm: [0, 10],
  widthM: [0, 10],
  gapMm: [-100, 150],
  offMm: [-150, 150],
  lengthMm: [0, 10_000],
  distanceM: [0, 1000],
  gelS: [1, 600],
  lat: [-90, 90],
  lon: [-180, 180],
  days: [1, 7],
  sheets: [1, 100]
}

/** Every number in a value, with the key it stands under. */
function numbersIn(value: unknown, key = ''): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return [[key, value]]
  if (Array.isArray(value)) return value.flatMap((one) => numbersIn(one, key))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, one]) => numbersIn(one, name))
}

function check(text: string): void {
  for (const reader of [metric, us]) {
    const read = readWords(text, reader)
    if (!read.ok) {
      expect(errorCodes).toContain(read.refusal.code)
      expect(Array.from(read.refusal.word ?? '').length).toBeLessThanOrEqual(60)
      continue
    }
    if (read.at !== null) expect(read.at).toBeLessThanOrEqual(reader.now + 300)
    for (const [key, number] of numbersIn(read.said)) {
      const [min, max] = bounds[key] ?? [-1e9, 1e9]
      expect(number >= min && number <= max, `${key} ${number} of ${text}`).toBe(true)
    }
  }
}

// Generous time-outs: how long it takes depends on what else the machine does.
describe('whatever is typed', { timeout: 120_000 }, () => {
  test('words and numbers of the trade in any mixture', () => {
    fc.assert(fc.property(message, check), { numRuns: 4000 })
  })

  test('any characters', () => {
    fc.assert(
      fc.property(fc.constantFrom('', ...commands), fc.string({ unit: 'binary', maxLength: 200 }), (command, rest) => check(`${command} ${rest}`)),
      { numRuns: 1500 }
    )
  })

  test('long runs of one thing', () => {
    for (const one of [
      '1 ',
      '1',
      '1/',
      '½',
      "6' ",
      ' ',
      ',',
      '. ',
      'air ',
      'no ',
      '-',
      '<',
      '@',
      '@1',
      'dry ',
      'K1 ',
      '1.1',
      "'",
      '"',
      '°',
      'a-',
      'é',
      '/',
      '1 1/2 ',
      '\u0301'
    ]) {
      for (const command of ['', ...commands]) check(`${command} ${one.repeat(2000)}`.slice(0, 2000))
    }
  })

  test('a word and number pair says the same whatever stands around the number', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 60 }), fc.constantFrom('', ' '), fc.constantFrom('C', '°C', '° c', 'c'), (value, gap, unit) => {
        const read = readWords(`air air ${value}${gap}${unit}`, us)
        expect(read).toMatchObject({ ok: true, said: { reading: { airC: value === 0 ? 0 : value } } })
      })
    )
  })

  test('the same text gives the same reading', () => {
    fc.assert(
      fc.property(message, (text) => {
        expect(readWords(text, metric)).toEqual(readWords(text, metric))
      }),
      { numRuns: 300 }
    )
  })
})
