import { randomBytes } from 'node:crypto'
import { join } from 'node:path'
import { healthHandler } from '../adapters/http/health.js'
import { type Handler, type Listening, listen } from '../adapters/http/server.js'
import { channelIdOf, createRoom, type Room, type RoomSite, roomPeople } from '../adapters/room/index.js'
import { createSlack, type Slack, type SlackMode } from '../adapters/slack/app.js'
import { installPaths } from '../adapters/slack/install.js'
import { messageShortcuts } from '../adapters/slack/manifest.js'
import { within } from '../adapters/slack/work.js'
import { startTicker, type TickerPorts } from '../adapters/ticker.js'
import type { Places } from '../bot/talk/asks.js'
import { createTalk } from '../bot/talk/create-talk.js'
import { whatIf } from '../bot/talk/what-if.js'
import { texts } from '../bot/text/index.js'
import type { Config, SlackChoice } from '../config.js'
import { measuredTalk } from './measured.js'
import { local, places, prepare, type Running } from './running.js'
import { timedTick } from './ticks.js'
import type { Wired } from './tools.js'

const loopback = '127.0.0.1'
/** Within the ten seconds that an operator waits, for what was accepted and for the store. */
const stopMs = 9000
const closeMs = 700

/** The bot until it is told to stop: in Slack, or in the local room where there are no Slack settings. Exit code. */
export async function serve(config: Config, wired: Wired, stopped: Promise<unknown>, everyMinute?: TickerPorts['everyMinute']): Promise<number> {
  const running = await prepare(config, wired)
  const { store, now } = running
  const chat = config.slack === null ? await openRoom(running) : await openSlack(running, config.slack)
  running.chatReady.is = chat.slack.ready
  const stopping = { is: false }
  const ticker = startTicker((at) => timedTick(running, chat.slack.chat, stopping, at), {
    now,
    failed: (error) => void running.ports.report(error, { part: 'tick' }),
    ...(everyMinute === undefined ? {} : { everyMinute })
  })
  await warnOfSettings(running)
  wired.terminal.out(`ready ${chat.listening.base}\n`)
  await stopped
  stopping.is = true
  // What is not over by then is a post of unknown fate, which is looked up, or an answer that nobody got.
  if ((await within(Promise.all([ticker.stop(), chat.close()]), stopMs)) === 'late') wired.log.warn({}, 'stopped with work unfinished')
  await within(store.close(), closeMs)
  return 0
}

/** Without live weather every answer is that much poorer: whoever runs the bot is told once, unless only invented sites are here. */
async function warnOfSettings(running: Running): Promise<void> {
  const { config, wired, ports } = running
  const setting = ports.weather.lacks?.({ invented: false }) ?? null
  const real = config.slack !== null || (await places(running)).some(({ settings }) => !settings.invented)
  if (setting !== null && real) wired.log.warn({ setting }, 'no live weather: a setting is missing')
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
    talk: measuredTalk(createTalk(ports, store), running.metrics),
    workspaceOf: (team) => team,
    room: false,
    now,
    log: wired.log
  })
  const host = config.HOST ?? (choice.kind === 'socket' ? loopback : '0.0.0.0')
  const listening = await listen(host, config.PORT, [...forOperators(running), events(() => slack), installs(slack)], (error) =>
    report(running, error)
  )
  await slack.start()
  return { slack, listening, close: () => closeAll(listening, slack, null) }
}

function modeOf({ config, book, store }: Running, choice: NonNullable<SlackChoice>): SlackMode {
  if (choice.kind !== 'many') return choice
  if (book === null) throw new Error('many workspaces without a book of them')
  const installedBy = (workspace: string, user: string) => store.claimSupervisor(workspace, user)
  return { ...choice, book, words: texts[config.SEAMHAND_LANG].install, installedBy }
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
    lang: config.SEAMHAND_LANG,
    whatIf: (asked) => whatIf({ ...asked, workspace: local }, ports),
    log: (message, fields) => wired.log.warn(fields, message)
  })
  const handlers = [...forOperators(running), events(() => slack), room.handle]
  const listening = await listen(loopback, config.PORT, handlers, (error) => report(running, error))
  base = listening.base
  const places: Places = { siteOfChannel: (workspace, channel) => siteOfRoom(running, workspace, channel) }
  // Here a site has its channel by its name too: a new site must not take it for a free one.
  const inRoom = { ...ports, ownChannel: channelIdOf, store: { ...ports.store, siteOfChannel: places.siteOfChannel } }
  const talk = measuredTalk(createTalk(inRoom, places), running.metrics)
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

/** What stands before everything else: the counting, health and metrics. */
function forOperators({ metrics, readiness }: Running): readonly Handler[] {
  return [metrics.watch, healthHandler(readiness.health), metrics.handler]
}

function report({ ports }: Running, error: unknown): void {
  ports.report(error, { part: 'http' })
}

async function roomSites(running: Running): Promise<readonly RoomSite[]> {
  const sites = (await places(running)).filter(({ key }) => key.workspace === local)
  return sites.map(({ key, settings: { channel, invented, closed, zone, lang, units } }) => ({
    name: key.site,
    title: key.site,
    channel,
    invented,
    closed,
    zone,
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
