import type { FormValues } from '../../bot/talk/talk.js'
import { at, isLoose, textAt } from './loose.js'

type Value = string | readonly string[] | null

const single = ['value', 'selected_date', 'selected_time', 'selected_user', 'selected_channel', 'selected_conversation'] as const
const many = ['selected_users', 'selected_channels', 'selected_conversations'] as const

/** What one field or button holds: text, chosen value, all ticked values, the ids of files; null when empty. */
function heldBy(element: unknown): Value {
  if (!isLoose(element)) return null
  const chosen = textAt(element, 'selected_option', 'value')
  if (chosen !== null) return chosen
  for (const key of single) if (textAt(element, key) !== null) return textAt(element, key)
  if (typeof element.selected_date_time === 'number') return String(element.selected_date_time)
  if (Array.isArray(element.selected_options)) return element.selected_options.map((option) => textAt(option, 'value')).filter(isText)
  if (Array.isArray(element.files)) return element.files.map((file) => textAt(file, 'id')).filter(isText)
  for (const key of many) {
    const list = element[key]
    if (Array.isArray(list)) return list.filter(isText)
  }
  return null
}

/** Values of a form by block id; of several fields in one block the first that holds something. */
export function formValues(view: unknown): FormValues {
  const blocks = at(view, 'state', 'values')
  if (!isLoose(blocks)) return {}
  return Object.fromEntries(Object.entries(blocks).map(([id, block]) => [id, ofBlock(block)]))
}

function ofBlock(block: unknown): Value {
  if (!isLoose(block)) return null
  const values = Object.values(block).map(heldBy)
  return values.find((value) => value !== null) ?? null
}

/** A pressed button's value, or what was chosen; several are parted by commas. */
export function pressedValue(action: unknown): string {
  const value = heldBy(action)
  return value === null ? '' : typeof value === 'string' ? value : value.join(',')
}

function isText(value: unknown): value is string {
  return typeof value === 'string' && value !== ''
}
