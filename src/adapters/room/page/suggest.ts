/** Commands offered while a / is typed; by keys or by hand. Enter sends, unless one was picked with the arrows. */
export const suggestScript = String.raw`
import { make, t } from './talk.js'

const commands = JSON.parse(document.querySelector('meta[name="room-commands"]').content)
const box = document.getElementById('message')
const list = document.getElementById('suggestions')
let active = -1

function matching() {
  return /^\/\S*$/.test(box.value) ? commands.filter((name) => ('/' + name).startsWith(box.value.toLowerCase())) : []
}

export function closeSuggestions() {
  active = -1
  list.hidden = true
  list.replaceChildren()
  box.removeAttribute('aria-activedescendant')
}

export function suggest() {
  const found = matching()
  if (found.length === 0) return closeSuggestions()
  active = -1
  box.removeAttribute('aria-activedescendant')
  list.replaceChildren(...found.map((name, i) => make('li', { role: 'option', id: 'suggestion' + i, 'aria-selected': 'false', onmousedown: (event) => { event.preventDefault(); take('/' + name) } },
    make('strong', {}, '/' + name), ' ', make('span', { class: 'quiet' }, t('hint-' + name)))))
  list.hidden = false
}

function take(name) {
  box.value = name + ' '
  closeSuggestions()
  box.focus()
}

function mark(next) {
  const items = [...list.children]
  active = (next + items.length) % items.length
  for (const [i, item] of items.entries()) item.setAttribute('aria-selected', String(i === active))
  box.setAttribute('aria-activedescendant', items[active].id)
  items[active].scrollIntoView({ block: 'nearest' })
}

/** True when the key was the list's. */
export function suggestKey(event) {
  if (list.hidden) return false
  if (event.key === 'ArrowDown') mark(active + 1)
  else if (event.key === 'ArrowUp') mark(active < 0 ? list.children.length - 1 : active - 1)
  else if (event.key === 'Escape') closeSuggestions()
  else if ((event.key === 'Enter' || event.key === 'Tab') && active >= 0) take(list.children[active].querySelector('strong').textContent)
  else return false
  return true
}
`
