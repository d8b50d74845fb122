/** “What would it say at …”: an instant of the invented week, and what the same engine would say then. Nothing of it is logged. */
export const whatIfScript = String.raw`
import { drawBlocks } from './blocks.js'
import { get, here, locale, make, t } from './talk.js'

const byId = (id) => document.getElementById(id)
const dialog = byId('whatif')
const range = byId('whatif-at')
const quarterMs = 900_000
const pauseMs = 120
let week = null
let at = 0
let asking = null
let waiting = 0

/** The button stands only where there is a week to suppose in. */
export function offerWhatIf(site) {
  if (dialog) byId('whatif-open').hidden = !site?.invented
}

export function closeWhatIf() {
  if (dialog?.open) dialog.close()
}

function said(ms, options) {
  return new Intl.DateTimeFormat(locale(), { ...options, timeZone: week.zone }).format(ms)
}

function atSite(ms, length) {
  return said(ms, { weekday: length, day: 'numeric', month: length, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })
}

/** The slider and its words; the answer follows. */
function show() {
  byId('whatif-value').textContent = week === null ? '' : atSite(at, 'short')
  range.setAttribute('aria-valuetext', week === null ? '' : atSite(at, 'long'))
  if (week === null) return
  range.max = String((week.to - week.from) / quarterMs - 1)
  range.value = String(Math.floor((at - week.from) / quarterMs))
  byId('whatif-days').replaceChildren(...Array.from({ length: 7 }, (_none, day) => make('span', {}, said(week.from + (day * 24 + 12) * 3_600_000, { weekday: 'short' }))))
  byId('whatif-back').disabled = at - 3_600_000 < week.from
  byId('whatif-on').disabled = at + 3_600_000 >= week.to
  byId('whatif-morning').disabled = week.nextMorning === null
}

/** Who slides on is not asked about what lies between. */
function later(next) {
  at = week === null ? next : Math.min(week.to - quarterMs, Math.max(week.from, next))
  show()
  clearTimeout(waiting)
  waiting = setTimeout(() => void ask(), pauseMs)
}

async function ask() {
  asking?.abort()
  asking = new AbortController()
  const { signal } = asking
  byId('whatif-told').setAttribute('aria-busy', 'true')
  if (week === null) byId('whatif-said').textContent = t('reckoning')
  const { site, user, lang, units } = here
  const params = { site, user, at: new Date(at).toISOString().slice(0, 19) + 'Z', ...(lang ? { lang } : {}), ...(units ? { units } : {}) }
  try {
    tell(await get('/room/what-if', params, signal))
  } catch (error) {
    if (error.name === 'AbortError') return
    byId('whatif-told').replaceChildren(make('p', { class: 'trouble', role: 'alert' }, error instanceof TypeError ? t('noAnswer') : error.message))
  }
  byId('whatif-told').removeAttribute('aria-busy')
}

function tell(answer) {
  week = { from: Date.parse(answer.from), to: Date.parse(answer.to), zone: answer.zone, nextMorning: answer.nextMorning === null ? null : Date.parse(answer.nextMorning) }
  show()
  byId('whatif-said').textContent = t('whatIfSaid', { at: atSite(at, 'long'), text: answer.told[0]?.text.split('\n')[0] ?? '' })
  byId('whatif-told').replaceChildren(...answer.told.map((one) => make('section', { class: 'told', 'aria-labelledby': 'told-' + one.kind },
    make('h3', { id: 'told-' + one.kind }, t('whatIf-' + one.kind)), ...drawBlocks(one.blocks, 4, () => {}))))
}

function open() {
  // Where the clock of the page is held, there; else now: on a quarter of an hour.
  const start = here.at ? Date.parse(here.at) : Date.now()
  week = null
  byId('whatif-told').replaceChildren()
  byId('whatif-said').textContent = ''
  at = Math.floor(start / quarterMs) * quarterMs
  show()
  dialog.showModal()
  range.focus()
  void ask()
}

if (dialog) {
  byId('whatif-open').addEventListener('click', open)
  byId('whatif-close').addEventListener('click', closeWhatIf)
  dialog.addEventListener('close', () => { asking?.abort(); clearTimeout(waiting) })
  range.addEventListener('input', () => week && later(week.from + Number(range.value) * quarterMs))
  range.addEventListener('keydown', (event) => {
    const hours = { PageUp: 1, PageDown: -1 }[event.key]
    if (hours === undefined) return
    event.preventDefault()
    later(at + hours * 3_600_000)
  })
  byId('whatif-back').addEventListener('click', () => later(at - 3_600_000))
  byId('whatif-on').addEventListener('click', () => later(at + 3_600_000))
  byId('whatif-morning').addEventListener('click', () => week?.nextMorning != null && later(week.nextMorning))
}
`
