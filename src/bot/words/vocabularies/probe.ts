import type { RepairStep } from '../../../core/log/closing-data.js'
import type { VoidCause, VoidOn } from '../../../core/log/data.js'
import { voidWords } from '../command-words.js'
import type { Fields } from '../fields.js'
import type { Words } from '../forms.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing, Refused } from '../refused.js'
import type { Said } from '../said.js'
import { slotValue } from '../slot.js'
import { lapWords } from '../slots/lap.js'
import { slots } from '../slots/numbers.js'
import { peelWords } from '../slots/peel.js'
import { photo } from '../slots/photo.js'
import { surfaceWords } from '../slots/surfaces.js'
import { failedWords, passedWords } from '../slots/verdicts.js'
import { flag, number, putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, type Meaning, note, type Vocabulary, type Walk } from '../walk.js'

const causeWords: Readonly<Record<VoidCause, Words>> = {
  ...peelWords,
  wet: surfaceWords.wet,
  dirty: surfaceWords.dirty,
  cold: { en: 'cold', es: 'frí(o,a,os,as)', fr: 'froid(,e,s,es)' },
  foam: { en: 'foam', es: 'espuma', fr: 'mousse' }
}

const stepWords: Readonly<Record<RepairStep, Words>> = {
  lifted: { en: 'lifted', es: 'levantad(o,a,os,as)', fr: 'soulevé(,e,s,es)' },
  cleaned: { en: 'cleaned', es: 'limpiad(o,a,os,as)', fr: 'nettoyé(,e,s,es)' },
  dried: { en: 'dried', es: 'secad(o,a,os,as)', fr: 'séché(,e,s,es)' },
  reheated: { en: 'reheated re-heated', es: 'recalentad(o,a,os,as)', fr: 'réchauffé(,e,s,es)' },
  cooled: { en: 'cooled', es: 'enfriad(o,a,os,as)', fr: 'refroidi(,e,s,es)' }
}

/** A step of a repair. Cooled is said of a probe too: it was not probed warm. */
function repaired(one: RepairStep): Meaning['read'] {
  return (walk) => {
    walk.fields.steps = [...new Set([...(walk.fields.steps ?? []), one])]
    note(walk, 'repair', one)
  }
}

function cause(one: VoidCause): Meaning['read'] {
  return (walk) => {
    walk.fields.causes = [...new Set([...(walk.fields.causes ?? []), one])]
    note(walk, 'cause', one)
  }
}

function on(place: VoidOn): Meaning['read'] {
  return flag({ on: place }, { label: 'on', value: place })
}

function step(one: Exclude<Fields['step'], undefined>): Meaning['read'] {
  return flag({ step: one }, { label: 'step', value: one })
}

export const probeVocabulary: Vocabulary = {
  course: { words: { en: 'course', es: 'hilera fila hilada', fr: 'rang lé' }, read: number(slots.course, 'course') },
  lap: { words: lapWords, read: on('lap') },
  end: {
    words: { en: 'end end_joint', es: 'junta junta_a_tope junta_a_testa extremo testero', fr: "about d'about joint_d'about bout" },
    read: on('end')
  },
  strip: {
    words: { en: 'strip cover_strip', es: 'tira tira_cubrejunta banda banda_de_cubrejunta', fr: 'bande bande_de_recouvrement bande_de_pontage' },
    read: on('strip')
  },
  patch: { words: { en: 'patch', es: 'parche(,s)', fr: 'pièce(,s) pièce_de_renfort' }, read: on('patch') },
  at: { words: { en: 'at', es: 'a', fr: 'à' }, read: number(slots.distance, 'distanceM') },
  long: { words: { en: 'long', es: 'largo', fr: 'long' }, read: number(slots.length, 'lengthMm') },
  void: { words: voidWords, read: number(slots.void, 'void') },
  fixed: { words: { en: 'fixed', es: 'reparad(o,a,os,as)', fr: 'réparé(,e,s,es)' }, read: step('fixed') },
  passed: { words: passedWords, read: step('passed') },
  failed: { words: failedWords, read: step('failed') },
  list: { words: { en: 'list', es: 'lista', fr: 'liste' }, read: flag({ list: true }) },
  ...Object.fromEntries(Object.entries(causeWords).map(([one, words]) => [one, { words, read: cause(one as VoidCause) }])),
  ...Object.fromEntries(Object.entries(stepWords).map(([one, words]) => [one, { words, read: repaired(one as RepairStep) }])),
  photo
}

