import { notchedRectangle } from '../../../core/sheets/outline.js'
import type { ZoneStandardName } from '../../../core/sheets/zones/index.js'
import { readNotch, readOpening, readOutline } from '../outline/parts.js'
import { missing, Refused } from '../refused.js'
import type { OutlineSaid, Said } from '../said.js'
import { lapWords } from '../slots/lap.js'
import { slots } from '../slots/numbers.js'
import { number, takeChoice } from '../take.js'
import { choicesOf, lexiconOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'

const standards = choicesOf<ZoneStandardName>([
  ['en', { en: 'en', es: 'en', fr: 'en' }],
  ['asce', { en: 'asce', es: 'asce', fr: 'asce' }],
  ['nbcc', { en: 'nbcc', es: 'nbcc', fr: 'nbcc cnbc' }]
])

const axes = choicesOf<'x' | 'y'>([
  ['x', { en: 'x', es: 'x', fr: 'x' }],
  ['y', { en: 'y', es: 'y', fr: 'y' }]
])

export const sheetsVocabulary: Vocabulary = {
  notch: { words: { en: 'notch(,es) cutout', es: 'muesca(,s) recorte(,s)', fr: 'encoche(,s) décrochement(,s)' }, read: readNotch },
  opening: {
    words: { en: 'opening(,s) skylight(,s) curb(,s)', es: 'abertura(,s) claraboya(,s)', fr: 'ouverture(,s) lanterneau(,x) trémie(,s)' },
    read: readOpening
  },
  at: {
    words: { en: 'at', es: 'a', fr: 'à' },
    read: (_, heard) => {
      throw new Refused('inconsistent', heard.raw, { label: 'at' })
    }
  },
  along: {
    words: { en: 'along', es: 'según sentido', fr: 'selon sens' },
    read: (walk, heard) => {
      const axis = takeChoice(walk, heard, axes)
      put(walk, heard, 'along', axis)
      note(walk, 'along', axis)
    }
  },
  height: { words: { en: 'height high', es: 'altura alto', fr: 'hauteur haut' }, read: number(slots.height, 'heightM') },
  zones: {
    words: { en: 'zones zone', es: 'zonas zona', fr: 'zones zone' },
    read: (walk, heard) => {
      const standard = takeChoice(walk, heard, standards)
      put(walk, heard, 'standard', standard)
      note(walk, 'zones', standard)
    }
  },
  sheet: { words: { en: 'sheet', es: 'lámina', fr: 'feuille lé' }, read: number(slots.stripWidth, 'widthM') },
  lap: { words: lapWords, read: number(slots.lap, 'lapMm') },
  roll: { words: { en: 'roll', es: 'rollo', fr: 'rouleau' }, read: number(slots.roll, 'rollM') }
}

/** The outline as one ring and its openings, each corner with the words that placed it; null: none was said. */
function outlineSaid({ fields }: Walk): OutlineSaid | null {
  const { size, corners, notches = [], openings = [] } = fields
  if (size !== undefined && corners !== undefined) throw new Refused('inconsistent', size.word, { label: 'outline', other: 'corner' })
  const [notch] = notches
  if (corners !== undefined) {
    if (notch !== undefined) throw new Refused('inconsistent', notch.word, { label: 'notch', other: 'corner' })
    return { outer: corners, openings }
  }
  if (size === undefined) {
    if (notch !== undefined || openings.length > 0) throw missing('outline')
    return null
  }
  const tooBig = notches.find(({ widthMm, depthMm }) => widthMm >= size.widthMm || depthMm >= size.depthMm)
  if (tooBig !== undefined) throw new Refused('inconsistent', tooBig.word, { label: 'notch', state: 'outside' })
  const outer = notchedRectangle(size.widthMm, size.depthMm, notches)
  return { outer: outer.map((at) => ({ at, word: [size, ...notches].map(({ word }) => word).join(' ') })), openings }
}

function build(walk: Walk): Said {
  const { along = null, heightM = null, standard = null, widthM = null, lapMm = null, rollM = null } = walk.fields
  return { command: 'sheets', sheets: { outline: outlineSaid(walk), along, heightM, zones: standard, widthM, lapMm, rollM } }
}

const lexicon = lexiconOf(sheetsVocabulary, readOutline)

export const sheets: Grammar = { command: 'sheets', lexicon: () => lexicon, build }
