/** The log of a channel: messages in their order, replies under what they answer. */
export const messagesScript = `
import { drawBlocks } from './blocks.js'
import { marked, plain } from './markup.js'
import { attempt, here, make, names, post } from './talk.js'

const log = document.getElementById('log')
const shortcuts = JSON.parse(document.querySelector('meta[name="room-shortcuts"]').content)
const wide = matchMedia('(min-width: 900px)')
const nodes = new Map()
let onReply = () => {}

export function whenReplying(run) {
  onReply = run
}

export function clearLog() {
  nodes.clear()
  log.replaceChildren()
}

export function showRemoved(list) {
  for (const ts of list) {
    nodes.get(ts)?.remove()
    nodes.delete(ts)
  }
}

/** Keeps to the end, unless a person is reading further up. */
export function showMessages(list) {
  for (const message of list) place(message, drawn(message))
  if (list.length > 0 && follow) toEnd()
}

// Who scrolls by hand away from the end is reading; new messages then leave the page where it is.
let follow = true
let left = -1
document.addEventListener('scroll', () => {
  const room = scroller()
  // Where we ourselves left it is no one's doing but ours.
  if (Math.abs(room.scrollTop - left) > 2) follow = room.scrollHeight - room.scrollTop - room.clientHeight < 80
}, { capture: true, passive: true })

/** On a phone the page itself scrolls, so that the log has all of the screen. */
function scroller() {
  return wide.matches ? log : document.scrollingElement
}

export function toEnd() {
  // Of an answer longer than the screen the first line counts, not the last.
  follow = true
  const down = () => {
    if (!follow) return
    const room = scroller()
    const last = log.lastElementChild
    if (last && last.offsetHeight > room.clientHeight * 0.7) last.scrollIntoView({ block: 'start' })
    else room.scrollTop = room.scrollHeight
    left = room.scrollTop
  }
  down()
  // Pictures grow when they come.
  for (const img of log.querySelectorAll('img')) if (!img.complete) img.addEventListener('load', down, { once: true })
}

function place(message, node) {
  const before = nodes.get(message.ts)
  const replies = before?.querySelector(':scope > .replies')
  if (replies) node.append(replies)
  nodes.set(message.ts, node)
  if (before) return before.replaceWith(node)
  const parent = message.thread === null ? null : nodes.get(message.thread)
  if (!parent) return inOrder(log, node)
  let list = parent.querySelector(':scope > .replies')
  if (!list) {
    list = make('div', { class: 'replies', role: 'group', 'aria-label': 'Replies' })
    parent.append(list)
  }
  inOrder(list, node)
}

function inOrder(list, node) {
  const next = [...list.children].find((other) => Number(other.dataset.ts) > Number(node.dataset.ts))
  list.insertBefore(node, next ?? null)
}

function drawn(message) {
  const at = new Date(Number(message.ts) * 1000)
  const time = at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })
  const name = names[message.user] ?? message.user
  const tags = [message.onlyFor === null ? null : 'only for you', message.edited ? 'edited' : null].filter((tag) => tag !== null)
  const node = make('article', { class: 'message from-' + message.user + (message.onlyFor === null ? '' : ' alone'), 'data-ts': message.ts, 'aria-label': name + ', ' + time },
    make('header', {}, make('span', { class: 'who' }, name), make('time', { datetime: at.toISOString(), title: at.toLocaleString() }, time), ...tags.map((tag) => make('span', { class: 'tag' }, tag))),
    make('div', { class: 'body', lang: message.user === 'seamhand' && here.lang ? here.lang : null }, ...bodyOf(message)))
  const foot = footOf(message)
  if (foot !== null) node.append(foot)
  return node
}

function bodyOf(message) {
  const act = (action) => attempt(() => post('/room/press', { ts: message.ts, action }))
  const files = message.files.map((file) => file.mimetype.startsWith('image/')
    ? make('figure', {}, make('img', { src: '/room/files/' + file.id, alt: file.alt }), make('figcaption', {}, file.title))
    : make('p', {}, make('a', { href: '/room/files/' + file.id + '?download=1', download: file.title }, file.title)))
  if (message.blocks.length > 0) return [...drawBlocks(message.blocks, 3, act), ...files]
  const text = message.user === 'seamhand' ? marked(message.text) : [message.text]
  return [message.text === '' ? null : make('p', { class: message.typed ? 'typed' : 'free' }, ...text), ...files].filter((node) => node !== null)
}

function footOf(message) {
  if (message.user === 'room' || message.typed || message.onlyFor !== null) return null
  const reply = message.thread === null ? make('button', { type: 'button', class: 'small', onclick: () => onReply(message.ts, plain(message.text).slice(0, 60)) }, 'Reply') : null
  // In the service a shortcut hides in the menu of every message; here it stands where there is a photo to take along.
  const more = (message.files.length === 0 ? [] : shortcuts).map((one) => make('button', { type: 'button', class: 'small', onclick: () => attempt(() => post('/room/press', { ts: message.ts, shortcut: one.callbackId })) }, one.name))
  return reply === null && more.length === 0 ? null : make('footer', {}, ...(reply === null ? more : [reply, ...more]))
}
`
