import { atEnd } from '../cursor.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { slotValue } from '../slot.js'
import { putNumber, takeNumber } from '../take.js'
import { type Heard, note, put, type Vocabulary, type Walk } from '../walk.js'
import { slots } from './numbers.js'

/** A number in the given unit here, or null; moves only when there is one. */
function takeIn(walk: Walk, unit: 'V' | 'W'): number | null {
  const before = walk.pos
  const quantity = !atEnd(walk) && atNumber(walk) ? takeQuantity(walk) : null
  if (quantity?.unit === unit) return slotValue(quantity, unit === 'V' ? slots.volts : slots.watts, walk.reader)
  walk.pos = before
  return null
}

/** `lead 50 m 2.5 mm2 [230 V] [1600 W]`, the last two in either order. */
export function readLead(walk: Walk, heard: Heard): void {
  const leadM = takeNumber(walk, slots.lead, heard)
  const areaMm2 = takeNumber(walk, slots.leadArea, heard)
  const before = takeIn(walk, 'W')
  const volts = takeIn(walk, 'V')
  const watts = before ?? takeIn(walk, 'W')
  put(walk, heard, 'lead', { leadM, areaMm2, ...(volts === null ? {} : { volts }), ...(watts === null ? {} : { watts }) })
  note(walk, 'lead', leadM, 'm')
  note(walk, 'lead area', areaMm2, 'mm2')
  if (volts !== null) note(walk, 'volts', volts, 'V')
  if (watts !== null) note(walk, 'watts', watts, 'W')
}

/** A bare number of volts: measured at the tool under load. */
export function bareVolts(walk: Walk): boolean {
  const start = walk.pos
  const toolV = takeIn(walk, 'V')
  if (toolV === null) return false
  putNumber(walk, { raw: walk.text.slice(start, walk.pos), label: 'volts' }, 'toolV', slots.volts, toolV)
  return true
}

export const leadWords = { en: 'lead', es: 'cable(,s) alargador', fr: 'rallonge(,s) câble(,s)' }

export const power = {
  lead: { words: leadWords, read: readLead }
} satisfies Vocabulary
