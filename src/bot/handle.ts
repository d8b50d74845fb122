import type { Refusal } from './answer.js'
import type { Ask } from './ask.js'
import { type Asked, answered, putInPlace, refused, wrongState } from './asked.js'
import { freeCommands, siteCommands } from './commands/index.js'
import type { Beside, Done, OnSite, Ports } from './context.js'
import { drawn, type Replied } from './papers/drawn.js'
import type { Paper } from './papers/paper.js'
import type { SiteView } from './ports.js'
import type { Reply } from './reply.js'
import { openSession, type Session } from './session/session.js'
import { withWhoCan } from './who-can.js'
import { readWords } from './words/read.js'
import type { Reading, Said } from './words/said.js'

/** Commands that show what weather services warn of. */
const warning: ReadonlySet<Said['command']> = new Set(['day', 'air'])

type Understood = Extract<Reading, { ok: true }>

/** Commands that a closed site still answers. */
const whenClosed: ReadonlySet<Said['command']> = new Set(['site show', 'site set', 'probe list', 'punch list', 'weld show', 'day record'])

/**
 * The one dispatcher: who, words, when → the reply. Bad words and a domain "no" are replies, and log nothing. Throws a
 * StoreError when the store fails; anything else it throws is a bug (see `respond`).
 */
export async function handle(ask: Ask, ports: Ports): Promise<Replied> {
  const { reply, papers } = await answer(ask, ports)
  return drawn(reply, papers, ports)
}

/** The reply alone, with nothing drawn: for those who only look. */
export async function replyOnly(ask: Ask & { readonly log: false }, ports: Ports): Promise<Reply> {
  return (await answer(ask, ports)).reply
}

/** A reply and what is to be drawn for it, which is done when nothing is held any more. */
interface Answered {
  readonly reply: Reply
  readonly papers: readonly Paper[]
}

async function answer(ask: Ask, ports: Ports): Promise<Answered> {
  const asked = await putInPlace(ask, ports)
  const { how, sheet } = asked
  const read = readWords(ask.text, { units: how.units, zone: how.zone, now: ask.at, lang: how.lang })
  if (!read.ok) return bare(refused(asked, read.refusal, read.command))
  const command = commandOf(read.said)
  const no: No = async (refusal) => bare(refused(asked, { ...(await withWhoCan(refusal, ask, ports)), understood: read.understood }, command))
  const beside: Beside = { ask, ports, sheet, how, place: asked.place }
  if (read.said.command in freeCommands) {
    const done = await runFree(read.said, beside)
    return done.ok ? { reply: answered(spokenTo(asked, read.said), done.told, null), papers: done.told.papers ?? [] } : no(done.refusal)
  }
  const site = siteOf(read.said, asked)
  if (site === null) return no(await noSite(ask, ports))
  if (asked.place?.settings.closed && !whenClosed.has(read.said.command)) return no(wrongState(site, 'closed'))
  return onSite(read, site, asked, beside, no)
}

/** Who chooses a language or units is answered in them. */
function spokenTo(asked: Asked, said: Said): Asked {
  if (said.command !== 'me') return asked
  const { how } = asked
  return { ...asked, how: { ...how, lang: said.lang ?? how.lang, units: said.units ?? how.units } }
}

type No = (refusal: Refusal) => Promise<Answered>

function bare(reply: Reply): Answered {
  return { reply, papers: [] }
}

/** The word that the person used: `weld coupon` is `weld`. */
function commandOf(said: Said): string {
  return said.command.split(' ')[0] as string
}

/** `/site NAME …` names its own site; everything else is about the place it was said in. */
function siteOf(said: Said, { place }: Asked): string | null {
  const named = said.command === 'site show' || said.command === 'site set' ? said.name : null
  return named ?? place?.name ?? null
}

async function noSite(ask: Ask, ports: Ports): Promise<Refusal> {
  const sites = await ports.store.sites(ask.workspace)
  return { code: 'no-site', word: ask.site, understood: [], detail: { nearest: sites.slice(0, 10) }, ref: null }
}

/** Everything between reading and writing happens inside the transaction that holds the site. */
async function onSite(read: Understood, site: string, asked: Asked, beside: Beside, no: No): Promise<Answered> {
  const { ask, ports, sheet, place } = asked
  const key = { workspace: ask.workspace, site }
  const forecast = place === null ? null : await ports.weather.at(place.settings, ask.at)
  const alerts = place === null || !warning.has(read.said.command) ? null : ((await ports.weather.alerts?.(place.settings, ask.at)) ?? null)
  const work: Work = async (view) => {
    const session = await openSession(ask, view)
    const done = await runOnSite(read.said, { session, sheet, forecast, alerts, how: asked.how }, read.at ?? ask.at, beside)
    if (!done.ok) return { session: null, ...(await no(done.refusal)) }
    const reply = answered(asked, done.told, { site, ids: session.ids(), kept: ask.log, forecast, asks: read.asks })
    return { session, reply, papers: done.told.papers ?? [] }
  }
  const done = ask.log ? await append(key, ask, ports, work) : await look(key, ports, work)
  return done ?? no({ code: 'no-site', word: site, understood: [], detail: {}, ref: null })
}

type Work = (view: SiteView) => Promise<Answered & { session: Session | null }>

async function look(key: SiteView['key'], ports: Ports, work: Work): Promise<Answered | null> {
  const view = await ports.store.view(key)
  return view === null ? null : work(view)
}

/** A second delivery gets the reply that was kept, without its files. */
async function append(key: SiteView['key'], ask: Ask, ports: Ports, work: Work): Promise<Answered | null> {
  let papers: readonly Paper[] = []
  const claim = ask.claim === null ? null : { key: ask.claim }
  const appended = await ports.store.append(key, ask.at, claim, async (view) => {
    const { session, reply, papers: toDraw } = await work(view)
    papers = toDraw
    const json = reply as never
    return session === null ? { drafts: [], moved: [], keepsakes: [], posts: [], reply: json } : session.batch(json)
  })
  if (appended === null) return null
  return { reply: appended.reply as unknown as Reply, papers: appended.kind === 'done' ? papers : [] }
}

/** The map's types hold that each command gets the words it takes; picking one by name loses that, so it is said again here. */
function runFree(said: Said, beside: Beside): Promise<Done> {
  const run = freeCommands[said.command as keyof typeof freeCommands] as (said: Said, beside: Beside) => Promise<Done>
  return run(said, beside)
}

function runOnSite(said: Said, on: OnSite, at: number, beside: Beside): Promise<Done> {
  const run = siteCommands[said.command as keyof typeof siteCommands] as (said: Said, on: OnSite, at: number, beside: Beside) => Promise<Done>
  return run(said, on, at, beside)
}
