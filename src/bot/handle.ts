import type { LimitsSheet } from '../core/limits/sheet.js'
import { toIso } from '../core/instant.js'
import { ageOf } from '../core/weather/lookup.js'
import type { Forecast } from '../core/weather/forecast.js'
import type { SiteSettings } from '../core/site.js'
import type { Answer, Lang, Refusal, Units } from './answer.js'
import type { Ask } from './ask.js'
import { freeCommands, siteCommands } from './commands/index.js'
import { undoS } from './commands/undo.js'
import type { Beside, Done, OnSite, Ports, Told } from './context.js'
import type { SiteView } from './ports.js'
import { replyRefused, replyTo, type Reply } from './reply.js'
import { openSession, settingsOf, type Session } from './session/session.js'
import { usageOf } from './text/usage-of.js'
import { speak } from './views/answer.js'
import { refusalMessage, speakRefusal } from './views/refusal.js'
import { readWords } from './words/read.js'
import type { Reading, Said } from './words/said.js'

/** Language, units and zone that one answer is given in. */
interface How {
  readonly lang: Lang
  readonly units: Units
  readonly zone: string
}

interface Place {
  readonly name: string
  readonly settings: SiteSettings
}

const unjudged = { spray: null, lay: null, weld: null, people: null } as const
const fallbackSheet = 'common-practice'

/** Commands that a closed site still answers. */
const whenClosed: ReadonlySet<Said['command']> = new Set(['site show', 'site set', 'probe list', 'weld show'])

/**
 * The one dispatcher: who, words, when → the reply. Bad words and a domain "no" are replies; the store failing is a
 * StoreError; anything else is a bug, logged with a reference id that stands in the reply too.
 */
export async function handle(ask: Ask, ports: Ports): Promise<Reply> {
  const person = await ports.store.person(ask.workspace, ask.user)
  const place = await placeOf(ask, ports)
  const how: How = {
    lang: ask.lang ?? person.lang ?? place?.settings.lang ?? ports.lang,
    units: ask.units ?? person.units ?? place?.settings.units ?? ports.units,
    zone: place?.settings.zone ?? 'UTC'
  }
  const sheet = sheetOf(place, ports)
  const refused = (refusal: Refusal, command: string | null) => refuseWith(refusal, command, ask, place?.name ?? ask.site, how, sheet)
  const read = readWords(ask.text, { units: how.units, zone: how.zone, now: ask.at })
  if (!read.ok) return refused(read.refusal, read.command)
  const command = read.said.command.split(' ')[0] as string
  const beside: Beside = { ask, ports, sheet }
  if (read.said.command in freeCommands) {
    const done = await runFree(read.said, beside)
    return done.ok ? replyFor(done.told, ask, how, sheet, place?.name ?? null, null) : refused(done.refusal, command)
  }
  if (place === null) return refused(await noSite(ask, ports), command)
  return onSite(read, beside, place, how, (refusal) => refused({ ...refusal, understood: read.understood }, command))
}

/** The named site, or the only one; null when there is no such site or no telling which. */
async function placeOf(ask: Ask, ports: Ports): Promise<Place | null> {
  const names = ask.site === null ? await ports.store.sites(ask.workspace) : [ask.site]
  if (names.length !== 1) return null
  const view = await ports.store.view({ workspace: ask.workspace, site: names[0] as string })
  return view === null ? null : { name: view.key.site, settings: await settingsOf(view) }
}

function sheetOf(place: Place | null, ports: Ports): LimitsSheet {
  const sheet = ports.sheets.byId(place?.settings.limits ?? fallbackSheet) ?? ports.sheets.byId(fallbackSheet)
  if (sheet === null) throw new Error('the built-in limits sheet is missing')
  return sheet
}

async function noSite(ask: Ask, ports: Ports): Promise<Refusal> {
  const sites = await ports.store.sites(ask.workspace)
  return { code: 'no-site', word: ask.site, understood: [], detail: { nearest: sites.slice(0, 10) }, ref: null }
}

