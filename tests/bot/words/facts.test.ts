import { describe, expect, test } from 'vitest'
import { texts } from '../../../src/bot/text/index.js'
import { type FactId, factIds } from '../../../src/bot/words/facts.js'
import { metric, refused, said } from './reader.js'

/** What a crew says on a roof; common practice, no source. */
const stated: readonly (readonly [FactId, readonly string[]])[] = [
  [
    'thunder',
    [
      'there is lightning',
      'we have thunder',
      'storm coming',
      'thunder',
      'hay rayos',
      'está tronando',
      'se oyen truenos',
      'tormenta',
      'il y a des éclairs',
      "l'orage arrive",
      'ça tonne',
      'on entend le tonnerre'
    ]
  ],
  [
    'rain',
    [
      'it is raining',
      "it's raining on us",
      'rain',
      'it stopped raining',
      'está lloviendo',
      'llueve',
      'dejó de llover',
      'il pleut',
      'il ne pleut plus'
    ]
  ],
  [
    'deck',
    ['roof is wet', 'the roof is dry', 'deck is soaked', 'el techo está mojado', 'la cubierta ya está seca', 'le toit est mouillé', 'toit sec']
  ],
  ['fleece', ['the fleece is wet', 'el fieltro está mojado', 'le feutre est trempé']],
  ['lap', ['the lap is wet', 'the seam is dry now', 'el traslape está mojado', 'le recouvrement est humide']],
  ['lapClean', ['seams are dirty', 'la junta está sucia', 'le joint est sale']],
  ['deckClean', ['the roof is dirty', 'hay polvo en el techo', 'le toit est propre']],
  ['power', ['we lost power', 'the power went out', 'se fue la luz', 'il n’y a plus de courant']]
]

describe('a fact in plain words', () => {
  test.each(stated.flatMap(([id, texts]) => texts.map((text) => [text, id] as const)))('%s: %s, not logged', (text, id) => {
    expect(refused(text).detail.facts).toEqual([id])
  })

  test.each(['it is raining and there is lightning', 'llueve con rayos', 'il pleut, orage'])('%s: thunder first', (text) => {
    expect(refused(text).detail.facts).toEqual(['thunder', 'rain'])
  })

  test.each(['sprai', 'hello', 'void 2 is bad', 'brain', 'lapdog', 'laundry', 'I can’t see', 'pressé'])('%s states none', (text) => {
    expect(refused(text).detail.facts).toBeUndefined()
  })

  test('in a command that states other things only thunder is heard', () => {
    expect(refused('probe course 4 40 mm wet maybe').detail.facts).toBeUndefined()
    expect(refused('kit K7 25 lightning').detail.facts).toEqual(['thunder'])
    expect(refused('spray it is raining').detail.facts).toEqual(['rain'])
    expect(refused('air there is lightning').detail.facts).toEqual(['thunder'])
  })

  test('a question states nothing, thunder is heard all the same', () => {
    expect(refused('can we lay wet sheets?').detail.facts).toBeUndefined()
    expect(refused('shall we fly in lightning?').detail.facts).toEqual(['thunder'])
  })

  test('what the command understood is not said again, thunder that was heard is', () => {
    expect(refused('spray no thunder rain dry xyzzy').detail.facts).toBeUndefined()
    expect(refused('air thunder xyzzy').detail.facts).toEqual(['thunder'])
  })
})

/** What each message has to log, as so and as not so. */
const logs: Readonly<Record<FactId, readonly object[]>> = {
  thunder: [{ statement: { thunder: true } }, { statement: { thunder: false } }],
  rain: [{ statement: { rainFalling: true } }, { statement: { rainFalling: false } }],
  lap: [{ statement: { lapDry: false } }, { statement: { lapDry: true } }],
  lapClean: [{ statement: { lapClean: false } }, { statement: { lapClean: true } }],
  fleece: [{ statement: { fleeceDry: false } }, { statement: { fleeceDry: true } }],
  deck: [{ statement: { substrateDry: false } }, { statement: { substrateDry: true } }],
  deckClean: [{ statement: { substrateClean: false } }, { statement: { substrateClean: true } }],
  power: [
    { command: 'weld event', welder: 'robot' },
    { command: 'weld event', welder: 'hand' }
  ]
}

describe.each(Object.entries(texts))('the words to send in %s', (_lang, { facts }) => {
  test.each(factIds)('%s: each is understood and logs that and nothing else', (id) => {
    const { say } = facts.topics[id]
    expect(say).toHaveLength(2)
    say.forEach(([, message], at) => {
      const read = said(message, metric)
      expect(read, message).toMatchObject(logs[id][at] as object)
      if ('statement' in read) expect(Object.keys(read.statement), message).toHaveLength(1)
    })
  })
})
