import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allForms } from '../../../../src/bot/words/forms.js'
import { conceptWords, partsOf } from '../../../../src/bot/words/plain/concepts.js'
import { readWords } from '../../../../src/bot/words/read.js'
import { metric, refused, said, us } from '../reader.js'
import { logsNothing } from './logs-nothing.js'
import { questions } from './questions.js'

/** What a crew says that is no question, asks about what no command knows, or would change the answer: none is guessed at. */
const left: readonly string[] = [
  'the roof is dry',
  'roof dry now',
  'le toit est sec',
  'el techo está seco',
  'está seco el techo',
  'all voids fixed',
  'can we spray without masks?',
  '¿podemos rociar sin máscara?',
  'on peut coller sans masque ?',
  'can we spray at 5 °C?',
  'can we spray if it rains?',
  'can we spray after the rain?',
  '¿podemos rociar si llueve?',
  'on peut coller après la pluie ?',
  'how long until the kit is 25 °C?',
  'is void 3 fixed?',
  'can you fix void 3?',
  'how does friday look?',
  '¿cómo está el lunes?',
  'on peut coller lundi ?',
  'how much strip for 3 sheets?',
  'how many strips for 4 joints of 2 m and 3 m?',
  'how many rolls for 500 m2?',
  'can we spray and weld?',
  'can we maybe spray',
  'who won the game?',
  'is there a fire?',
  'au feu ?',
  '¿hay fuego?',
  'where is the fire extinguisher?',
  'can we lay wet sheets?',
  'can I walk on wet sheet?',
  'is the weld good?',
  'are the seams good?',
  '¿está bien la soldadura?',
  'la soudure est bonne ?',
  'is it safe?',
  'is it safe to weld?',
  'is it safe to weld near the gas bottle?',
  'is the foam dry?',
  'how do I mix the kit?',
  'what is the price of a kit?',
  'is the foam toxic?',
  'where is the key of the truck?',
  'is the robot 41 mm film?',
  'did we weld 20 m?',
  'is the wind 20 km/h?',
  'is the roof *dry*?',
  'is the roof dry @07:30?',
  'is it ok to spray <!channel>?'
]

describe('what is not wholly a question to a command', () => {
  test.each(left)('%s', (text) => {
    const { code, detail } = refused(text)
    expect(code).not.toBe('internal')
    if (code === 'unknown-command') expect(detail.nearest).toHaveLength(2)
  })
})

describe('a plain question logs nothing', () => {
  test.each(questions.map(([asks, phrasings]) => [JSON.stringify(asks), phrasings] as const))('%s', (_, phrasings) => {
    for (const text of phrasings) expect(logsNothing(said(text)), text).toBe(true)
  })

  const every = Object.values(conceptWords).flatMap((words) => allForms(words))
  const bits = [...every, '3', '25 °C', '2 m', '6 mm', 'K7', 'R2', 'x4', '40 mm', '10 %']

  test('whatever it is made of', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('is', 'how many', 'when', '¿cuándo', 'combien de', 'who'),
        fc.array(fc.constantFrom(...bits), { maxLength: 8 }),
        (opens, rest) => {
          const read = readWords(`${opens} ${rest.join(' ')}?`, metric)
          // `is spray …` is the short question that takes facts after its verb, as it always has.
          const facts = /^is (?:spray|weld|glu|lay|unroll)/.test(`${opens} ${rest.join(' ')}`)
          expect(!read.ok || facts || logsNothing(read.said)).toBe(true)
        }
      ),
      { numRuns: 300, seed: 7 }
    )
  })
})

describe('the numbers of a question', () => {
  test.each([
    ['how many strips for 4 joints of 2 m?', metric, { widthM: 2, times: 4 }],
    ['how many strips for 4 joints of 6 ft?', us, { widthM: 1.8288, times: 4 }],
    ['how long a strip for a 6 ft 6 in sheet with a 1/4 in gap?', us, { widthM: 1.9812, gapMm: 6.35 }],
    ['combien de bandes pour 4 joints de 2,5 m ?', metric, { widthM: 2.5, times: 4 }]
  ] as const)('%s', (text, reader, strip) => {
    expect(said(text, reader)).toMatchObject({ command: 'strip', strip })
  })

  test('a number that could be two is asked back, and a part that lacks is named', () => {
    expect(refused('how many strips for 4 joints?')).toMatchObject({ code: 'missing', word: 'width' })
    expect(refused('how many strips for 4 joints of 900 m?')).toMatchObject({ code: 'out-of-range' })
  })

  test('a roof is its two sides', () => {
    for (const text of [
      'how many rolls for a roof 20 by 30 m?',
      '¿cuántos rollos para un techo de 20 m por 30 m?',
      'combien de rouleaux pour un toit de 20 sur 30 m ?'
    ]) {
      const asked = said(text)
      const corners = asked.command === 'sheets' ? asked.sheets.outline?.outer.map(({ at }) => at) : null
      expect(corners).toEqual([
        [0, 0],
        [20_000, 0],
        [20_000, 30_000],
        [0, 30_000]
      ])
    }
  })
})

test('the words of a command come first', () => {
  expect(said('can we spray now? air 20, deck 18, dry')).toMatchObject({ reading: { airC: 20, substrateC: 18 }, statement: { substrateDry: true } })
  expect(said('punch flange loose at drain 2')).toEqual({ command: 'punch add', text: 'flange loose at drain 2', files: [] })
  expect(said('kit 3')).toMatchObject({ command: 'kit', kit: { data: { isoC: 3 } } })
  expect(refused('kit K7 warm')).toMatchObject({ code: 'unknown-word', word: 'warm' })
})

test('each word of a question has one meaning', () => {
  const meanings = new Map<string, Set<string>>()
  for (const [concept, words] of Object.entries(conceptWords)) {
    for (const form of allForms(words)) {
      const key = partsOf(form).join(' ')
      meanings.set(key, (meanings.get(key) ?? new Set()).add(concept))
    }
  }
  expect([...meanings].filter(([, concepts]) => concepts.size > 1).map(([word, concepts]) => [word, ...concepts])).toEqual([])
})

test('what is not known shows the two nearest commands', () => {
  expect(refused('is void 3 fixed?').detail.nearest).toEqual(['probe', 'punch'])
  expect(refused('sprai').detail.nearest).toEqual(['spray', 'help'])
})

test('a slip in the word of a command is that command, whatever stands behind or before it', () => {
  const near = (text: string) => (refused(text).detail.nearest as readonly string[])[0]
  expect(near('spary air 20 deck 21 rh 50 no thunder')).toBe('spray')
  expect(near('¿podemos rosiar ya?')).toBe('rociar')
  expect(near('on peut pulveriserr ?')).toBe('pulvériser')
})

test('the two are never one command by two of its words', () => {
  expect(refused('posed').detail.nearest).toEqual(['posé', 'spray'])
  expect(refused('journée').detail.nearest).toEqual(['jour', 'spray'])
})
