import { randomBytes } from 'node:crypto'
import { join } from 'node:path'
import { healthHandler } from '../adapters/http/health.js'
import { type Handler, type Listening, listen } from '../adapters/http/server.js'
import { channelIdOf, createRoom, type Room, type RoomSite, roomPeople } from '../adapters/room/index.js'
import { createSlack, type Slack, type SlackMode } from '../adapters/slack/app.js'
import { installPaths } from '../adapters/slack/install.js'
import { messageShortcuts } from '../adapters/slack/manifest.js'
import { within } from '../adapters/slack/work.js'
import type { Installations } from '../adapters/store/installations.js'
import { outboxTable } from '../adapters/store/outbox-table.js'
import type { OpenStore } from '../adapters/terminal/tools.js'
import { startTicker, type TickerPorts } from '../adapters/ticker.js'
import type { LiveWeather } from '../adapters/weather/live.js'
import type { Chat, Outbox, Slots } from '../bot/chat-ports.js'
import type { Ports } from '../bot/context.js'
import type { Weather } from '../bot/ports.js'
import { tick } from '../bot/posts/tick.js'
import type { Looked } from '../bot/posts/watch-tick.js'
import { settingsOf } from '../bot/session/session.js'
import { createTalk } from '../bot/talk/create-talk.js'
import { texts } from '../bot/text/index.js'
import type { Config, SlackChoice } from '../config.js'
import type { Instant } from '../core/instant.js'
import { bookOf, installedOnly } from './installed.js'
import type { Wired } from './tools.js'
import { choiceOf, liveFrom, weatherOf } from './weather.js'

const local = 'local'
const loopback = '127.0.0.1'
/** Within the ten seconds that an operator waits, for what was accepted and for the store. */
const stopMs = 9000
const closeMs = 700
/** A tick fetches weather no longer than this, s: posts must not wait for it. */
const refreshS = 20

/** Everything of the running bot that the parts below share. */
interface Running {
  readonly config: Config
  readonly wired: Wired
  readonly store: OpenStore
  /** Slots of the sites that are to be posted to. */
  readonly slots: Slots
  readonly outbox: Outbox & Slots
  /** Null: one workspace, or the local room. */
  readonly book: Installations | null
  readonly ports: Ports
  readonly now: () => Instant
  /** Only spare work from tick to tick: nothing hangs on them. */
  readonly looked: Looked
  readonly pausedUntil: Map<string, Instant>
}

/** The bot until it is told to stop: in Slack, or in the local room where there are no Slack settings. Exit code. */
export async function serve(config: Config, wired: Wired, stopped: Promise<unknown>, everyMinute?: TickerPorts['everyMinute']): Promise<number> {
  const store = await wired.openStore(null)
  const database = wired.databaseOf(store)
  const live = liveFrom(config, database, (what, message) => wired.log.warn(what, message))
  const now = wired.terminal.now
  const weather: Weather = weatherOf(choiceOf(config), () => live, now())
  const ports: Ports = { store, weather, sheets: wired.sheets(null), ...wired.defaults }
  const outbox = outboxTable(database)
  const book = config.slack?.kind === 'many' ? await bookOf(database, config.slack.tokenKeys, wired.log) : null
  const slots = book === null ? outbox : installedOnly(outbox, book)
  const running: Running = { config, wired, store, slots, outbox, book, ports, now, looked: new Map(), pausedUntil: new Map() }
  const chat = config.slack === null ? await openRoom(running) : await openSlack(running, config.slack)
  const stopping = { is: false }
  const ticker = startTicker((at) => oneTick(running, live, chat.slack.chat, stopping, at), {
    now,
    failed: (error) => void wired.defaults.report(error, { part: 'tick' }),
    ...(everyMinute === undefined ? {} : { everyMinute })
  })
  wired.terminal.out(`ready ${chat.listening.base}\n`)
  await stopped
  stopping.is = true
  // What is not over by then is a post of unknown fate, which is looked up, or an answer that nobody got.
  if ((await within(Promise.all([ticker.stop(), chat.close()]), stopMs)) === 'late') wired.log.warn({}, 'stopped with work unfinished')
  await within(store.close(), closeMs)
  return 0
}

/** Fetches weather where it has expired, queues what is due, sends what is queued. Once it is told to stop it begins nothing more. */
async function oneTick(running: Running, live: LiveWeather, chat: Chat, stopping: { readonly is: boolean }, at: Instant): Promise<void> {
  const { config, wired, outbox, ports, slots, now } = running
  const began = now()
  const open = (await places(running)).flatMap(({ settings }) => (settings.closed || settings.invented ? [] : [settings]))
  await live.refreshAll(open, at, () => stopping.is || now() - began >= refreshS)
  if (stopping.is) return
  await tick(at, {
    ...ports,
    slots,
    looked: running.looked,
    channelOf: (site, { channel }) => channel ?? (config.slack === null ? channelIdOf(site.site) : null),
    drain: {
      outbox: { ...outbox, take: async (...turn) => (stopping.is ? [] : outbox.take(...turn)) },
      draw: ports.draw,
      pausedUntil: running.pausedUntil,
      chat,
      clock: now,
      wait: (seconds) => new Promise((go) => setTimeout(go, seconds * 1000)),
      note: (what) => wired.log.warn(what, 'post not sent')
    }
  })
}

