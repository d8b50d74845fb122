/** Forms: fields with their labels, what is wrong beside the field it is wrong with. */
export const formScript = `
import { drawBlocks } from './blocks.js'
import { group, options } from './elements.js'
import { said } from './markup.js'
import { attempt, make, post, t, upload } from './talk.js'

const dialog = document.getElementById('form')
let open = null
let fields = []

/** Each field: its node, and what stands in it in the service's shape. */
const makers = {
  plain_text_input: (element) => {
    const shared = { placeholder: element.placeholder?.text, maxlength: element.max_length }
    const node = element.multiline ? make('textarea', { rows: '3', ...shared }) : make('input', { type: 'text', ...shared })
    node.value = element.initial_value ?? ''
    return { node, read: () => ({ value: node.value }) }
  },
  number_input: (element) => {
    const node = make('input', { type: 'text', inputmode: element.is_decimal_allowed ? 'decimal' : 'numeric', placeholder: element.placeholder?.text })
    node.value = element.initial_value ?? ''
    return { node, read: () => ({ value: node.value }) }
  },
  static_select: (element) => {
    const list = options(element)
    const chosen = list.findIndex((option) => option.value === element.initial_option?.value)
    const node = make('select', {}, make('option', { value: '' }, element.placeholder?.text ?? t('choose')), ...list.map((option, i) => make('option', { value: String(i), selected: i === chosen }, option.text.text)))
    return { node, read: () => ({ selected_option: node.value === '' ? null : list[node.value] }) }
  },
  datepicker: (element) => {
    const node = make('input', { type: 'date', value: element.initial_date })
    return { node, read: () => ({ selected_date: node.value || null }) }
  },
  timepicker: (element) => {
    const node = make('input', { type: 'time', value: element.initial_time })
    return { node, read: () => ({ selected_time: node.value || null }) }
  },
  checkboxes: (element) => {
    const node = group(element, 'checkbox', () => {})
    return { node, many: true, read: () => ({ selected_options: node.picked() }) }
  },
  radio_buttons: (element) => {
    const node = group(element, 'radio', () => {})
    return { node, many: true, read: () => ({ selected_option: node.picked()[0] ?? null }) }
  },
  file_input: (element) => {
    const types = (element.filetypes ?? []).map((type) => '.' + type)
    const node = make('input', { type: 'file', multiple: (element.max_files ?? 10) > 1, accept: types.length ? types.join(',') : null })
    return { node, read: async () => ({ files: await Promise.all([...node.files].slice(0, element.max_files ?? 10).map(async (file) => (await upload(file)).id)) }) }
  }
}

function field(block, n, tell) {
  const made = makers[block.element.type]?.(block.element)
  if (!made) return make('p', { class: 'quiet' }, block.element.type)
  const wrong = make('p', { class: 'wrong', id: 'wrong' + n })
  const hint = block.hint ? make('p', { class: 'quiet', id: 'hint' + n }, ...said(block.hint)) : null
  const label = [...said(block.label), ...(block.optional && tell ? [make('span', { class: 'quiet' }, ' (' + t('mayBeEmpty') + ')')] : [])]
  made.node.id = 'field' + n
  made.node.setAttribute('aria-describedby', (hint ? hint.id + ' ' : '') + wrong.id)
  if (!block.optional && !made.many) made.node.setAttribute('aria-required', 'true')
  fields.push({ block, ...made, wrong })
  if (made.many) return make('fieldset', { class: 'field', 'aria-describedby': wrong.id }, make('legend', {}, ...label), hint, made.node, wrong)
  return make('div', { class: 'field' }, make('label', { for: made.node.id }, ...label), hint, made.node, wrong)
}

function showErrors(errors) {
  let first = null
  for (const { block, node, wrong } of fields) {
    const text = errors[block.block_id] ?? ''
    wrong.textContent = text === '' ? '' : '✕ ' + text
    const target = node.matches('.group') ? node.querySelector('input') : node
    if (text === '') target.removeAttribute('aria-invalid')
    else { target.setAttribute('aria-invalid', 'true'); first ??= target }
  }
  first?.focus()
}

async function send(view, button) {
  button.disabled = true
  const answer = await attempt(async () => {
    const values = {}
    for (const { block, read } of fields) values[block.block_id] = { [block.element.action_id]: await read() }
    return post('/room/submit', { view: view.id, values })
  })
  button.disabled = false
  dialog.querySelector('.form-trouble').textContent = answer === null ? document.getElementById('trouble').textContent : (answer.problem ?? '')
  showErrors(answer?.errors ?? {})
}

function leave(view) {
  return attempt(() => post('/room/closed', { view: view.id, all: view.clear_on_close === true }))
}

/** Draws the form on top, if it is another one than before; what was typed in the same one stays. */
export function showForm(view, depth) {
  const now = view === null ? null : view.id + view.hash
  if (now === open) return
  open = now
  if (view === null) return dialog.close()
  fields = []
  const act = (action) => attempt(() => post('/room/press', { view: view.id, action }))
  const inputs = view.blocks.filter((block) => block.type === 'input')
  const free = inputs.length > 1 && inputs.every((block) => block.optional)
  const body = view.blocks.map((block, n) => (block.type === 'input' ? field(block, n, !free) : drawBlocks([block], 3, act)[0]))
  const submit = view.submit ? make('button', { type: 'submit', class: 'main' }, view.submit.text) : null
  const close = make('button', { type: 'button', onclick: () => leave(view) }, view.close?.text ?? t(depth > 1 ? 'back' : 'close'))
  const form = make('form', { novalidate: true, onsubmit: (event) => { event.preventDefault(); if (submit) void send(view, submit) } },
    make('h2', { id: 'form-title' }, ...said(view.title)), free ? make('p', { class: 'quiet' }, t('allMayBeEmpty')) : null, ...body, make('p', { class: 'trouble form-trouble', role: 'alert' }), make('div', { class: 'form-end' }, close, submit))
  dialog.replaceChildren(form)
  if (!dialog.open) dialog.showModal()
  const first = fields[0]?.node
  ;(first?.matches('.group') ? first.querySelector('input') : first)?.focus()
}

dialog.addEventListener('cancel', (event) => {
  event.preventDefault()
  dialog.querySelector('.form-end button')?.click()
})
`
