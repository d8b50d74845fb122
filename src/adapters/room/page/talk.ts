/** Talking to the server, and what the page stands for: its site, person, language, units and clock. */
export const talkScript = String.raw`
const query = new URLSearchParams(location.search)
const key = document.querySelector('meta[name="room-key"]').content
const kept = (name) => { try { return localStorage.getItem('room-' + name) ?? '' } catch { return '' } }
const keep = (name, value) => { try { localStorage.setItem('room-' + name, value) } catch { /* a private window keeps nothing */ } }
const oneOf = (value, list) => (list.includes(value) ? value : null)

const asked = (query.get('at') ?? '').replace(' ', '+')
const isTime = /^\d{4}-\d\d-\d\dT[\d:.]{4,12}(Z|[+-]\d\d:?\d\d)$/.test(asked)

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

export const names = { crew: 'Crew', supervisor: 'Supervisor', inspector: 'Inspector', seamhand: 'Seamhand', room: 'Room' }

async function answerOf(response) {
  // The server was started again and has another key: the page is fetched anew.
  if (response.status === 403) location.reload()
  const body = await response.json().catch(() => ({}))
  if (!response.ok) throw new Error(words[body.error] ?? 'The room said: ' + (body.error ?? response.status))
  return body
}

const words = {
  empty: 'There is nothing to send.',
  'too-large': 'That is too long for one message or file.',
  'no-site': 'There is no such site any more.',
  'no-message': 'That message is gone.',
  'no-view': 'That form is closed already.'
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
    trouble(error instanceof TypeError ? 'The room does not answer. Is it still running?' : error.message)
    return null
  }
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
