import { toIso } from '../core/instant.js'
import type { LimitsSheet } from '../core/limits/sheet.js'
import type { SiteSettings } from '../core/site.js'
import type { Forecast } from '../core/weather/forecast.js'
import { ageOf } from '../core/weather/lookup.js'
import { type Answer, type Lang, type Refusal, type Spoken, type Units, unjudged } from './answer.js'
import type { Ask } from './ask.js'
import { undoS } from './commands/undo.js'
import type { Ports, Told } from './context.js'
import { type Reply, replyRefused, replyTo } from './reply.js'
import { settingsOf } from './session/session.js'
import { sheetOf } from './sheet-of.js'
import { texts } from './text/index.js'
import { usageOf } from './text/usage-of.js'
import { usages } from './text/usages.js'
import type { Asks } from './topics.js'
import { speak } from './views/answer.js'
import { refusalMessage, speakRefusal } from './views/refusal.js'
import { withoutMentions } from './views/who.js'
import { mayBeHurt } from './words/first-aid.js'

/** A question in its place: which site, whose language and units, which limits. */
export interface Asked {
  readonly ask: Ask
  readonly ports: Ports
  /** Null: no such site, or no telling which. */
  readonly place: { readonly name: string; readonly settings: SiteSettings } | null
  readonly how: { readonly lang: Lang; readonly units: Units; readonly zone: string }
  readonly sheet: LimitsSheet
}

export async function putInPlace(ask: Ask, ports: Ports): Promise<Asked> {
  const person = ask.person ?? (await ports.store.person(ask.workspace, ask.user))
  const place = await placeOf(ask, ports)
  const how = {
    lang: ask.lang ?? person.lang ?? place?.settings.lang ?? ports.lang,
    units: ask.units ?? person.units ?? place?.settings.units ?? ports.units,
    zone: place?.settings.zone ?? 'UTC'
  }
  return { ask, ports, place, how, sheet: sheetOf(place?.settings.limits ?? null, ports.sheets) }
}

/** The named site, or the only one. */
async function placeOf(ask: Ask, ports: Ports): Promise<Asked['place']> {
  const names = ask.site === null ? await ports.store.sites(ask.workspace) : [ask.site]
  const [name] = names
  if (name === undefined || names.length > 1) return null
  const view = await ports.store.view({ workspace: ask.workspace, site: name })
  return view === null ? null : { name, settings: await settingsOf(view) }
}

/** What a closed site says. */
export function wrongState(site: string, state: string): Refusal {
  return { code: 'wrong-state', word: site, understood: [], detail: { label: 'site', state }, ref: null }
}

/** What was logged on the way to an answer; null where nothing may be. */
export interface Logged {
  readonly site: string
  /** Ids of what was collected. */
  readonly ids: readonly string[]
  /** False: nothing of it is kept. */
  readonly kept: boolean
  readonly forecast: Forecast | null
  /** What a plain question asked of by name. */
  readonly asks?: Asks | undefined
}

/** The answer of a command in words and JSON. */
export function answered({ ask, ports, how, sheet, place }: Asked, { papers: _papers, ...told }: Told, done: Logged | null): Reply {
  const collected = done?.ids.filter((id) => id !== told.decision) ?? []
  const logged = done?.kept ? collected : []
  const answer: Answer = {
    site: done?.site ?? place?.name ?? null,
    at: ask.at,
    outcome: null,
    outcomes: null,
    activities: unjudged,
    findings: [],
    numbers: {},
    changesAt: null,
    limits: named(sheet),
    weather: weatherOf(done?.forecast ?? null, ask.at),
    weatherLacks: place === null ? null : (ports.weather.lacks?.(place.settings) ?? null),
    logged,
    undoUntil: logged.length === 0 || told.command === 'undo' ? null : ask.at + undoS,
    unlogged: collected.length > 0 && logged.length === 0,
    invented: place?.settings.invented ?? false,
    ...told,
    ...(done?.asks === undefined ? {} : { asks: done.asks }),
    decision: done?.kept ? (told.decision ?? null) : null
  }
  return replyTo(answer, shownTo(ask, speak(answer, how)), how)
}

export function refused({ ask, how, sheet, place }: Asked, refusal: Refusal, command: string | null): Reply {
  const beside = { hurt: mayBeHurt(ask.text), terminal: ask.via === 'ask' }
  const spoken = shownTo(ask, speakRefusal(refusal, command, usageOf(command, texts[how.lang].usages), how, beside))
  return replyRefused(refusal, refusalMessage(refusal, how), usageOf(command, usages), spoken, {
    command,
    site: place?.name ?? ask.site,
    at: ask.at,
    lang: how.lang,
    units: how.units,
    limits: named(sheet)
  })
}

/** Only the chat service and the room make a name of a mention. */
function shownTo({ via }: Ask, spoken: Spoken): Spoken {
  return via === 'ask' || via === 'prompt' ? withoutMentions(spoken) : spoken
}

function named({ id, version, sha256 }: LimitsSheet): Answer['limits'] {
  return { id, version, sha256 }
}

function weatherOf(forecast: Forecast | null, now: number): Answer['weather'] {
  if (forecast === null) return null
  const { source, issuedAt, sample } = forecast
  return { source, issuedAt: toIso(issuedAt), stale: ageOf(forecast, now) !== 'fresh', sample }
}
