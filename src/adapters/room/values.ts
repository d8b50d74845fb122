import type { View } from './modals.js'
import type { Loose } from './types.js'
import { type Words, wordsOf } from './value-words.js'
import type { World } from './world.js'

/** What a form holds, and what is wrong with it before the app need see it: by block id. */
interface Filled {
  readonly values: Loose
  readonly errors: Readonly<Record<string, string>>
}

/** The checks that the service makes itself: asked for and left empty, no number, out of the bounds of the field. Values come out in its shape. */
export function unanswered(world: World, view: View, typed: Loose, lang: string | null): Filled {
  const values: Record<string, Loose> = {}
  const errors: Record<string, string> = {}
  for (const block of (view.body.blocks as readonly Loose[] | undefined) ?? []) {
    if (block.type !== 'input') continue
    const element = block.element as Loose
    const id = String(block.block_id)
    const given = ((typed[id] as Loose | undefined)?.[String(element.action_id)] ?? {}) as Loose
    const value = shaped(world, element, given)
    const wrong = wrongWith(element, value, block.optional === true, wordsOf(lang))
    if (wrong !== null) errors[id] = wrong
    values[id] = { [String(element.action_id)]: value }
  }
  return { values, errors }
}

const slots: Readonly<Record<string, string>> = {
  plain_text_input: 'value',
  number_input: 'value',
  static_select: 'selected_option',
  radio_buttons: 'selected_option',
  checkboxes: 'selected_options',
  datepicker: 'selected_date',
  timepicker: 'selected_time',
  file_input: 'files'
}

function shaped(world: World, element: Loose, given: Loose): Loose {
  const type = String(element.type)
  const slot = slots[type] ?? 'value'
  const value = given[slot]
  if (type === 'file_input') {
    const ids = Array.isArray(value) ? value.map(String) : []
    return { type, files: ids.flatMap((id) => world.files.get(id) ?? []).map((file) => world.files.shown(file, world.settings.base())) }
  }
  if (type === 'checkboxes') return { type, selected_options: Array.isArray(value) ? value : [] }
  if (typeof value !== 'string') return { type, [slot]: value ?? null }
  // A comma is how most of the world writes a decimal; the service's field takes a point.
  const text =
    type === 'number_input'
      ? value
          .trim()
          .replace(/^([-−]?\d+),(\d+)$/, '$1.$2')
          .replace('−', '-')
      : value
  return { type, [slot]: text === '' ? null : text }
}

function wrongWith(element: Loose, value: Loose, optional: boolean, words: Words): string | null {
  const held = value[slots[String(element.type)] ?? 'value']
  if (held === null || (Array.isArray(held) && held.length === 0)) return optional ? null : words.empty
  if (element.type === 'number_input') return wrongNumber(element, String(held), words)
  if (element.type !== 'plain_text_input') return null
  const length = [...String(held)].length
  const { min_length: least, max_length: most } = element
  if (typeof least === 'number' && length < least) return words.short(least)
  return typeof most === 'number' && length > most ? words.long(most) : null
}

function wrongNumber(element: Loose, text: string, words: Words): string | null {
  if (!/^-?\d+(\.\d+)?$/.test(text)) return words.number
  if (element.is_decimal_allowed === false && text.includes('.')) return words.whole
  const { min_value: least, max_value: most } = element
  if (least !== undefined && Number(text) < Number(least)) return words.least(String(least))
  return most !== undefined && Number(text) > Number(most) ? words.most(String(most)) : null
}
