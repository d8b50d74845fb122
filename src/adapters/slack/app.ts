import { App, HTTPReceiver } from './bolt.js'
import { createChat } from './chat.js'
import { type ClientSettings, clientOptions, createClients, whoAmI } from './clients.js'
import { deliveryOf } from './delivery.js'
import type { Context } from './handlers/context.js'
import { installListener } from './install.js'
import { frameworkLogger } from './log.js'
import type { Loose } from './loose.js'
import { createOut } from './out.js'
import { httpReceiver, socketReceiver } from './receivers.js'
import { register } from './register.js'
import { overHttp, overSocket, type State } from './running.js'
import { createSeen } from './seen.js'
import { type Slack, type SlackOptions, startProblem } from './slack.js'
import { createWork } from './work.js'
import { manyWorkspaces, oneWorkspace, type Workspaces } from './workspaces.js'

export type { Slack, SlackMode, SlackOptions } from './slack.js'

/** The app, with its token proved and the first answer warm. Throws a SlackError. */
export async function createSlack(options: SlackOptions): Promise<Slack> {
  const { mode, log, apiUrl, now, fetch = globalThis.fetch } = options
  const settings: ClientSettings = { apiUrl, log, fetch }
  const workspaces = mode.kind === 'many' ? manyWorkspaces(mode.book, settings) : await provedWorkspace(mode.botToken, settings)
  const context = contextOf(options, settings, workspaces)
  const receiver =
    mode.kind === 'socket' ? socketReceiver(mode.appToken, context, settings) : httpReceiver(mode.signingSecret, context, frameworkLogger(log))
  const app = new App({
    receiver,
    // For each delivery anew, so that a token that was taken away is not used again.
    authorize: (_source, body) => authorized(context, body as Loose | undefined),
    logger: frameworkLogger(log),
    clientOptions: clientOptions(settings),
    convoStore: false,
    deferInitialization: true
  })
  register(app, context)
  await app.init()
  const state: State = { open: false }
  const chat = createChat(async (workspace) => (await workspaces.of(workspace))?.clients.posts ?? null, log)
  if (!(receiver instanceof HTTPReceiver)) return overSocket(receiver, chat, context, state)
  const install = mode.kind === 'many' ? installListener(mode, settings, now) : null
  return { ...overHttp(receiver, chat, context, state), install }
}

async function provedWorkspace(botToken: string, settings: ClientSettings): Promise<Workspaces> {
  const me = await whoAmI(botToken, settings).catch((error: unknown) => {
    throw startProblem('bot token', error)
  })
  return oneWorkspace({ ...me, botToken, clients: createClients(botToken, settings) })
}

async function authorized({ origin, workspaces }: Context, body: Loose | undefined) {
  const member = workspaces.only ?? (await workspaces.of(deliveryOf(origin, body ?? {}).workspace))
  if (member === null) throw new Error('not installed in this workspace')
  const { botToken, botId, botUserId } = member
  return { botToken, botId, botUserId }
}

function contextOf(options: SlackOptions, settings: ClientSettings, workspaces: Workspaces): Context {
  const { talk, workspaceOf, room, now, log, answerMs = 2000 } = options
  return {
    talk,
    origin: { workspaceOf, room, now },
    workspaces,
    log,
    fetch: settings.fetch,
    apiUrl: settings.apiUrl,
    answerMs,
    seen: createSeen(),
    work: createWork(),
    homes: new Set(),
    out: createOut(async (workspace) => (await workspaces.of(workspace))?.clients ?? null, settings.fetch, log)
  }
}
