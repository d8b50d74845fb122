/** Buttons, lists and pickers that act at once, and pictures. */
export const elementsScript = String.raw`
import { said } from './markup.js'
import { make, t } from './talk.js'
import { enlarge } from './zoom.js'

export function picture(element) {
  const id = element.slack_file?.id ?? /\/room\/files\/(F[0-9A-F]+)/.exec(element.slack_file?.url ?? element.image_url ?? '')?.[1]
  const src = id ? '/room/files/' + encodeURIComponent(id) : element.image_url
  return make('img', { src, alt: element.alt_text, loading: 'lazy' })
}

/** A picture with its caption, and a button that shows it as large as one likes. */
export function figure(img, caption) {
  const name = caption || img.alt
  img.addEventListener('click', () => enlarge(img, name))
  const button = make('button', { type: 'button', class: 'small', 'aria-label': t('enlarge') + ': ' + name, onclick: () => enlarge(img, name) }, t('enlarge'))
  return make('figure', {}, img, make('figcaption', {}, caption === '' ? null : make('span', {}, caption), button))
}

const makers = {
  button: (element, done) => make('button', {
    type: 'button', class: element.style === 'primary' ? 'main' : element.style === 'danger' ? 'danger' : '', 'aria-label': element.accessibility_label,
    onclick: (event) => done({ value: element.value, text: element.text }, event.currentTarget)
  }, ...(element.style === 'danger' ? [make('span', { 'aria-hidden': 'true' }, '⚠ ')] : []), ...said(element.text)),
  static_select: (element, done) => {
    const list = options(element)
    const chosen = list.findIndex((option) => option.value === element.initial_option?.value)
    const node = make('select', { 'aria-label': element.placeholder?.text ?? t('choose'), onchange: () => node.value !== '' && done({ selected_option: list[node.value] }, node) },
      make('option', { value: '' }, element.placeholder?.text ?? t('choose')), ...list.map((option, i) => make('option', { value: String(i), selected: i === chosen }, option.text.text)))
    return node
  },
  overflow: (element, done) => {
    const node = make('select', { 'aria-label': t('more'), onchange: () => { const i = node.value; node.value = ''; if (i !== '') done({ selected_option: element.options[i] }, node) } },
      make('option', { value: '' }, t('more')), ...element.options.map((option, i) => make('option', { value: String(i) }, option.text.text)))
    return node
  },
  datepicker: (element, done) => make('input', { type: 'date', 'aria-label': element.placeholder?.text ?? t('date'), value: element.initial_date, onchange: (event) => done({ selected_date: event.currentTarget.value || null }, event.currentTarget) }),
  timepicker: (element, done) => make('input', { type: 'time', 'aria-label': element.placeholder?.text ?? t('time'), value: element.initial_time, onchange: (event) => done({ selected_time: event.currentTarget.value || null }, event.currentTarget) }),
  checkboxes: (element, done) => group(element, 'checkbox', (picked, node) => done({ selected_options: picked }, node)),
  radio_buttons: (element, done) => group(element, 'radio', (picked, node) => done({ selected_option: picked[0] ?? null }, node))
}

export function options(element) {
  return element.options ?? element.option_groups.flatMap((set) => set.options)
}

let groups = 0

/** Boxes or circles, each with its words; done(picked, node) after each change. */
export function group(element, type, done) {
  groups += 1
  const first = element.initial_options ?? (element.initial_option ? [element.initial_option] : [])
  const boxes = element.options.map((option) => make('input', { type, name: 'group' + groups, checked: first.some((one) => one.value === option.value) }))
  const picked = () => element.options.filter((_option, i) => boxes[i].checked)
  const node = make('div', { class: 'group' }, ...element.options.map((option, i) => make('label', { class: 'tick' }, boxes[i],
    make('span', {}, ...said(option.text), option.description ? make('small', {}, ...said(option.description)) : null))))
  node.addEventListener('change', () => done(picked(), node))
  node.picked = picked
  return node
}

/** An element of a block that tells the app at once what was done with it. */
export function control(element, block, act) {
  const maker = makers[element.type]
  if (!maker) return make('span', { class: 'quiet' }, element.type)
  const done = async (value, node) => {
    if (element.confirm && !(await sure(element.confirm))) return
    if (element.url && /^https?:/.test(element.url)) window.open(element.url, '_blank', 'noopener')
    node.setAttribute('aria-busy', 'true')
    await act({ type: element.type, action_id: element.action_id, block_id: block.block_id, ...value })
    node.removeAttribute('aria-busy')
  }
  return maker(element, done)
}

/** Asks once more before something that is hard to take back. */
function sure(confirm) {
  const dialog = document.getElementById('sure')
  return new Promise((resolve) => {
    const end = (value) => { dialog.close(); resolve(value) }
    dialog.replaceChildren(
      make('h2', { id: 'sure-title' }, ...said(confirm.title)), make('p', {}, ...said(confirm.text)),
      make('div', { class: 'form-end' },
        make('button', { type: 'button', onclick: () => end(false) }, ...said(confirm.deny)),
        make('button', { type: 'button', class: confirm.style === 'danger' ? 'danger' : 'main', onclick: () => end(true) }, ...said(confirm.confirm))))
    dialog.addEventListener('cancel', () => resolve(false), { once: true })
    dialog.showModal()
  })
}
`
