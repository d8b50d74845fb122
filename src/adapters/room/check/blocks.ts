import type { Loose } from '../types.js'
import { type Check, list, onlyKeys, optionalString, optionalText, problem, text } from './basics.js'
import { element, image } from './elements.js'

type Look = (check: Check, block: Loose, at: string) => void

const pickers = ['button', 'static_select', 'checkboxes', 'radio_buttons', 'overflow', 'datepicker', 'timepicker']
const inputs = ['plain_text_input', 'number_input', 'static_select', 'checkboxes', 'radio_buttons', 'datepicker', 'timepicker', 'file_input']

/** Block types that the room draws; any other is refused here, so that nothing is sent that nobody ever saw drawn. */
const looks: Readonly<Record<string, { readonly keys: readonly string[]; readonly look: Look }>> = {
  section: { keys: ['text', 'fields', 'accessory', 'expand'], look: section },
  header: { keys: ['text'], look: (check, block, at) => text(check, block.text, `${at}/text`, 150, 'plain_text') },
  context: { keys: ['elements'], look: context },
  divider: { keys: [], look: () => {} },
  actions: { keys: ['elements'], look: actions },
  image: { keys: ['image_url', 'slack_file', 'alt_text', 'title'], look: imageBlock },
  input: { keys: ['label', 'element', 'hint', 'optional', 'dispatch_action'], look: input }
}

export function blocks(check: Check, value: unknown, at: string, max: number): void {
  list(check, value, at, max, (block, where) => {
    const kind = looks[String(block.type)]
    if (kind === undefined) return void problem(check, `${where}/type`, `unsupported type: ${String(block.type)}`)
    onlyKeys(check, block, ['type', 'block_id', ...kind.keys], where)
    blockId(check, block.block_id, `${where}/block_id`)
    kind.look(check, block, where)
  })
}

function blockId(check: Check, value: unknown, at: string): void {
  optionalString(check, value, at, 255)
  if (typeof value !== 'string') return
  if (check.blockIds.has(value)) problem(check, at, `block_id ${value} already exists`)
  check.blockIds.add(value)
}

function section(check: Check, block: Loose, at: string): void {
  if (block.text === undefined && block.fields === undefined) problem(check, at, 'must define either `fields` or `text`')
  optionalText(check, block.text, `${at}/text`, 3000, 'any')
  if (block.fields !== undefined) list(check, block.fields, `${at}/fields`, 10, (field, where) => text(check, field, where, 2000, 'any'))
  if (block.accessory !== undefined) element(check, block.accessory, `${at}/accessory`, [...pickers, 'image'])
}

function context(check: Check, block: Loose, at: string): void {
  list(check, block.elements, `${at}/elements`, 10, (item, where) => {
    if (item.type === 'image') return void element(check, item, where, ['image'])
    text(check, item, where, 3000, 'any')
  })
}

function actions(check: Check, block: Loose, at: string): void {
  const ids = new Set<unknown>()
  list(check, block.elements, `${at}/elements`, 25, (item, where) => {
    element(check, item, where, pickers)
    if (item.action_id !== undefined && ids.has(item.action_id))
      problem(check, `${where}/action_id`, `action_id ${String(item.action_id)} already exists`)
    ids.add(item.action_id)
  })
}

function imageBlock(check: Check, block: Loose, at: string): void {
  image(check, block, at)
  optionalText(check, block.title, `${at}/title`, 2000)
}

function input(check: Check, block: Loose, at: string): void {
  text(check, block.label, `${at}/label`, 2000, 'plain_text')
  optionalText(check, block.hint, `${at}/hint`, 2000)
  element(check, block.element, `${at}/element`, inputs)
}
