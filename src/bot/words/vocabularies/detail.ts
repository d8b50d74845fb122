import type { DetailKind, DetailStatus, DetailsData } from '../../../core/log/closing-data.js'
import type { Words } from '../forms.js'
import { missing } from '../refused.js'
import { photo } from '../slots/photo.js'
import { failedWords, passedWords } from '../slots/verdicts.js'
import { flag } from '../take.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'

const kinds: Readonly<Record<DetailKind, Words>> = {
  corners: { en: 'corner(,s)', es: 'esquina(,s)', fr: 'coin(,s) angle(,s)' },
  pipes: { en: 'pipe(,s)', es: 'tubo(,s)', fr: 'tuyau(,x)' },
  drains: { en: 'drain(,s)', es: 'desagüe(,s)', fr: 'évacuation(,s)' },
  terminations: { en: 'termination(,s)', es: 'remate(,s)', fr: 'arrêt(,s)' },
  cutEdges: { en: 'cut_edge(,s)', es: 'borde_cortado bordes_cortados canto(,s)', fr: 'bord_coupé bords_coupés chant(,s)' },
  tSteps: { en: 't-step(,s) step(,s)', es: 'escalón escalones', fr: 'décrochement(,s)' }
}

function say(walk: Walk, kind: DetailKind, status: DetailStatus | 'named'): void {
  walk.fields.details = { ...walk.fields.details, [kind]: status }
  note(walk, kind, status === 'none' ? 'none' : true)
}

export const detailVocabulary: Vocabulary = {
  ...meaningsOf(kinds, (kind) => ({ read: (walk) => say(walk, kind, 'named'), negated: (walk) => say(walk, kind, 'none') })),
  passed: { words: passedWords, read: flag({ verdict: 'good' }, { label: 'step', value: 'passed' }) },
  failed: { words: failedWords, read: flag({ verdict: 'bad' }, { label: 'step', value: 'failed' }) },
  all: {
    words: { en: 'all', es: 'tod(o,a,os,as)', fr: 'tout(,e,es) tous' },
    read: (walk, heard) => put(walk, heard, 'allDetails', true)
  },
  photo
}

const lexicon = lexiconOf(detailVocabulary)

/** Kinds that are named have passed, unless the message says that they failed; `no pipes`: the roof has none. */
export const detail: Grammar = {
  command: 'detail',
  lexicon: () => lexicon,
  build: ({ fields }) => {
    const { details = {}, verdict = 'good', allDetails = false, files = [] } = fields
    const named = allDetails ? { ...Object.fromEntries(Object.keys(kinds).map((kind) => [kind, 'named'])), ...details } : details
    const said = Object.fromEntries(Object.entries(named).map(([kind, status]) => [kind, status === 'named' ? verdict : status]))
    if (Object.keys(said).length === 0 && (fields.verdict !== undefined || files.length > 0)) throw missing('detail')
    return { command: 'detail', details: said as DetailsData, files }
  }
}