interface InChat {
  readonly slack: Slack
  readonly listening: Listening
  close(): Promise<void>
}

async function openSlack(running: Running, choice: NonNullable<SlackChoice>): Promise<InChat> {
  const { config, wired, store, ports, now } = running
  const slack = await createSlack({
    mode: modeOf(running, choice),
    apiUrl: config.SLACK_API_URL,
    talk: createTalk(ports, store),
    workspaceOf: (team) => team,
    room: false,
    now,
    log: wired.log
  })
  const host = config.HOST ?? (choice.kind === 'socket' ? loopback : '0.0.0.0')
  const listening = await listen(host, config.PORT, [health(running, () => slack.ready()), events(() => slack), installs(slack)], (error) =>
    report(running, error)
  )
  await slack.start()
  return { slack, listening, close: () => closeAll(listening, slack, null) }
}

function modeOf({ config, book }: Running, choice: NonNullable<SlackChoice>): SlackMode {
  if (choice.kind !== 'many') return choice
  if (book === null) throw new Error('many workspaces without a book of them')
  return { ...choice, book, words: texts[config.SEAMHAND_LANG].install }
}

/** The same app, talking to the stand-in on its own port; secrets are made for this run. */
async function openRoom(running: Running): Promise<InChat> {
  const { config, wired, store, ports, now } = running
  for (const { id, role } of roomPeople) await store.savePerson(local, id, { role })
  const secret = randomBytes(24).toString('hex')
  const botToken = `xoxb-${randomBytes(24).toString('hex')}`
  let slack: Slack | null = null
  let base = ''
  const room = createRoom({
    folder: join(config.SEAMHAND_DATA, 'room'),
    shortcuts: messageShortcuts.map(({ callbackId, name }) => ({ callbackId, name })),
    signingSecret: secret,
    botToken,
    base: () => base,
    now: Date.now,
    sites: () => roomSites(running),
    log: (message, fields) => wired.log.warn(fields, message)
  })
  const handlers = [health(running, () => slack?.ready() ?? false), events(() => slack), room.handle]
  const listening = await listen(loopback, config.PORT, handlers, (error) => report(running, error))
  base = listening.base
  const talk = createTalk(ports, { siteOfChannel: (workspace, channel) => siteOfRoom(running, workspace, channel) })
  slack = await createSlack({
    mode: { kind: 'http', signingSecret: secret, botToken },
    apiUrl: `${base}/api/`,
    talk,
    workspaceOf: () => local,
    room: true,
    now,
    log: wired.log
  })
  await slack.start()
  const open = slack
  return { slack, listening, close: () => closeAll(listening, open, room) }
}

/** First nobody new, then what was accepted. The room answers the bot's own calls to the last, so there the listener goes last. */
async function closeAll(listening: Listening, slack: Slack, room: Room | null): Promise<void> {
  const closing = room === null ? listening.close() : null
  await slack.stop()
  await room?.close()
  await (closing ?? listening.close())
}

function events(slack: () => Slack | null): Handler {
  return (req, res) => {
    const open = slack()
    if (open === null || (req.url ?? '').split('?')[0] !== '/slack/events') return false
    open.listener(req, res)
    return true
  }
}

function installs({ install }: Slack): Handler {
  return (req, res) => {
    if (install === null || !installPaths.includes((req.url ?? '').split('?')[0] ?? '') || req.method !== 'GET') return false
    install(req, res)
    return true
  }
}

function health({ store, slots }: Running, chat: () => boolean): Handler {
  const answers = (run: () => Promise<unknown>) => async () =>
    run().then(
      () => true,
      () => false
    )
  return healthHandler({ store: answers(() => store.sites(local)), chat, weather: () => true, outbox: answers(() => slots.claimed(local, [])) })
}

function report({ wired }: Running, error: unknown): void {
  wired.defaults.report(error, { part: 'http' })
}

async function places({ slots }: Running) {
  const kept = await slots.keptSites()
  return Promise.all(kept.map(async ({ key, base, state }) => ({ key, settings: await settingsOf({ base, state: async () => state }) })))
}

async function roomSites(running: Running): Promise<readonly RoomSite[]> {
  const sites = (await places(running)).filter(({ key }) => key.workspace === local)
  return sites.map(({ key, settings: { channel, invented, closed, lang, units } }) => ({
    name: key.site,
    title: key.site,
    channel,
    invented,
    closed,
    lang,
    units
  }))
}

/** In the room every site has a channel of its own, set or by its name. */
async function siteOfRoom(running: Running, workspace: string, channel: string): Promise<string | null> {
  const set = await running.store.siteOfChannel(workspace, channel)
  if (set !== null) return set
  const names = await running.store.sites(workspace)
  return names.find((name) => channelIdOf(name) === channel) ?? null
}
