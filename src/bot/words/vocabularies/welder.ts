import type { WelderData } from '../../../core/log/data.js'
import { atEnd } from '../cursor.js'
import { type Fields, picked } from '../fields.js'
import { matchAt } from '../match.js'
import { takeName } from '../names.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing, Refused } from '../refused.js'
import type { Said } from '../said.js'
import { slotValue } from '../slot.js'
import { by, takePerson } from '../slots/by.js'
import { lotWords, readLot } from '../slots/kit.js'
import { slots } from '../slots/numbers.js'
import { handWords, peelWords, robotWords } from '../slots/peel.js'
import { leadWords, readLead } from '../slots/power.js'
import { nozzleWords } from '../slots/start-up.js'
import { flag, negated, number, takeToken } from '../take.js'
import type { Quantity } from '../unit.js'
import { lexiconOf } from '../vocabulary.js'
import { type Heard, type Meaning, note, put, type Vocabulary, type Walk } from '../walk.js'

function putWelder(walk: Walk, heard: Heard, name: string): void {
  put(walk, heard, 'welder', name)
  note(walk, 'welder', name)
}

function readOperator(walk: Walk, heard: Heard): void {
  const name = takePerson(walk, heard)
  put(walk, heard, 'event', 'operator', 'inconsistent')
  put(walk, heard, 'operator', name)
  note(walk, heard.label, name)
}

function event(event: WelderData['event']): Meaning['read'] {
  return flag({ event }, { label: 'event', value: event })
}

const colourToken = /^[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}./_#-]{0,39}$/u

function readColour(walk: Walk, heard: Heard): void {
  const colour = takeToken(walk, heard, colourToken).toLowerCase()
  put(walk, heard, 'colour', colour)
  note(walk, 'colour', colour)
}

/** `lead`, or `lead 50 m 2.5 mm2` with what the new one is. */
function readNewLead(walk: Walk, heard: Heard): void {
  event('lead')(walk, heard)
  if (!atEnd(walk) && atNumber(walk)) readLead(walk, heard)
}

/** `released`, or `released 20 m` of what is on hold. */
function readReleased(walk: Walk, heard: Heard): void {
  event('released')(walk, heard)
  if (!atEnd(walk) && atNumber(walk)) number(slots.released, 'releasedM')(walk, heard)
}

const peels = Object.fromEntries(
  Object.entries(peelWords).map(([peel, words]) => [
    peel,
    { words, read: flag({ peel: peel as keyof typeof peelWords }, { label: 'peel', value: peel }) }
  ])
)

export const welderVocabulary: Vocabulary = {
  robot: { words: robotWords, read: (walk, heard) => putWelder(walk, heard, 'robot') },
  hand: { words: handWords, read: (walk, heard) => putWelder(walk, heard, 'hand') },
  ...peels,
  warm: { words: { en: 'warm', es: 'caliente(,s)', fr: 'chaud(,e,s,es)' }, read: flag({ warm: true }), negated: negated({ warm: false }) },
  set: { words: { en: 'set', es: 'ajuste consigna', fr: 'consigne réglage' }, read: number(slots.set, 'setC') },
  speed: { words: { en: 'speed', es: 'velocidad', fr: 'vitesse' }, read: number(slots.weldSpeed, 'speedMMin') },
  thick: { words: { en: 'thick thickness', es: 'espesor grosor', fr: 'épaisseur' }, read: number(slots.thick, 'thicknessMm') },
  by,
  operator: { words: { en: 'operator', es: 'operador(,a)', fr: 'opérateur opératrice' }, read: readOperator },
  lot: { words: lotWords, read: readLot },
  colour: { words: { en: 'colour color', es: 'color', fr: 'couleur teinte' }, read: readColour },
  old: { words: { en: 'old old_sheet', es: 'viej(o,a) lámina_vieja', fr: 'vieille ancien(,ne) ancienne_feuille' }, read: flag({ old: true }) },
  cut: { words: { en: 'cut cut_out', es: 'testigo muestra', fr: 'prélèvement découpe' }, read: flag({ cut: true }) },
  restart: { words: { en: 'restart restarted', es: 'reinicio reiniciad(o,a)', fr: 'redémarrage redémarré(,e)' }, read: event('restart') },
  power: { words: { en: 'power', es: 'corte', fr: 'coupure' }, read: event('power') },
  source: { words: { en: 'source generator', es: 'fuente generador', fr: 'source groupe générateur' }, read: event('source') },
  lead: { words: leadWords, read: readNewLead },
  nozzle: { words: nozzleWords, read: event('nozzle') },
  roller: { words: { en: 'roller(,s)', es: 'rodillo(,s)', fr: 'rouleau galet roulette' }, read: event('roller') },
  probed: { words: { en: 'probed', es: 'punzonad(o,a,os,as) repasad(o,a,os,as)', fr: 'sondé(,e,s,es)' }, read: event('probed') },
  released: { words: { en: 'released', es: 'liberad(o,a,os,as)', fr: 'libéré(,e,s,es)' }, read: readReleased },
  chart: { words: { en: 'chart', es: 'gráfic(o,a)', fr: 'graphique' }, read: flag({ chart: true }) },
  off: { words: { en: 'off', es: 'apagad(o,a)', fr: 'arrêt arrêté(,e) éteint(,e)' }, read: event('off') }
}

