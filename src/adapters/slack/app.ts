import type { RequestListener } from 'node:http'
import { App, HTTPReceiver, SocketModeReceiver } from '@slack/bolt'
import type { Chat } from '../../bot/chat-ports.js'
import type { Talk } from '../../bot/talk/talk.js'
import type { Instant } from '../../core/instant.js'
import { createChat } from './chat.js'
import { type ClientSettings, clientOptions, createClients, whoAmI } from './clients.js'
import { failedOverHttp, failedOverSocket, unhandledOverHttp } from './failure.js'
import type { Context } from './handlers/context.js'
import { guardedListener } from './listener.js'
import { type FrameworkLogger, frameworkLogger, type SlackLog } from './log.js'
import { isLoose } from './loose.js'
import { createOut } from './out.js'
import { describe, serviceCode } from './problem.js'
import { register } from './register.js'
import { createSeen } from './seen.js'
import { createWork, type Work } from './work.js'

export type SlackMode =
  | { readonly kind: 'http'; readonly signingSecret: string; readonly botToken: string }
  | { readonly kind: 'socket'; readonly botToken: string; readonly appToken: string }

export interface SlackOptions {
  readonly mode: SlackMode
  /** Base address of the Web API. */
  readonly apiUrl: string
  readonly talk: Talk
  readonly workspaceOf: (teamId: string) => string
  /** The local room: its page may choose language, units and time. Never true for a real workspace. */
  readonly room: boolean
  readonly now: () => Instant
  readonly log: SlackLog
  readonly fetch?: typeof globalThis.fetch
  /** Milliseconds after which the reply says that the answer will follow; 2,000 (CONTRACT §9). */
  readonly answerMs?: number
}

export interface Slack {
  /** `POST /slack/events`; with Socket Mode everything is 404. */
  readonly listener: RequestListener
  readonly chat: Chat
  start(): Promise<void>
  /** Waits for what was accepted, at most 10 s. */
  stop(): Promise<void>
  /** The service can reach the bot and the bot the service, as far as is known. */
  ready(): boolean
}

/** A sentence for the operator: a token that is not taken, a service that does not answer. */
export class SlackError extends Error {
  override readonly name = 'SlackError'
}

const bodyLimit = 1024 * 1024
const drainMs = 9500
/** Just inside the service's 3 s. */
const unhandledMs = 2900

/** The app, with its token proved and the first answer warm. Throws a SlackError. */
export async function createSlack(options: SlackOptions): Promise<Slack> {
  const { mode, log, apiUrl, fetch = globalThis.fetch } = options
  const settings: ClientSettings = { apiUrl, log, fetch }
  const me = await whoAmI(mode.botToken, settings).catch((error: unknown) => {
    throw said('bot token', error)
  })
  const state = { open: false, revoked: false }
  const context = contextOf(options, settings, me.botUserId, () => {
    state.revoked = true
  })
  const receiver =
    mode.kind === 'http' ? httpReceiver(mode.signingSecret, context, frameworkLogger(log)) : socketReceiver(mode.appToken, context, settings)
  const app = new App({
    receiver,
    token: mode.botToken,
    ...me,
    logger: frameworkLogger(log),
    clientOptions: clientOptions(settings),
    convoStore: false,
    // Without the two ids each request would ask for them; a token verified in the constructor ends the process when it is bad.
    tokenVerificationEnabled: false,
    deferInitialization: true
  })
  register(app, context)
  await app.init()
  const chat = createChat(() => context.clients.posts, log)
  return receiver instanceof HTTPReceiver ? overHttp(receiver, chat, context.work, options.now, state) : overSocket(receiver, chat, context, state)
}

interface State {
  open: boolean
  revoked: boolean
}

function contextOf(options: SlackOptions, settings: ClientSettings, botUserId: string, revoked: () => void): Context {
  const { talk, workspaceOf, room, now, log, mode, answerMs = 2000 } = options
  const clients = createClients(mode.botToken, settings)
  const origin = { workspaceOf, room, now }
  return {
    talk,
    origin,
    clients,
    log,
    botUserId,
    answerMs,
    revoked,
    seen: createSeen(),
    work: createWork(),
    homes: new Set(),
    out: createOut(clients, settings.fetch, log)
  }
}

function httpReceiver(signingSecret: string, context: Context, logger: FrameworkLogger): HTTPReceiver {
  return new HTTPReceiver({
    signingSecret,
    logger,
    bodyLimit,
    unhandledRequestTimeoutMillis: unhandledMs,
    processEventErrorHandler: (args) => failedOverHttp(context, args),
    unhandledRequestHandler: (args) => unhandledOverHttp(context, args)
  })
}

/** Its client options are its own: it writes a retry rule of 100 tries into them, which must not reach a client that posts. */
function socketReceiver(appToken: string, context: Context, settings: ClientSettings): SocketModeReceiver {
  const { retryConfig: _, ...own } = clientOptions(settings)
  return new SocketModeReceiver({
    appToken,
    logger: frameworkLogger(settings.log),
    installerOptions: { clientOptions: { ...own, rejectRateLimitedCalls: false } },
    processEventErrorHandler: async ({ error, event }) => {
      const ack = event.ack as (reply?: unknown) => Promise<void>
      await failedOverSocket(context, error, isLoose(event.body) ? event.body : {}, ack)
      return false
    }
  })
}

function overHttp(receiver: HTTPReceiver, chat: Chat, work: Work, now: () => Instant, state: State): Slack {
  return {
    chat,
    listener: guardedListener(receiver.requestListener, work, now),
    start: async () => {
      state.open = true
    },
    stop: async () => {
      state.open = false
      await work.drained(drainMs)
    },
    ready: () => state.open && !state.revoked
  }
}

function overSocket(receiver: SocketModeReceiver, chat: Chat, { work, log }: Context, state: State): Slack {
  const { client } = receiver
  client.on('connected', () => {
    state.open = true
  })
  for (const away of ['close', 'reconnecting', 'disconnecting', 'disconnected'])
    client.on(away, () => {
      state.open = false
    })
  return {
    chat,
    listener: (_request, response) => void response.writeHead(404).end(),
    start: async () => {
      await receiver.start().catch((error: unknown) => {
        throw said('app token', error)
      })
    },
    stop: async () => {
      // Replies go back through the connection: it is closed when they are out.
      const left = await work.drained(drainMs)
      if (left > 0) log.warn({ left }, 'stopped with work unfinished')
      await receiver.stop()
    },
    ready: () => state.open && !state.revoked
  }
}

function said(what: string, error: unknown): SlackError {
  const code = serviceCode(error)
  if (code !== null) return new SlackError(`the chat service refused the ${what}: ${code}`)
  const { kind, why, status } = describe(error)
  return new SlackError(
    `the chat service could not be reached to check the ${what} (${[kind, why, status].filter((part) => part !== undefined).join(' ')})`
  )
}
