/** The log of a channel: messages in their order under their day, replies under what they answer. */
export const messagesScript = String.raw`
import { drawBlocks } from './blocks.js'
import { figure } from './elements.js'
import { marked, plain } from './markup.js'
import { announce } from './news.js'
import { attempt, here, knows, locale, make, nameOf, post, swap, t } from './talk.js'

const log = document.getElementById('log')
const shortcuts = JSON.parse(document.querySelector('meta[name="room-shortcuts"]').content)
const siteHead = document.querySelector('.site-head')
const composer = document.querySelector('.composer')
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
  if (list.length > 0) markDays()
}

/** Keeps to the end, unless a person is reading further up. What is new is told in a few words, but not what was there at first. */
export function showMessages(list, first) {
  if (!first) announce(list.filter((message) => message.user !== here.user), (message) => nodes.has(message.ts))
  for (const message of list) place(message)
  markDays()
  if (list.length > 0 && follow) toEnd()
}

// Who scrolls by hand away from the end is reading; new messages then leave the page where it is.
let follow = true
let left = -1
document.addEventListener('scroll', ({ target }) => {
  const room = scroller()
  if ((target === document ? document.scrollingElement : target) !== room) return
  // Where we ourselves left it is no one's doing but ours.
  if (Math.abs(room.scrollTop - left) > 2) follow = room.scrollHeight - room.scrollTop - room.clientHeight < 80
}, { capture: true, passive: true })

window.addEventListener('resize', () => follow && toEnd())

/** On a phone the page itself scrolls, so that the log has all of the screen. */
function scroller() {
  return wide.matches ? log : document.scrollingElement
}

/** Where the newest words begin; a picture that follows them alone is theirs. */
function newest() {
  const all = [...log.querySelectorAll('.message:not(.wordless)')]
  return all.reduce((last, node) => (last === null || Number(node.dataset.ts) > Number(last.dataset.ts) ? node : last), null)
}

/** Shows the end of the log; of newest words that find no room above it, their first line: the outcome stands there. */
export function toEnd() {
  follow = true
  const down = () => {
    if (!follow) return
    const room = scroller()
    const head = newest()
    // On a phone the heading and the box to write in lie over the log.
    const over = wide.matches ? log.getBoundingClientRect().top : siteHead.offsetHeight
    const free = room.clientHeight - (wide.matches ? 0 : siteHead.offsetHeight + composer.offsetHeight)
    const top = head?.getBoundingClientRect().top ?? 0
    const long = head !== null && log.lastElementChild.getBoundingClientRect().bottom - top > free
    room.scrollTop = long ? room.scrollTop + top - over : room.scrollHeight
    left = room.scrollTop
  }
  down()
  // Pictures grow when they come.
  for (const img of log.querySelectorAll('img')) if (!img.complete) img.addEventListener('load', down, { once: true })
}

function place(message) {
  const before = nodes.get(message.ts)
  const node = drawn(message)
  if (before) return redraw(before, node)
  nodes.set(message.ts, node)
  const parent = message.thread === null ? null : nodes.get(message.thread)
  if (!parent) return inOrder(log, node)
  let list = parent.querySelector(':scope > .replies')
  if (!list) {
    list = make('div', { class: 'replies', role: 'group', 'aria-label': t('replies') })
    parent.insertBefore(list, parent.querySelector(':scope > footer'))
  }
  inOrder(list, node)
}

/** Part by part: replies stay, and so does who reads or stands in them. */
function redraw(before, node) {
  for (const name of ['class', 'aria-label']) before.setAttribute(name, node.getAttribute(name))
  for (const part of ['header', '.body', 'footer']) {
    const [old, made] = [before.querySelector(':scope > ' + part), node.querySelector(':scope > ' + part)]
    if (old && made) swap(old, made)
    else if (made) before.append(made)
    else old?.remove()
  }
}

function inOrder(list, node) {
  const next = [...list.children].find((other) => Number(other.dataset.ts) > Number(node.dataset.ts))
  list.insertBefore(node, next ?? null)
}

/** A line before the first message of each day; a word where there is none at all. */
function markDays() {
  for (const mark of log.querySelectorAll(':scope > .day, :scope > .none')) mark.remove()
  let day = ''
  for (const node of [...log.children]) {
    const at = new Date(Number(node.dataset.ts) * 1000)
    const now = at.toDateString()
    if (now !== day) log.insertBefore(make('p', { class: 'day', 'data-ts': node.dataset.ts }, at.toLocaleDateString(locale(), { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' })), node)
    day = now
  }
  if (day === '') log.append(make('p', { class: 'none quiet' }, t('logEmpty')))
}

function drawn(message) {
  const at = new Date(Number(message.ts) * 1000)
  const time = at.toLocaleTimeString(locale(), { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })
  const name = nameOf(message.user)
  const tags = [message.onlyFor === null ? null : t('onlyYou'), message.edited ? t('edited') : null].filter((tag) => tag !== null)
  const node = make('article', { class: 'message from-' + message.user + (message.onlyFor === null ? '' : ' alone') + (isWordless(message) ? ' wordless' : ''), 'data-ts': message.ts, 'aria-label': name + ', ' + time },
    make('header', {}, make('span', { class: 'who' }, name), make('time', { datetime: at.toISOString(), title: at.toLocaleString(locale()) }, time), ...tags.map((tag) => make('span', { class: 'tag' }, tag))),
    make('div', { class: 'body' }, ...bodyOf(message)))
  const foot = footOf(message)
  if (foot !== null) node.append(foot)
  return node
}

function bodyOf(message) {
  const act = (action) => attempt(() => post('/room/press', { ts: message.ts, action }))
  const files = message.files.map(fileOf)
  if (message.blocks.length > 0) return [...drawBlocks(message.blocks, 3, act), ...files]
  const text = message.user === 'seamhand' ? marked(message.text) : [message.text]
  return [message.text === '' || isWordless(message) ? null : make('p', { class: message.typed ? 'typed' : 'free' }, ...text), ...files].filter((node) => node !== null)
}

/** A file that came alone has its name for words: it stands under it already. */
function isWordless({ text, blocks, files }) {
  return blocks.length === 0 && files.length > 0 && (text === '' || text === files.map((file) => file.title).join(', '))
}

function fileOf(file) {
  const src = '/room/files/' + file.id
  if (file.mimetype.startsWith('image/')) return figure(make('img', { src, alt: file.alt }), file.title)
  const kind = (/\.([A-Za-z0-9]{1,6})$/.exec(file.title)?.[1] ?? file.mimetype.split('/')[1] ?? '').toUpperCase()
  const size = new Intl.NumberFormat(locale(), { style: 'unit', unit: 'kilobyte', maximumFractionDigits: file.size < 9950 ? 1 : 0 }).format(file.size / 1000)
  return make('p', {}, make('a', { class: 'file', href: src + '?download=1', download: file.title }, t('file', { name: file.title, kind, size })))
}

function footOf(message) {
  if (message.user === 'room' || message.typed || message.onlyFor !== null) return null
  const reply = message.thread === null ? make('button', { type: 'button', class: 'small', onclick: () => onReply(message.ts, plain(message.text).split('\n')[0].slice(0, 60)) }, t('reply')) : null
  // In the service a shortcut hides in the menu of every message; here it stands where there is a photo to take along.
  const more = (message.files.length === 0 || message.user === 'seamhand' ? [] : shortcuts).map((one) => make('button', { type: 'button', class: 'small', onclick: () => attempt(() => post('/room/press', { ts: message.ts, shortcut: one.callbackId })) }, shortcutName(one)))
  return reply === null && more.length === 0 ? null : make('footer', {}, ...(reply === null ? more : [reply, ...more]))
}

function shortcutName({ callbackId, name }) {
  return knows('shortcut-' + callbackId) ? t('shortcut-' + callbackId) : name
}
`