/** A unit also covers the bare numbers just before it: 41 39 40 mm. */
function covered(run: readonly Quantity[]): readonly Quantity[] {
  const all = [...run]
  for (let index = all.length - 2; index >= 0; index -= 1) {
    const one = all[index] as Quantity
    const next = all[index + 1] as Quantity
    if (one.unit === null && !one.degree) all[index] = { ...one, unit: next.unit, degree: next.degree }
  }
  return all
}

const andAt = /\s*(?:and|y|e|et|&|\+)\s+(?=\d)/iy

/** Over `and` between two numbers: 20, 21 and 22. */
function overAnd(walk: Walk): void {
  walk.pos += matchAt(andAt, walk.text, walk.pos)?.[0].length ?? 0
}

function takeWidths(walk: Walk): void {
  const run: Quantity[] = []
  while (!atEnd(walk) && atNumber(walk)) {
    run.push(takeQuantity(walk))
    overAnd(walk)
  }
  const widths = covered(run).map((quantity) => slotValue(quantity, slots.width, walk.reader))
  walk.fields.widthsMm = [...(walk.fields.widthsMm ?? []), ...widths]
  for (const width of widths) note(walk, 'width', width, 'mm')
}

function other(walk: Walk): boolean {
  if (atNumber(walk)) {
    takeWidths(walk)
    return true
  }
  const name = takeName(walk)
  if (name === null) return false
  putWelder(walk, { raw: name, label: 'welder' }, name)
  return true
}

export const welderLexicon = lexiconOf(welderVocabulary, other)

function clash(word: string): Refused {
  return new Refused('inconsistent', word, { label: word })
}

/** Changes that a sheet of another roll makes: told together they are one. */
function sheetEvent({ thicknessMm, lot, colour }: Fields): 'thickness' | 'lot' | 'colour' | undefined {
  if (thicknessMm !== undefined) return 'thickness'
  if (lot !== undefined) return 'lot'
  return colour === undefined ? undefined : 'colour'
}

function eventOf(welder: string, fields: Fields): Said {
  const { event, setC, speedMMin, operator, old, releasedM, lead, chart } = fields
  const told: readonly (WelderData['event'] | 'chart' | undefined)[] = [
    event,
    setC === undefined ? undefined : 'set',
    speedMMin === undefined ? undefined : 'speed',
    sheetEvent(fields),
    old ? 'old-sheet' : undefined,
    chart ? 'chart' : undefined
  ]
  const [only, second] = told.filter((one) => one !== undefined)
  if (second !== undefined) throw clash(second)
  if (only === undefined) return { command: 'weld show', welder }
  if (only === 'chart') return { command: 'weld chart', welder }
  const parts = picked(fields, ['setC', 'speedMMin', 'thicknessMm', 'lot', 'colour'])
  const by = operator === undefined ? {} : { by: operator }
  const metres = releasedM === undefined ? {} : { metresM: releasedM }
  return { command: 'weld event', welder, event: { event: only, ...parts, ...by, ...metres }, ...(lead === undefined ? {} : { lead }) }
}

/** A coupon when a width or a peel was told, else one event of the welder, else what is known of it. */
export function saidOfWelder(fields: Fields): Said {
  const { welder, widthsMm, peel, event, warm, cut, chart } = fields
  if (welder === undefined) throw missing('welder')
  if (widthsMm === undefined && peel === undefined) {
    if (event !== undefined && fields.by !== undefined) throw clash('by')
    if (warm !== undefined || cut || fields.by !== undefined) throw missing('width')
    return eventOf(welder, fields)
  }
  if (event !== undefined || chart) throw clash(event ?? 'chart')
  const parts = picked(fields, ['setC', 'speedMMin', 'thicknessMm', 'lot', 'colour', 'old', 'cut', 'by'])
  return { command: 'weld coupon', welder, coupon: { widthsMm: widthsMm ?? [], peel: peel ?? null, warm: warm ?? false, ...parts } }
}
