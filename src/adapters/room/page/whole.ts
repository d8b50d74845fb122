/** The page as a whole: which site, who, what is new, and what is sent. */
export const wholeScript = `
import { drawBlocks } from './blocks.js'
import { showForm } from './form.js'
import { clearLog, showMessages, showRemoved, toEnd, whenReplying } from './messages.js'
import { closeSuggestions, suggest, suggestKey } from './suggest.js'
import { attempt, choose, get, here, locale, make, nameOf, paint, post, swap, t, trouble, upload } from './talk.js'
import { closeWhatIf, offerWhatIf } from './what-if.js'

const byId = (id) => document.getElementById(id)
const box = byId('message')
const wide = matchMedia('(min-width: 900px)')
let since = 0
let asking = null
let drawnHome = null
let drawnSites = ''
let thread = null
let photo = null

// News: one question held open at a time; a change of site or person asks anew.
async function follow() {
  for (;;) {
    asking = new AbortController()
    const asked = here.site + ' ' + here.user
    try {
      const news = await get('/room/changes', { since: String(since), site: here.site ?? '', user: here.user, tab: here.tab }, asking.signal)
      if (asked !== here.site + ' ' + here.user) continue
      const first = since === 0
      since = news.seq
      showSites(news)
      showRemoved(news.removed)
      showMessages(news.messages, first)
      if (first) toEnd()
      showForm(news.form, news.depth)
      showHome(news.home)
      byId('trouble').dataset.offline === 'yes' && (trouble(''), delete byId('trouble').dataset.offline)
    } catch (error) {
      if (error.name === 'AbortError') continue
      trouble(error instanceof TypeError ? t('tryingAgain') : error.message)
      byId('trouble').dataset.offline = 'yes'
      await new Promise((resolve) => setTimeout(resolve, 1000))
    }
  }
}

function startOver() {
  since = 0
  drawnHome = null
  drawnSites = ''
  closeWhatIf()
  reply(null, '')
  clearLog()
  asking?.abort()
}

function showSites({ sites, direct }) {
  const all = [...sites, { name: direct, title: t('justYou'), alone: true, invented: false, closed: false }]
  const now = JSON.stringify([all, here.site])
  if (now === drawnSites) return
  drawnSites = now
  byId('sites').replaceChildren(...all.map((site) => make('li', {}, make('a', {
    href: '?site=' + encodeURIComponent(site.name), 'aria-current': site.name === here.site ? 'page' : null,
    onclick: (event) => { event.preventDefault(); pickSite(site.name) }
  }, make('span', {}, site.title), ...tagsOf(site)))))
  const site = all.find((one) => one.name === here.site)
  offerWhatIf(site)
  byId('site-title').textContent = site?.title ?? here.site ?? ''
  byId('site-note').replaceChildren(...noteOf(site))
}

function tagsOf(site) {
  return [site.invented ? t('invented') : null, site.closed ? t('closed') : null].filter((tag) => tag !== null).map((tag) => make('span', { class: 'tag' }, tag))
}

function noteOf(site) {
  const words = []
  if (site?.invented) words.push(t('noteInvented'))
  if (site?.closed) words.push(t('noteClosed'))
  if (here.at) words.push(heldClock(site?.zone ?? null))
  if (site?.alone) words.push(t('noteAlone'))
  if (words.length === 0) words.push(t('noteOpen'))
  return [words.join(' ')]
}

/** The held clock as the clocks of the site show it; where there is no site, in UTC. */
function heldClock(zone) {
  const how = { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone: zone ?? 'UTC' }
  return t(zone === null ? 'noteClockUtc' : 'noteClock', { at: new Intl.DateTimeFormat(locale(), how).format(Date.parse(here.at)) })
}

function pickSite(name) {
  if (name === here.site) return
  choose('site', name)
  startOver()
  box.focus()
}

function showHome(view) {
  const now = view === null ? null : view.id + view.hash
  if (now === null || now === drawnHome) return
  drawnHome = now
  const act = (action) => attempt(() => post('/room/press', { view: view.id, action }))
  const fresh = make('div', { id: 'home-body', hidden: byId('home-body').hidden }, ...drawBlocks(view.blocks.filter((block) => block.type !== 'input'), 3, act))
  swap(byId('home-body'), fresh)
}

function openHome(open) {
  byId('home-toggle').setAttribute('aria-expanded', String(open))
  byId('home-body').hidden = !open
}

function askHome() {
  return post('/room/home', {}).catch(() => {})
}

function settings() {
  for (const name of ['user', 'lang', 'units']) {
    for (const input of document.querySelectorAll('input[name="' + name + '"]')) {
      input.checked = input.value === here[name]
      input.addEventListener('change', () => { choose(name, input.value); if (name === 'lang') paint(); said(); if (name !== 'units') startOver(); void askHome() })
    }
  }
  const said = () => {
    byId('settings-now').textContent = [nameOf(here.user), { en: 'English', es: 'Español', fr: 'Français' }[here.lang], here.units && t(here.units)].filter(Boolean).join(' · ')
  }
  said()
}

function reply(ts, text) {
  thread = ts
  byId('replying').hidden = ts === null
  byId('replying').replaceChildren(t('replyTo', { text }) + ' ', make('button', { type: 'button', class: 'small', onclick: () => { reply(null, ''); box.focus() } }, t('notReply')))
  if (ts !== null) box.focus()
}

function pickPhoto(file) {
  photo = file
  byId('picked').hidden = file === null
  byId('picked').replaceChildren(t('picked', { name: file?.name ?? '' }) + ' ', make('button', { type: 'button', class: 'small', onclick: () => pickPhoto(null) }, t('noPhoto')))
  if (file === null) byId('photo').value = ''
}

function grow() {
  box.style.height = 'auto'
  box.style.height = Math.min(box.scrollHeight + 2, 180) + 'px'
}

async function send() {
  const text = box.value.trim()
  if (text === '' && photo === null) return box.focus()
  closeSuggestions()
  byId('send').disabled = true
  const done = await attempt(async () => {
    const files = photo === null ? [] : [(await upload(photo)).id]
    // A command with a slash takes no files, as in any chat: with a photo the same words go as a message.
    return post('/room/say', { text: files.length > 0 ? text.replace(/^\\/+/, '') : text, thread, files })
  })
  byId('send').disabled = false
  if (done === null) return
  box.value = ''
  grow()
  reply(null, '')
  pickPhoto(null)
  toEnd()
  box.focus()
}

box.addEventListener('input', () => { grow(); suggest() })
box.addEventListener('blur', closeSuggestions)
box.addEventListener('keydown', (event) => {
  if (event.isComposing) return
  if (suggestKey(event)) return event.preventDefault()
  if (event.key === 'Enter' && !event.shiftKey) { event.preventDefault(); void send() }
})
byId('send').addEventListener('click', () => void send())
byId('photo').addEventListener('change', (event) => pickPhoto(event.currentTarget.files[0] ?? null))
byId('home-toggle').addEventListener('click', () => {
  const open = byId('home-toggle').getAttribute('aria-expanded') !== 'true'
  openHome(open)
  if (open) void askHome()
})
// On a phone the home is far above the newest message.
byId('to-home').addEventListener('click', (event) => {
  event.preventDefault()
  openHome(true)
  void askHome()
  byId('home-toggle').focus()
  byId('home-toggle').scrollIntoView({ block: 'start' })
})
whenReplying(reply)

paint()
const { sites } = await get('/room/sites', {}).catch(() => ({ sites: [] }))
if (!sites.includes(here.site)) choose('site', sites[0] ?? '')
settings()
function unfold() {
  openHome(wide.matches)
  byId('settings').open = wide.matches
}
unfold()
wide.addEventListener('change', unfold)
if (here.badTime) trouble(t('badTime'))
void follow()
void askHome()
`
