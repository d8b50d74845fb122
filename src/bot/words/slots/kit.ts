import { atEnd, find, noValue } from '../cursor.js'
import { type Fields, picked } from '../fields.js'
import { nameOf, takeName } from '../names.js'
import { negations } from '../negation.js'
import { atNumber } from '../quantity.js'
import { missing } from '../refused.js'
import type { KitSaid } from '../said.js'
import { date, flag, negated, number, putNumber, takeNumber, takeToken } from '../take.js'
import { type Heard, note, put, type Vocabulary, type Walk } from '../walk.js'
import { slots } from './numbers.js'

export const kitWords = { en: 'kit', es: 'kit juego', fr: 'kit trousse' }

export const lotWords = { en: 'lot', es: 'lote', fr: 'lot' }

/** A lot, as it is printed on a kit or a roll. */
const lotToken = /^[\p{L}\p{N}#][\p{L}\p{N}./_#-]{0,39}$/u

export function readLot(walk: Walk, heard: Heard): void {
  const lot = takeToken(walk, heard, lotToken)
  put(walk, heard, 'lot', lot)
  note(walk, 'lot', lot)
}

/** A temperature without a part: iso and resin alike. */
export function takeKitTemperature(walk: Walk, heard: Heard): void {
  const value = takeNumber(walk, slots.kit, heard)
  putNumber(walk, heard, 'isoC', slots.kit, value)
  putNumber(walk, heard, 'resinC', slots.kit, value)
  walk.numbered = heard
}

export function putKitName(walk: Walk, heard: Heard, name: string): void {
  put(walk, heard, 'kitName', name)
  note(walk, 'kit', name)
}

/** `kit K7`, `kit 25`, `kit K7 25`, or `kit` before `iso`, `resin` and the like. */
function readKit(walk: Walk, heard: Heard): void {
  const name = atEnd(walk) ? null : takeName(walk, nameOf)
  if (name !== null) putKitName(walk, heard, name)
  if (!atEnd(walk) && atNumber(walk)) takeKitTemperature(walk, heard)
  else if (name === null && !kitNext(walk)) throw noValue(walk, heard.raw, 'kit')
}

const kitLabels: readonly string[] = ['iso', 'resin', 'exp', 'mixed']

/** Whether something that is said of a kit stands here, with or without `no`. */
function kitNext(walk: Walk): boolean {
  if (atEnd(walk)) return false
  const no = find(walk, negations)
  const next = no ? find({ ...walk, pos: no.end + 1 }, walk.lexicon) : find(walk, walk.lexicon)
  return next !== null && kitLabels.includes(next.label)
}

/** A kit, as `spray` and `kit` both take it. */
export const kit = {
  kit: { words: kitWords, read: readKit },
  iso: { words: { en: 'iso', es: 'iso', fr: 'iso' }, read: number(slots.iso, 'isoC') },
  resin: { words: { en: 'resin', es: 'resina', fr: 'résine' }, read: number(slots.resin, 'resinC') },
  exp: { words: { en: 'exp expiry expires', es: 'caduca caducidad vence vencimiento', fr: 'expire expiration' }, read: date('expiresOn') },
  mixed: { words: { en: 'mixed', es: 'mezclad(o,a,os,as)', fr: 'mélangé(,e,s,es)' }, read: flag({ mixed: true }), negated: negated({ mixed: false }) }
} satisfies Vocabulary

/** What was said of a kit; null when nothing was. */
export function kitOf(fields: Fields): KitSaid | null {
  const data = picked(fields, ['isoC', 'resinC', 'mixed', 'expiresOn', 'place', 'placeC', 'lot', 'usedM2', 'empty', 'isoLeftPct', 'resinLeftPct'])
  if (data.placeC !== undefined && data.place === undefined) throw missing('place')
  return fields.kitName === undefined && Object.keys(data).length === 0 ? null : { name: fields.kitName ?? null, data }
}
