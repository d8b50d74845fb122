import { convert, quantityOf, round6, type Unit } from '../../core/units.js'
import { Refused } from './refused.js'
import type { Reader } from './said.js'
import type { Quantity } from './unit.js'

/** What a number may be: its JSON unit, the unit of a bare number in either system, and its range in the JSON unit. */
export interface Slot {
  readonly label: string
  /** Null: a count or a number without a unit. */
  readonly unit: Unit | null
  readonly metric: Unit | null
  readonly us: Unit | null
  readonly min: number
  readonly max: number
  /** The lower end itself is out of range. */
  readonly above?: true
  readonly whole?: true
}

function outOfRange(slot: Slot, raw: string, unit: Unit | null, min: number, max: number): Refused {
  return new Refused('out-of-range', raw, { label: slot.label, min, max, unit: unit ?? '' })
}

function wrongUnit({ raw }: Quantity, { label, unit }: Slot): Refused {
  return new Refused('wrong-unit', raw, { label, unit: unit ?? '' })
}

function converted(quantity: Quantity, slot: Slot, reader: Reader): number {
  if (slot.unit === null) {
    if (quantity.unit !== null || quantity.degree) throw wrongUnit(quantity, slot)
    return quantity.value
  }
  if (quantity.degree && quantityOf(slot.unit) !== 'temperature') throw wrongUnit(quantity, slot)
  const unit = quantity.unit ?? (reader.units === 'us' ? slot.us : slot.metric) ?? slot.unit
  if (quantityOf(unit) !== quantityOf(slot.unit)) throw wrongUnit(quantity, slot)
  if (unit === 'AWG') {
    if (!Number.isInteger(quantity.value)) throw new Refused('bad-number', quantity.raw, { label: slot.label })
    if (!(quantity.value >= 0 && quantity.value <= 40)) throw outOfRange(slot, quantity.raw, 'AWG', 0, 40)
  }
  const value = convert(quantity.value, unit, slot.unit)
  if (value === null) throw wrongUnit(quantity, slot)
  return value
}

/** The value of a typed quantity in the slot's JSON unit, six decimals; refused when it does not fit. */
export function slotValue(quantity: Quantity, slot: Slot, reader: Reader): number {
  const value = round6(converted(quantity, slot, reader))
  if (slot.whole && !Number.isInteger(value)) throw new Refused('bad-number', quantity.raw, { label: slot.label })
  if (!within(value, slot)) {
    const refused = outOfRange(slot, quantity.raw, slot.unit, slot.min, slot.max)
    throw maybeFahrenheit(quantity, slot) ? new Refused(refused.code, quantity.raw, { ...refused.detail, hint: 'fahrenheit' }) : refused
  }
  return value
}

function within(value: number, slot: Slot): boolean {
  return value >= slot.min && value <= slot.max && !(slot.above && value === slot.min)
}

/** A bare number that is no °C here, but would be a °F. */
function maybeFahrenheit({ value, unit }: Quantity, slot: Slot): boolean {
  const read = slot.unit === 'C' && unit === null ? convert(value, 'F', 'C') : null
  return read !== null && within(read, slot)
}
