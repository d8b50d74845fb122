import { atEnd, find } from '../cursor.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing, Refused } from '../refused.js'
import type { Said } from '../said.js'
import { slotValue } from '../slot.js'
import { slots } from '../slots/numbers.js'
import { photo } from '../slots/photo.js'
import { flag, putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

export const punchVocabulary: Vocabulary = {
  done: {
    words: { en: 'done fixed', es: 'hech(o,a) reparad(o,a)', fr: 'fait(,e) réparé(,e)' },
    read: flag({ punchDone: true }, { label: 'step', value: 'done' })
  },
  again: {
    words: { en: 'open again reopen', es: 'abiert(o,a) reabrir', fr: 'ouvert(,e) rouvrir' },
    read: flag({ punchDone: false }, { label: 'step', value: 'open' })
  },
  list: { words: { en: 'list', es: 'lista', fr: 'liste' }, read: flag({ list: true }) },
  photo
}

const mostText = 200

function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk, true)
  putNumber(walk, { raw: quantity.raw, label: 'number' }, 'punch', slots.punch, slotValue(quantity, slots.punch, walk.reader))
  return true
}

const lexicon = lexiconOf(punchVocabulary, other)
const photoAtEnd = /(?:^|\s)(?:photo|photos|foto|fotos)\s+F[A-Za-z0-9]{1,30}\s*$/i

/**
 * `punch TEXT…`: what is left to mend, as it was typed; photos named at its end are taken off it. A message that begins with a
 * number or with a word of the list is about an item, or about the list.
 */
function free(walk: Walk): Said | null {
  if (atEnd(walk) || atNumber(walk) || /^[@]\d/.test(walk.text.slice(walk.pos)) || find(walk, lexicon) !== null) return null
  let text = walk.text.slice(walk.pos).trim()
  const files: string[] = []
  for (let found = photoAtEnd.exec(text); found !== null && files.length < 5; found = photoAtEnd.exec(text)) {
    files.unshift((found[0].trim().split(/\s+/)[1] as string).toUpperCase())
    text = text.slice(0, found.index).trim()
  }
  if (text === '') throw missing('text')
  if ([...text].length > mostText) throw new Refused('too-long', null, { max: mostText })
  return { command: 'punch add', text, files }
}

export const punch: Grammar = {
  command: 'punch',
  lexicon: () => lexicon,
  whole: free,
  build: ({ fields }) => {
    const { punch: number, punchDone, files = [] } = fields
    if (number === undefined) {
      if (punchDone !== undefined || files.length > 0) throw missing('number')
      return { command: 'punch list' }
    }
    if (fields.list) throw new Refused('inconsistent', 'list', { label: 'list' })
    if (punchDone === undefined && files.length === 0) throw missing('step')
    return { command: 'punch step', number, done: punchDone ?? null, files }
  }
}
