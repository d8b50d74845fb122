import type { InputBlock, PlainTextOption } from '@slack/types'
import { clip } from '../views/escape.js'

/** Input blocks for gloves: native pickers, one column. Block ids are the names that the values come back under. */
export function numberField(block: string, label: string, optional = true): InputBlock {
  return { ...input(block, label, optional), element: { type: 'number_input', action_id: 'value', is_decimal_allowed: true } }
}

export function timeField(block: string, label: string): InputBlock {
  return { ...input(block, label, true), element: { type: 'timepicker', action_id: 'value' } }
}

/** A list to choose one of: for more choices than fit under each other. */
export function listField(block: string, label: string, options: readonly (readonly [string, string])[]): InputBlock {
  return { ...input(block, label, true), element: { type: 'static_select', action_id: 'value', options: options.slice(0, mostOptions).map(option) } }
}

export function textField(block: string, label: string, optional: boolean, hint: string | null = null): InputBlock {
  return {
    ...input(block, label, optional),
    element: { type: 'plain_text_input', action_id: 'value', max_length: 150 },
    ...(hint === null ? {} : { hint: plain(hint) })
  }
}

export function ticksField(block: string, label: string, options: readonly (readonly [string, string])[]): InputBlock {
  return { ...input(block, label, true), element: { type: 'checkboxes', action_id: 'value', options: options.map(option) } }
}

export function choiceField(block: string, label: string, options: readonly (readonly [string, string])[], optional: boolean): InputBlock {
  return { ...input(block, label, optional), element: { type: 'radio_buttons', action_id: 'value', options: options.map(option) } }
}

/** Photos as the phone takes them; a HEIC is turned into a JPEG by most pickers where only these are asked for. */
export function photosField(label: string): InputBlock {
  return { ...input('photos', label, true), element: { type: 'file_input', action_id: 'value', filetypes: ['jpg', 'jpeg', 'png'], max_files: 5 } }
}

export function dateField(block: string, label: string): InputBlock {
  return { ...input(block, label, true), element: { type: 'datepicker', action_id: 'value' } }
}

function input(block: string, label: string, optional: boolean): Omit<InputBlock, 'element'> {
  return { type: 'input', block_id: block, label: plain(label), optional }
}

const mostOptions = 100
const optionMax = 75

function option([value, label]: readonly [string, string]): PlainTextOption {
  return { value, text: plain(clip(label, optionMax)) }
}

function plain(text: string) {
  return { type: 'plain_text', text, emoji: false } as const
}
