import { App, HTTPReceiver } from '@slack/bolt'
import { createChat } from './chat.js'
import { type ClientSettings, clientOptions, createClients, whoAmI } from './clients.js'
import type { Context } from './handlers/context.js'
import { frameworkLogger } from './log.js'
import { createOut } from './out.js'
import { httpReceiver, socketReceiver } from './receivers.js'
import { register } from './register.js'
import { overHttp, overSocket } from './running.js'
import { createSeen } from './seen.js'
import { type Slack, type SlackOptions, startProblem } from './slack.js'
import { createWork } from './work.js'

export { type Slack, SlackError, type SlackMode, type SlackOptions } from './slack.js'

/** The app, with its token proved and the first answer warm. Throws a SlackError. */
export async function createSlack(options: SlackOptions): Promise<Slack> {
  const { mode, log, apiUrl, fetch = globalThis.fetch } = options
  const settings: ClientSettings = { apiUrl, log, fetch }
  const me = await whoAmI(mode.botToken, settings).catch((error: unknown) => {
    throw startProblem('bot token', error)
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