async function runFree(said: Said, beside: Beside): Promise<Done> {
  const run = freeCommands[said.command as keyof typeof freeCommands] as (said: Said, beside: Beside) => Promise<Done>
  return run(said, beside)
}

async function onSite(
  read: Extract<Reading, { ok: true }>, beside: Beside, place: Place, how: How, refused: (refusal: Refusal) => Reply
): Promise<Reply> {
  const { ask, ports } = beside
  const { said } = read
  if (place.settings.closed && !whenClosed.has(said.command)) {
    return refused({ code: 'wrong-state', word: place.name, understood: [], detail: { label: 'site', state: 'closed' }, ref: null })
  }
  const named = said.command.startsWith('site ') && 'name' in said ? (said.name ?? place.name) : place.name
  const key = { workspace: ask.workspace, site: named }
  const forecast = await ports.weather.at(place.settings, ask.at)
  const work = async (view: SiteView) => {
    const session = await openSession(ask, view)
    const done = await runOnSite(said, { session, sheet: beside.sheet, forecast }, read.at ?? ask.at, beside)
    if (!done.ok) return { session: null, reply: refused(done.refusal) }
    return { session, reply: replyFor(done.told, ask, how, beside.sheet, named, forecast, ask.log ? session : null) }
  }
  const gone = (): Reply => refused({ code: 'no-site', word: named, understood: [], detail: {}, ref: null })
  if (!ask.log) {
    const view = await ports.store.view(key)
    return view === null ? gone() : (await work(view)).reply
  }
  const claim = ask.claim === null ? null : { key: ask.claim }
  const appended = await ports.store.append(key, ask.at, claim, async (view) => {
    const { session, reply } = await work(view)
    const nothing = { drafts: [], moved: [], keepsakes: [], posts: [] }
    return session === null ? { ...nothing, reply: reply as never } : session.batch(reply as never)
  })
  return appended === null ? gone() : (appended.reply as unknown as Reply)
}

async function runOnSite(said: Said, on: OnSite, at: number, beside: Beside): Promise<Done> {
  const run = siteCommands[said.command as keyof typeof siteCommands] as (said: Said, on: OnSite, at: number, beside: Beside) => Promise<Done>
  return run(said, on, at, beside)
}

function replyFor(done: Told, ask: Ask, how: How, sheet: LimitsSheet, site: string | null, forecast: Forecast | null, session: Session | null = null): Reply {
  const logged = session?.ids().filter((id) => id !== done.decision) ?? []
  const answer: Answer = {
    site, at: ask.at, outcome: null, outcomes: null, activities: unjudged, findings: [], numbers: {}, changesAt: null,
    limits: { id: sheet.id, version: sheet.version, sha256: sheet.sha256 },
    weather: weatherOf(forecast, ask.at),
    logged,
    undoUntil: logged.length === 0 || done.command === 'undo' ? null : ask.at + undoS,
    ...done,
    ...(done.site === undefined ? { site } : {}),
    decision: session === null ? null : (done.decision ?? null)
  }
  return replyTo(answer, speak(answer, how), how)
}

function weatherOf(forecast: Forecast | null, now: number): Answer['weather'] {
  if (forecast === null) return null
  return { source: forecast.source, issuedAt: toIso(forecast.issuedAt), stale: ageOf(forecast, now) !== 'fresh', sample: forecast.sample }
}

function refuseWith(refusal: Refusal, command: string | null, ask: Ask, site: string | null, how: How, sheet: LimitsSheet): Reply {
  const usage = usageOf(command)
  const spoken = speakRefusal(refusal, command, usage, how)
  return replyRefused(refusal, refusalMessage(refusal, how), usage, spoken, {
    command, site, at: ask.at, lang: how.lang, units: how.units, limits: { id: sheet.id, version: sheet.version, sha256: sheet.sha256 }
  })
}
