import type { Loose } from '../types.js'
import { asObject, type Check, list, onlyKeys, optionalString, optionalText, problem, string, text } from './basics.js'

type Look = (check: Check, element: Loose, at: string) => void

const holder = ['placeholder', 'focus_on_load']

/** Elements that the bot may send, each with its own keys and limits (documentation of the service, section C3 of its block reference). */
const looks: Readonly<Record<string, { readonly keys: readonly string[]; readonly look: Look }>> = {
  button: { keys: ['text', 'value', 'url', 'style', 'accessibility_label', 'confirm'], look: button },
  static_select: { keys: ['options', 'option_groups', 'initial_option', 'confirm', ...holder], look: select },
  checkboxes: {
    keys: ['options', 'initial_options', 'confirm', 'focus_on_load'],
    look: (check, element, at) => options(check, element.options, `${at}/options`, 10, 'any')
  },
  radio_buttons: {
    keys: ['options', 'initial_option', 'confirm', 'focus_on_load'],
    look: (check, element, at) => options(check, element.options, `${at}/options`, 10, 'any')
  },
  overflow: { keys: ['options', 'confirm'], look: (check, element, at) => options(check, element.options, `${at}/options`, 5, 'plain_text') },
  datepicker: {
    keys: ['initial_date', 'confirm', ...holder],
    look: (check, element, at) => shaped(check, element.initial_date, `${at}/initial_date`, /^\d{4}-\d\d-\d\d$/)
  },
  timepicker: {
    keys: ['initial_time', 'timezone', 'confirm', ...holder],
    look: (check, element, at) => shaped(check, element.initial_time, `${at}/initial_time`, /^([01]\d|2[0-3]):[0-5]\d$/)
  },
  plain_text_input: { keys: ['initial_value', 'multiline', 'min_length', 'max_length', 'dispatch_action_config', ...holder], look: textInput },
  number_input: { keys: ['is_decimal_allowed', 'initial_value', 'min_value', 'max_value', 'dispatch_action_config', ...holder], look: numberInput },
  file_input: { keys: ['filetypes', 'max_files'], look: fileInput },
  image: { keys: ['image_url', 'slack_file', 'alt_text'], look: image }
}

export function element(check: Check, value: unknown, at: string, allowed: readonly string[]): void {
  const object = asObject(check, value, at)
  if (object === null) return
  const kind = looks[String(object.type)]
  if (kind === undefined || !allowed.includes(String(object.type))) return void problem(check, at, `unsupported type: ${String(object.type)}`)
  onlyKeys(check, object, ['type', 'action_id', ...kind.keys], at)
  optionalString(check, object.action_id, `${at}/action_id`, 255)
  optionalText(check, object.placeholder, `${at}/placeholder`, 150)
  if (object.confirm !== undefined) confirm(check, object.confirm, `${at}/confirm`)
  kind.look(check, object, at)
}

function button(check: Check, element: Loose, at: string): void {
  text(check, element.text, `${at}/text`, 75, 'plain_text')
  optionalString(check, element.value, `${at}/value`, 2000)
  optionalString(check, element.url, `${at}/url`, 3000)
  optionalString(check, element.accessibility_label, `${at}/accessibility_label`, 75)
  if (element.style !== undefined && element.style !== 'primary' && element.style !== 'danger')
    problem(check, `${at}/style`, 'must be a valid enum value')
}

function confirm(check: Check, value: unknown, at: string): void {
  const object = asObject(check, value, at)
  if (object === null) return
  onlyKeys(check, object, ['title', 'text', 'confirm', 'deny', 'style'], at)
  text(check, object.title, `${at}/title`, 100, 'plain_text')
  text(check, object.text, `${at}/text`, 300, 'any')
  text(check, object.confirm, `${at}/confirm`, 30, 'plain_text')
  text(check, object.deny, `${at}/deny`, 30, 'plain_text')
}

/** Values stay under 75 characters: the service's own pages disagree between 75 and 150. */
function options(check: Check, value: unknown, at: string, max: number, kind: 'plain_text' | 'any'): void {
  list(check, value, at, max, (option, where) => {
    onlyKeys(check, option, ['text', 'value', 'description'], where)
    text(check, option.text, `${where}/text`, 75, kind)
    string(check, option.value, `${where}/value`, 75)
    optionalText(check, option.description, `${where}/description`, 75, kind)
  })
}

function select(check: Check, element: Loose, at: string): void {
  if (element.option_groups === undefined) return void options(check, element.options, `${at}/options`, 100, 'plain_text')
  list(check, element.option_groups, `${at}/option_groups`, 100, (group, where) => {
    onlyKeys(check, group, ['label', 'options'], where)
    text(check, group.label, `${where}/label`, 75, 'plain_text')
    options(check, group.options, `${where}/options`, 100, 'plain_text')
  })
}

function shaped(check: Check, value: unknown, at: string, shape: RegExp): void {
  if (value !== undefined && !(typeof value === 'string' && shape.test(value))) problem(check, at, 'must match the expected format')
}

function textInput(check: Check, element: Loose, at: string): void {
  for (const key of ['min_length', 'max_length']) {
    const length = element[key]
    if (length !== undefined && !(Number.isInteger(length) && Number(length) >= 0 && Number(length) <= 3000))
      problem(check, `${at}/${key}`, 'must be from 0 to 3000')
  }
  optionalString(check, element.initial_value, `${at}/initial_value`, 3000)
}

function numberInput(check: Check, element: Loose, at: string): void {
  if (check.surface !== 'modal') problem(check, at, 'unsupported type: number_input')
  if (typeof element.is_decimal_allowed !== 'boolean') problem(check, `${at}/is_decimal_allowed`, 'missing required field')
  for (const key of ['initial_value', 'min_value', 'max_value']) shaped(check, element[key], `${at}/${key}`, /^-?\d+(\.\d+)?$/)
}

function fileInput(check: Check, element: Loose, at: string): void {
  if (check.surface !== 'modal') problem(check, at, 'unsupported type: file_input')
  const max = element.max_files
  if (max !== undefined && !(Number.isInteger(max) && Number(max) >= 1 && Number(max) <= 10))
    problem(check, `${at}/max_files`, 'must be from 1 to 10')
}

/** The picture of a block or an element. A file of the service must have been processed already. */
export function image(check: Check, element: Loose, at: string): void {
  string(check, element.alt_text, `${at}/alt_text`, 2000)
  if ((element.image_url === undefined) === (element.slack_file === undefined))
    return void problem(check, at, 'must provide exactly one of image_url and slack_file')
  if (element.image_url !== undefined) {
    string(check, element.image_url, `${at}/image_url`, 3000)
    return void shaped(check, element.image_url, `${at}/image_url`, /^https?:\/\//)
  }
  const file = asObject(check, element.slack_file, `${at}/slack_file`)
  if (file === null) return
  if ((file.id === undefined) === (file.url === undefined)) return void problem(check, `${at}/slack_file`, 'must provide exactly one of id and url')
  const id = file.id ?? /\/room\/files\/(F[0-9A-F]{20})/.exec(String(file.url))?.[1]
  if (!check.fileReady(id)) problem(check, `${at}/slack_file`, 'invalid slack file')
}
