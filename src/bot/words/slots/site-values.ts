import { IANAZone } from 'luxon'
import { fold } from '../fold.js'
import { choicesOf } from '../vocabulary.js'
import { clockTime } from '../when.js'

const off = { en: 'off none', es: 'ninguno no', fr: 'aucun non' }
const isOff = choicesOf([[true, off]] as const)

const kinds = choicesOf([
  ['evening', { en: 'evening', es: 'tarde', fr: 'soir' }],
  ['morning', { en: 'morning', es: 'mañana', fr: 'matin' }],
  ['watch', { en: 'watch', es: 'vigilancia', fr: 'veille' }],
  ['wrap-up', { en: 'wrap-up', es: 'cierre', fr: 'bilan' }]
] as const)

const weekdays = choicesOf([
  [1, { en: '1 mon monday', es: 'lun lunes', fr: 'lundi' }],
  [2, { en: '2 tue tues tuesday', es: 'mar martes', fr: 'mardi' }],
  [3, { en: '3 wed wednesday', es: 'mié miércoles', fr: 'mer mercredi' }],
  [4, { en: '4 thu thur thurs thursday', es: 'jue jueves', fr: 'jeu jeudi' }],
  [5, { en: '5 fri friday', es: 'vie viernes', fr: 'ven vendredi' }],
  [6, { en: '6 sat saturday', es: 'sáb sábado', fr: 'sam samedi' }],
  [7, { en: '7 sun sunday', es: 'dom domingo', fr: 'dim dimanche' }]
] as const)

/** Kinds of posts joined by commas, in the order of a day's posts; none for off. */
export function readPosts(typed: string): readonly string[] | undefined {
  if (isOff.get(fold(typed))) return []
  const chosen = typed.split(',').map((one) => kinds.get(fold(one)))
  if (chosen.includes(undefined)) return undefined
  return ['evening', 'morning', 'watch', 'wrap-up'].filter((kind) => chosen.some((one) => one === kind))
}

/** Of the days of a week by their names, without their numbers. */
export function readWeekday(typed: string): number | null {
  return /\d/.test(typed) ? null : (weekdays.get(fold(typed).replace(/\.$/, '')) ?? null)
}

function span(typed: string): readonly number[] | undefined {
  const [from, to, more] = typed.split(/[-–]/).map((one) => weekdays.get(fold(one)))
  if (from === undefined || more !== undefined) return undefined
  if (!/[-–]/.test(typed)) return [from]
  if (to === undefined) return undefined
  const length = ((to - from + 7) % 7) + 1
  return Array.from({ length }, (_, i) => ((from - 1 + i) % 7) + 1)
}

/** ISO weekdays 1…7, sorted, of `mon-sat`, `1-6` or `mon,wed,fri`. */
export function readDays(typed: string): readonly number[] | undefined {
  const spans = typed.split(',').map(span)
  if (spans.includes(undefined)) return undefined
  return [...new Set(spans.flatMap((one) => one ?? []))].sort((a, b) => a - b)
}

/** HH:MM-HH:MM, the first before the second. */
export function readHours(typed: string): string | undefined {
  const [from, to, more] = typed.split(/[-–]/).map(clockTime)
  return from && to && more === undefined && from < to ? `${from}-${to}` : undefined
}

export function readTime(typed: string): string | undefined {
  return clockTime(typed) ?? undefined
}

/** A chat channel: its id, `#name`, or null for off. */
export function readChannel(typed: string): string | null | undefined {
  if (isOff.get(fold(typed))) return null
  const id = /^(?:<#)?([CGD][A-Z0-9]{5,20})(?:\|[^<>|]{0,80})?>?$/.exec(typed)
  if (id && typed.startsWith('<') === typed.endsWith('>')) return id[1]
  return /^#[\p{L}\p{N}_-]{1,80}$/u.test(typed) ? typed.toLowerCase() : undefined
}

/** An IANA zone, as typed. */
export function readZone(typed: string): string | undefined {
  return /^[A-Za-z][A-Za-z0-9_+/-]{1,63}$/.test(typed) && IANAZone.isValidZone(typed) ? typed : undefined
}

/** Id of a limits sheet, or kind of a substrate. */
export function readId(typed: string): string | undefined {
  return /^[a-z0-9][a-z0-9-]{0,39}$/i.test(typed) ? typed.toLowerCase() : undefined
}
