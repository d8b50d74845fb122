/** Talking to the server, and what the page stands for: its site, person, language, units and clock. */
export const talkScript = String.raw`
import { all } from './words.js'

const query = new URLSearchParams(location.search)
const key = document.querySelector('meta[name="room-key"]').content
const kept = (name) => { try { return localStorage.getItem('room-' + name) ?? '' } catch { return '' } }
const keep = (name, value) => { try { localStorage.setItem('room-' + name, value) } catch { /* a private window keeps nothing */ } }
const oneOf = (value, list) => (list.includes(value) ? value : null)

const asked = (query.get('at') ?? '').replace(' ', '+')
const isTime = /^\d{4}-\d\d-\d\dT[\d:.]{4,12}(Z|[+-]\d\d:?\d\d)$/.test(asked) && !Number.isNaN(Date.parse(asked))

export const here = {
  site: query.get('site'),
  user: oneOf(query.get('user'), ['crew', 'supervisor', 'inspector']) ?? oneOf(kept('user'), ['crew', 'supervisor', 'inspector']) ?? 'crew',
  lang: oneOf(query.get('lang'), ['en', 'es', 'fr']) ?? kept('lang'),
  units: oneOf(query.get('units'), ['metric', 'us']) ?? kept('units'),
  at: isTime ? asked : '',
  badTime: asked !== '' && !isTime,
  tab: Array.from(crypto.getRandomValues(new Uint8Array(8)), (byte) => byte.toString(16).padStart(2, '0')).join('')
}

/** Puts the choice in the address too, so that it can be passed on. */
export function choose(name, value) {
  here[name] = value
  if (name !== 'site') keep(name, value)
  const now = new URL(location.href)
  if (value) now.searchParams.set(name, value)
  else now.searchParams.delete(name)
  history.replaceState(null, '', now)
}

const standing = document.querySelector('meta[name="room-lang"]').content

/** Language of the page itself: the chosen one, else that of the server. */
export function pageLang() {
  return here.lang || standing
}

/** As Intl wants it; the day before the month, hours to 24. */
export function locale() {
  return { en: 'en-GB', es: 'es', fr: 'fr' }[pageLang()]
}

/** A sentence of the page with its blanks filled. */
export function t(name, values = {}) {
  return all[pageLang()][name].replace(/\{(\w+)\}/g, (blank, key) => String(values[key] ?? blank))
}

export function knows(name) {
  return Object.hasOwn(all.en, name)
}

/** Writes the fixed words of the page in its language. */
export function paint() {
  document.documentElement.lang = pageLang()
  document.title = t('title')
  for (const node of document.querySelectorAll('[data-t]')) node.textContent = t(node.dataset.t)
  for (const node of document.querySelectorAll('[data-t-label]')) node.setAttribute('aria-label', t(node.dataset.tLabel))
  for (const node of document.querySelectorAll('[data-t-hint]')) node.setAttribute('placeholder', t(node.dataset.tHint))
}

/** What an author is called; a word that nobody knows stays as it is. */
export function nameOf(user) {
  return knows(user) ? t(user) : user
}

async function answerOf(response) {
  // The server was started again and has another key: the page is fetched anew.
  if (response.status === 403) location.reload()
  const body = await response.json().catch(() => ({}))
  if (!response.ok) throw new Error(knows('error-' + body.error) ? t('error-' + body.error) : t('roomSaid', { code: body.error ?? response.status }))
  return body
}

export async function get(path, params, signal) {
  return answerOf(await fetch(path + '?' + new URLSearchParams(params), { headers: { 'x-room-key': key }, signal }))
}

export async function post(path, body) {
  const { site, user, lang, units, at, tab } = here
  const all = { site, user, lang, units, at, tab, ...body }
  return answerOf(await fetch(path, { method: 'POST', headers: { 'x-room-key': key, 'content-type': 'application/json' }, body: JSON.stringify(all) }))
}

export async function upload(file) {
  const params = new URLSearchParams({ user: here.user, name: file.name })
  return answerOf(await fetch('/room/upload?' + params, { method: 'POST', headers: { 'x-room-key': key, 'content-type': 'application/octet-stream' }, body: file }))
}

export function trouble(text) {
  document.getElementById('trouble').textContent = text
}

/** Runs what a person asked for; what goes wrong is said, and the words stay. */
export async function attempt(run) {
  trouble('')
  try {
    const answer = await run()
    if (answer?.problem) trouble(answer.problem)
    return answer ?? {}
  } catch (error) {
    trouble(error instanceof TypeError ? t('noAnswer') : error.message)
    return null
  }
}

const focusable = 'button, select, input, textarea, a[href]'

/** Puts a node in the place of another; who stood on a button of the one stands on that of the other. */
export function swap(before, after) {
  const at = before.contains(document.activeElement) ? [...before.querySelectorAll(focusable)].indexOf(document.activeElement) : -1
  before.replaceWith(after)
  if (at >= 0) after.querySelectorAll(focusable)[at]?.focus({ preventScroll: true })
}

export function make(tag, props = {}, ...children) {
  const node = document.createElement(tag)
  for (const [name, value] of Object.entries(props)) {
    if (value === null || value === undefined || value === false) continue
    if (name.startsWith('on')) node.addEventListener(name.slice(2), value)
    else node.setAttribute(name, value === true ? '' : value)
  }
  node.append(...children.filter((child) => child !== null))
  return node
}
`
