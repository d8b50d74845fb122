import { setTimeout as pause } from 'node:timers/promises'
import { webApi } from '@slack/bolt'
import type { Delivery, Message } from '../../bot/talk/talk.js'
import { boundedFetch, type Clients, callMs } from './clients.js'
import type { SlackLog } from './log.js'
import { type Loose, textAt } from './loose.js'
import { describe, serviceCode } from './problem.js'
import { respond } from './respond.js'

/** Where a message goes. */
export interface Target {
  readonly channel: string | null
  readonly user: string
  readonly thread: string | null
}

/** The ways out. None throws: what did not get out is logged, and the answer is false. */
export interface Out {
  /** Through the reply address of the payload where it has one, else into its channel, else to the person. */
  answer(delivery: Delivery, body: Loose, message: Message): Promise<boolean>
  say(target: Target, message: Message): Promise<boolean>
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

export function createOut(clients: Clients, fetch: typeof globalThis.fetch, log: SlackLog): Out {
  const bounded = boundedFetch(fetch, callMs)
  const say = (target: Target, message: Message) => sayInChannel(clients, log, target, message)
  return {
    say,
    answer: async (delivery, body, message) => {
      const url = textAt(body, 'response_url')
      const thread = threadOf(body)
      if (url !== null) {
        const sent = await respond(bounded, log, url, {
          ...replyOf(message),
          replace_original: false,
          ...(thread === null ? {} : { thread_ts: thread })
        })
        // Whether it came through is not known: said again it might stand there twice.
        if (sent !== 'gone') return sent === 'sent'
      }
      return say({ channel: delivery.channel, user: delivery.user, thread }, message)
    }
  }
}

/** Thread of a mention, or of the message whose button was pressed; null at the top of a channel. */
function threadOf(body: Loose): string | null {
  return textAt(body, 'event', 'thread_ts') ?? textAt(body, 'message', 'thread_ts') ?? textAt(body, 'container', 'thread_ts')
}

async function sayInChannel(clients: Clients, log: SlackLog, target: Target, message: Message): Promise<boolean> {
  try {
    await whenAllowed(() => send(clients, target, message))
    return true
  } catch (error) {
    log.warn(describe(error), 'answer not posted')
    const code = serviceCode(error)
    if (code === null || !elsewhere.has(code) || target.channel === null) return false
    return sayInChannel(clients, log, { ...target, channel: null, thread: null }, message)
  }
}

async function send({ posts }: Clients, { channel, user, thread }: Target, { text, blocks, to }: Message): Promise<void> {
  const where = { channel: channel ?? user, ...(thread === null ? {} : { thread_ts: thread }) }
  const what = { text, ...(blocks.length === 0 ? {} : { blocks: [...blocks] }) }
  // Alone with the bot there is nobody to hide it from, and a message that only one sees is gone after a reload.
  const alone = channel === null || channel.startsWith('D')
  if (to === 'asker' && !alone) await posts.chat.postEphemeral({ ...where, user, ...what })
  else await posts.chat.postMessage({ ...where, ...what, unfurl_links: false, unfurl_media: false })
}

/** A rate limit is a clear no: only then is a call made again. */
async function whenAllowed(call: () => Promise<void>): Promise<void> {
  for (let tries = 1; ; tries++) {
    try {
      return await call()
    } catch (error) {
      if (!(error instanceof webApi.WebAPIRateLimitedError) || tries >= triesLimited || error.retryAfter > longestWaitS) throw error
      await pause(error.retryAfter * 1000)
    }
  }
}
