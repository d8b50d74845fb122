import { setTimeout as pause } from 'node:timers/promises'
import type { Delivery, Message } from '../../bot/talk/talk.js'
import { webApi } from './bolt.js'
import { boundedFetch, type Clients, callMs } from './clients.js'
import { threadOf } from './delivery.js'
import type { SlackLog } from './log.js'
import { at, type Loose, textAt } from './loose.js'
import { describe, serviceCode } from './problem.js'
import { respond } from './respond.js'
import { upload } from './upload.js'

/** Where a message goes. */
export interface Target {
  readonly workspace: string
  readonly channel: string | null
  readonly user: string
  readonly thread: string | null
}

/** The ways out. None throws: what did not get out is logged, and the answer is false. */
export interface Out {
  /** Through the reply address of the payload where it has one, else into its channel, else to the person. */
  answer(delivery: Delivery, body: Loose, message: Message): Promise<boolean>
  say(target: Target, message: Message): Promise<boolean>
  /** The files of a message that went out in the reply itself. */
  share(delivery: Delivery, body: Loose, message: Message): Promise<void>
}

/** Codes that mean: not in this channel, but the person can be told. */
const elsewhere: ReadonlySet<string> = new Set([
  'not_in_channel',
  'channel_not_found',
  'is_archived',
  'user_not_in_channel',
  'restricted_action',
  'cant_post_message',
  'messages_tab_disabled'
])
const triesLimited = 3
const longestWaitS = 3

/** A message as an HTTP reply or a reply address takes it. */
export function replyOf({ text, blocks, to }: Message): Loose {
  return { response_type: to === 'channel' ? 'in_channel' : 'ephemeral', text, ...(blocks.length === 0 ? {} : { blocks }) }
}

/** `clientsOf` a workspace: null where the app is not installed any more. */
export function createOut(clientsOf: (workspace: string) => Promise<Clients | null>, fetch: typeof globalThis.fetch, log: SlackLog): Out {
  const bounded = boundedFetch(fetch, callMs)
  const say = async (target: Target, message: Message) => {
    const clients = await clientsOf(target.workspace)
    return clients !== null && sayInChannel(clients, log, target, message)
  }
  const share = async ({ workspace, channel, user }: Delivery, body: Loose, message: Message) => {
    const clients = message.files.length === 0 ? null : await clientsOf(workspace)
    if (clients !== null)
      await shareFiles(clients, log, { workspace, channel, user, thread: threadOf(body) ?? (message.thread ? startedBy(body) : null) }, message)
  }
  return {
    say,
    share,
    answer: async (delivery, body, message) => {
      const url = textAt(body, 'response_url')
      const thread = threadOf(body) ?? (message.thread ? startedBy(body) : null)
      if (url !== null) {
        const sent = await respond(bounded, log, url, {
          ...replyOf(message),
          replace_original: false,
          ...(thread === null ? {} : { thread_ts: thread })
        })
        // Whether it came through is not known: said again it might stand there twice.
        if (sent === 'sent') await share(delivery, body, message)
        if (sent !== 'gone') return sent === 'sent'
      }
      return say({ workspace: delivery.workspace, channel: delivery.channel, user: delivery.user, thread }, message)
    }
  }
}

/** The message whose button was pressed, for a thread of its own; null for one that only its reader sees, which takes none. */
function startedBy(body: Loose): string | null {
  return at(body, 'container', 'is_ephemeral') === true ? null : (textAt(body, 'message', 'ts') ?? textAt(body, 'container', 'message_ts'))
}

async function sayInChannel(clients: Clients, log: SlackLog, target: Target, message: Message): Promise<boolean> {
  try {
    const channel = await whenAllowed(() => send(clients, target, message))
    await shareFiles(clients, log, { ...target, channel }, message)
    return true
  } catch (error) {
    log.warn(describe(error), 'answer not posted')
    const code = serviceCode(error)
    if (code === null || !elsewhere.has(code) || target.channel === null) return false
    return sayInChannel(clients, log, { ...target, channel: null, thread: null }, message)
  }
}

/** Where it went: a message to a person goes to the conversation with the bot. */
async function send({ posts }: Clients, { channel, user, thread }: Target, { text, blocks, to }: Message): Promise<string | null> {
  const where = { channel: channel ?? user, ...(thread === null ? {} : { thread_ts: thread }) }
  const what = { text, ...(blocks.length === 0 ? {} : { blocks: [...blocks] }) }
  // Alone with the bot there is nobody to hide it from, and a message that only one sees is gone after a reload.
  const alone = channel === null || channel.startsWith('D')
  if (to === 'asker' && !alone) {
    await posts.chat.postEphemeral({ ...where, user, ...what })
    return channel
  }
  const answer = await posts.chat.postMessage({ ...where, ...what, unfurl_links: false, unfurl_media: false })
  return answer.channel ?? channel
}

/** Files after their message. Where the bot may not post them, the person gets answer and files alone; what fails is logged. */
async function shareFiles(clients: Clients, log: SlackLog, target: Target, message: Message): Promise<void> {
  const { files } = message
  if (files.length === 0) return
  try {
    const { channel } = target
    if (channel === null) return await shareAlone(clients, target, message)
    await whenAllowed(() => upload(clients, { channel, thread: target.thread }, files))
  } catch (error) {
    log.warn(describe(error), 'files not shared')
    const code = serviceCode(error)
    if (code === null || !elsewhere.has(code)) return
    await shareAlone(clients, target, message).catch((again: unknown) => log.warn(describe(again), 'files not shared'))
  }
}

async function shareAlone(clients: Clients, target: Target, message: Message): Promise<void> {
  const channel = await send(clients, { ...target, channel: null, thread: null }, message)
  if (channel !== null) await whenAllowed(() => upload(clients, { channel, thread: null }, message.files))
}

/** A rate limit is a clear no: only then is a call made again. */
async function whenAllowed<T>(call: () => Promise<T>): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await call()
    } catch (error) {
      if (!(error instanceof webApi.WebAPIRateLimitedError) || tries >= triesLimited || error.retryAfter > longestWaitS) throw error
      await pause(error.retryAfter * 1000)
    }
  }
}
