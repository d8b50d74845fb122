import type { Place } from '../../../core/log/data.js'
import { atEnd, find } from '../cursor.js'
import { takeName } from '../names.js'
import { atNumber } from '../quantity.js'
import { kitOf, kit as kitSlots, lotWords, putKitName, readLot, takeKitTemperature } from '../slots/kit.js'
import { slots } from '../slots/numbers.js'
import { flag, number, putNumber, state, takeNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Heard, Meaning, Vocabulary, Walk } from '../walk.js'

/** `box` or `box 30`: where the kit stands, and how warm it is there. */
function place(where: Place): Meaning['read'] {
  return (walk, heard) => {
    state(walk, { raw: heard.raw, label: 'place' }, { place: where }, where)
    if (atEnd(walk) || !atNumber(walk)) return
    putNumber(walk, heard, 'placeC', { ...slots.place, label: heard.label }, takeNumber(walk, slots.place, heard))
    walk.numbered = heard
  }
}

function resinNamed(walk: Walk): boolean {
  return !atEnd(walk) && find(walk, walk.lexicon)?.label === 'resin'
}

/** `left 20 12 %`: of iso and of resin, in this order, or each by its name. */
function left(walk: Walk, heard: Heard): void {
  const parts = [
    ['iso', 'isoLeftPct'],
    ['resin', 'resinLeftPct']
  ] as const
  for (const [label, key] of resinNamed(walk) ? parts.toReversed() : parts) {
    const named = atEnd(walk) ? null : find(walk, walk.lexicon)
    if (named?.label === label) walk.pos = named.end
    const slot = { ...slots.left, label: `left ${label}` }
    putNumber(walk, { raw: heard.raw, label: slot.label }, key, slot, takeNumber(walk, slot, heard))
  }
  walk.numbered = heard
}

export const kitVocabulary: Vocabulary = {
  ...kitSlots,
  box: { words: { en: 'box warm_box', es: 'caja caja_caliente', fr: 'caisse caisson caisson_chauffant boîte' }, read: place('box') },
  store: { words: { en: 'store', es: 'almacén', fr: 'dépôt' }, read: place('store') },
  deck: { words: { en: 'deck', es: 'cubierta', fr: 'toiture' }, read: place('deck') },
  lot: { words: lotWords, read: readLot },
  used: { words: { en: 'used', es: 'usad(o,a,os,as)', fr: 'utilisé(,e,s,es)' }, read: number(slots.used, 'usedM2') },
  left: { words: { en: 'left remaining', es: 'qued(a,an) resto', fr: 'reste restant(,e,s,es)' }, read: left },
  empty: { words: { en: 'empty', es: 'vací(o,a,os,as)', fr: 'vide(,s)' }, read: flag({ empty: true }) }
}

/** The name of the kit, or its temperature without a label. */
function other(walk: Walk): boolean {
  if (atNumber(walk)) {
    takeKitTemperature(walk, { raw: 'kit', label: 'kit' })
    return true
  }
  const name = takeName(walk)
  if (name === null) return false
  putKitName(walk, { raw: name, label: 'kit' }, name)
  return true
}

const lexicon = lexiconOf(kitVocabulary, other)

export const kit: Grammar = { command: 'kit', lexicon: () => lexicon, build: ({ fields }) => ({ command: 'kit', kit: kitOf(fields) }) }