/** Bare m or ft is the distance, bare mm, cm or in the length; what a number without a unit is shows at the end. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  const heard = { raw: quantity.raw, label: 'length' }
  if (quantity.unit === null && !quantity.degree) walk.fields.bare = [...(walk.fields.bare ?? []), quantity]
  else if (quantity.unit === 'm' || quantity.unit === 'ft')
    putNumber(walk, heard, 'distanceM', slots.distance, slotValue(quantity, slots.distance, walk.reader))
  else putNumber(walk, heard, 'lengthMm', slots.length, slotValue(quantity, slots.length, walk.reader))
  return true
}

/** A number without a unit is the number of the void in a step, else a length in the person's unit. */
function placeBare(walk: Walk): void {
  const { step, steps, files, course } = walk.fields
  const isVoid = step !== undefined || (course === undefined && (files ?? steps) !== undefined)
  const slot = isVoid ? slots.void : slots.length
  for (const quantity of walk.fields.bare ?? []) {
    putNumber(walk, { raw: quantity.raw, label: slot.label }, isVoid ? 'void' : 'lengthMm', slot, slotValue(quantity, slot, walk.reader))
  }
}

/** Words of one form of the command beside words of another. */
function mixed(fields: Fields, keys: readonly (keyof Fields)[], word: string): void {
  if (keys.some((key) => fields[key] !== undefined)) throw new Refused('inconsistent', word, { label: word })
}

const ofVoid = ['course', 'distanceM', 'lengthMm', 'causes'] as const

function build(walk: Walk): Said {
  placeBare(walk)
  const { fields } = walk
  const { steps = [], files = [] } = fields
  if (fields.list) {
    mixed(fields, [...ofVoid, 'on', 'step', 'void', 'steps', 'files'], 'list')
    return { command: 'probe list' }
  }
  if (fields.step !== undefined) return stepOf(fields, fields.step)
  if (fields.void !== undefined) {
    if (steps.length > 0 || files.length === 0) throw missing('step')
    mixed(fields, [...ofVoid, 'on'], 'photo')
    return { command: 'probe photo', number: fields.void, files }
  }
  if (fields.course === undefined) throw missing('course')
  if (fields.lengthMm === undefined) throw missing('length')
  const warm = steps.find((one) => one !== 'cooled')
  if (warm !== undefined) throw new Refused('inconsistent', warm, { label: warm, other: 'course' })
  const { course, on = 'lap', distanceM = null, lengthMm, causes = [] } = fields
  const cooled = steps.length === 0 ? {} : ({ cooled: true } as const)
  return { command: 'probe open', found: { course, on, distanceM, lengthMm, causes, ...cooled, ...(files.length === 0 ? {} : { files }) } }
}

/** `patch` in a repair: it was patched, not welded again. Only `fixed` has steps of its own; `cooled` goes with every probe. */
function stepOf(fields: Fields, step: Exclude<Fields['step'], undefined>): Said {
  const { steps = [], files = [], on } = fields
  mixed(fields, ofVoid, step)
  if (on !== undefined && !(on === 'patch' && step === 'fixed')) throw new Refused('inconsistent', step, { label: step, other: on })
  const more = step === 'fixed' ? undefined : steps.find((one) => one !== 'cooled')
  if (more !== undefined) throw new Refused('inconsistent', step, { label: step, other: more })
  if (fields.void === undefined) throw missing('void')
  return {
    command: 'probe step',
    number: fields.void,
    step,
    ...(step === 'fixed' && steps.length > 0 ? { steps } : {}),
    ...(on === 'patch' ? { patched: true } : {}),
    ...(step !== 'fixed' && steps.length > 0 ? { cooled: true } : {}),
    ...(files.length > 0 ? { files } : {})
  }
}

const lexicon = lexiconOf(probeVocabulary, other)

export const probe: Grammar = { command: 'probe', lexicon: () => lexicon, build }
