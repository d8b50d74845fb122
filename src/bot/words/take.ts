import { atEnd, find, noValue, takeChunk, unknownWord } from './cursor.js'
import type { Fields, NumberKey } from './fields.js'
import { fold } from './fold.js'
import { atNumber, takeQuantity } from './quantity.js'
import { Refused } from './refused.js'
import { type Slot, slotValue } from './slot.js'
import { type Heard, type Meaning, note, put, type Walk } from './walk.js'
import { readDate } from './when.js'

type Read = Meaning['read']

/** Reads the number that a slot needs here; refused when there is none or it does not fit. */
export function takeNumber(walk: Walk, slot: Slot, heard: Heard): number {
  if (atEnd(walk) || !atNumber(walk)) throw noValue(walk, heard.raw, slot.label)
  return slotValue(takeQuantity(walk, slot.whole), slot, walk.reader)
}

/** Sets a number and notes it. */
export function putNumber(walk: Walk, heard: Heard, key: NumberKey, slot: Slot, value: number): void {
  put(walk, { raw: heard.raw, label: slot.label }, key, value)
  note(walk, slot.label, value, slot.unit)
}

/** A label with one number. */
export function number(slot: Slot, key: NumberKey): Read {
  return (walk, heard) => {
    putNumber(walk, heard, key, slot, takeNumber(walk, slot, heard))
    walk.numbered = { raw: heard.raw, label: slot.label }
  }
}

/** Sets fields and notes one value: what a flag, or a flag negated, does. */
export function state(walk: Walk, heard: Heard, values: Fields, value: boolean | string = true): void {
  for (const [key, one] of Object.entries(values)) put(walk, heard, key as keyof Fields, one as never, 'inconsistent')
  note(walk, heard.label, value)
}

/** A flag: a word that says something by itself. */
export function flag(values: Fields, noted?: { readonly label: string; readonly value: boolean | string }): Read {
  return (walk, heard) => state(walk, { raw: heard.raw, label: noted?.label ?? heard.label }, values, noted?.value ?? true)
}

/** A flag said with `no`, `sin`, `sans` before it. */
export function negated(values: Fields, noted?: { readonly label: string; readonly value: boolean | string }): Read {
  return (walk, heard) => state(walk, { raw: heard.raw, label: noted?.label ?? heard.label }, values, noted?.value ?? false)
}

/** The choice after a label, out of a closed list. */
export function takeChoice<Value>(walk: Walk, heard: Heard, choices: ReadonlyMap<string, Value>): Value {
  if (atEnd(walk)) throw new Refused('missing', heard.raw, { label: heard.label })
  const before = walk.pos
  const chosen = choices.get(fold(takeChunk(walk)))
  if (chosen !== undefined) return chosen
  walk.pos = before
  throw noValue(walk, heard.raw, heard.label)
}

/** A label with a free token (a lot, a person) of up to 40 characters; a word of the vocabulary is not one. */
export function takeToken(walk: Walk, heard: Heard, allowed: RegExp): string {
  if (atEnd(walk) || /^@\d/.test(walk.text.slice(walk.pos, walk.pos + 2)) || find(walk, walk.lexicon)) {
    throw new Refused('missing', heard.raw, { label: heard.label })
  }
  const before = walk.pos
  const token = takeChunk(walk)
  if (allowed.test(token)) return token
  walk.pos = before
  throw unknownWord(walk, token)
}

/** A label with a date. */
export function date(key: 'expiresOn'): Read {
  return (walk, heard) => {
    if (atEnd(walk)) throw new Refused('missing', heard.raw, { label: heard.label })
    const before = walk.pos
    const typed = takeChunk(walk)
    const read = readDate(typed, walk.reader)
    walk.pos = read === null ? before : walk.pos
    if (read === null && atNumber(walk)) throw new Refused('bad-number', typed, { label: heard.label, hint: 'date' })
    if (read === null) throw noValue(walk, heard.raw, heard.label)
    put(walk, heard, key, read)
    note(walk, heard.label, read)
  }
}
