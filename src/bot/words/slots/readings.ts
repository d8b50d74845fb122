import type { ReadingData } from '../../../core/log/data.js'
import { type Fields, picked } from '../fields.js'
import { Refused } from '../refused.js'
import { number } from '../take.js'
import type { Vocabulary } from '../walk.js'
import { slots } from './numbers.js'

/** Readings: what an instrument shows. */
export const readings = {
  air: { words: { en: 'air', es: 'aire', fr: 'air' }, read: number(slots.air, 'airC') },
  sheet: { words: { en: 'sheet', es: 'lámina(,s)', fr: 'feuille(,s)' }, read: number(slots.sheet, 'sheetC') },
  rh: { words: { en: 'rh humidity', es: 'hr humedad humedad_relativa', fr: 'hr humidité humidité_relative' }, read: number(slots.rh, 'rhPct') },
  dew: { words: { en: 'dew dew_point', es: 'rocío punto_de_rocío', fr: 'rosée point_de_rosée' }, read: number(slots.dew, 'dewPointC') },
  wind: { words: { en: 'wind', es: 'viento(,s)', fr: 'vent(,s)' }, read: number(slots.wind, 'windKmh') },
  gust: { words: { en: 'gust(,s)', es: 'racha(,s) ráfaga(,s)', fr: 'rafale(,s)' }, read: number(slots.gust, 'gustKmh') },
  sun: { words: { en: 'sun', es: 'sol', fr: 'soleil' }, read: number(slots.sun, 'sunWm2') }
} satisfies Vocabulary

export const substrateWords = { en: 'deck substrate', es: 'cubierta(,s) sustrato(,s) soporte(,s)', fr: 'support(,s)' }

/** The substrate as a reading alone; `spray` also takes `deck dry`. */
export const substrateReading = {
  substrate: { words: substrateWords, read: number(slots.substrate, 'substrateC') }
} satisfies Vocabulary

/** The readings of a message; refused when two of them cannot both be true. */
export function readingOf(fields: Fields): ReadingData {
  const { airC, dewPointC, windKmh, gustKmh } = fields
  if (gustKmh !== undefined && windKmh !== undefined && gustKmh < windKmh) throw new Refused('inconsistent', 'gust', { label: 'gust', other: 'wind' })
  if (dewPointC !== undefined && airC !== undefined && dewPointC > airC) throw new Refused('inconsistent', 'dew', { label: 'dew', other: 'air' })
  return picked(fields, ['airC', 'substrateC', 'sheetC', 'rhPct', 'dewPointC', 'windKmh', 'gustKmh', 'sunWm2'])
}
