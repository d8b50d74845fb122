import { setTimeout as pause } from 'node:timers/promises'
import type { KnownBlock } from '@slack/types'
import type { Chat, Found, Outgoing, Sent } from '../../bot/chat-ports.js'
import type { Instant } from '../../core/instant.js'
import { webApi } from './bolt.js'
import type { Clients } from './clients.js'
import type { SlackLog } from './log.js'
import { describe, serviceCode } from './problem.js'
import { upload } from './upload.js'

const eventType = 'seamhand_post'
const pageSize = 200
const mostPages = 10
/** Seconds by which our clock and the service's may differ. */
const clocksS = 300
const longestWaitS = 3600

/** Codes after which the message may be there or not (the service's own documentation of them). */
const unsure: ReadonlySet<string> = new Set(['internal_error', 'fatal_error', 'service_unavailable', 'request_timeout'])
/** Codes that are a rate limit without the status of one. */
const limited: ReadonlySet<string> = new Set(['ratelimited', 'rate_limited', 'message_limit_exceeded'])
const limitedS = 30
const openWaitS = 30
const lookWaitS = 60
/** What a block can show. */
const picture = 'image/png'
/** The service takes so much with a picture. */
const mostAlt = 2000
const readyWaitsMs = [200, 500, 1000, 2000, 4000]
const readyMs = 10_000

/** Posts and looks up messages for the outbox. One call each: the outbox decides what is tried again. */
export function createChat(clientOf: (workspace: string) => Promise<Clients['posts'] | null>, log: SlackLog): Chat {
  return {
    post: async (message) => {
      const client = await clientOf(message.workspace)
      return client === null ? { kind: 'refused', code: 'not_installed' } : post(client, log, message)
    },
    edit: async (message, ts) => {
      const client = await clientOf(message.workspace)
      return client === null ? { kind: 'refused', code: 'not_installed' } : edit(client, log, message, ts)
    },
    find: async (workspace, channel, key, since) => {
      const client = await clientOf(workspace)
      return client === null ? { kind: 'unreadable' } : find(client, log, channel, key, since)
    }
  }
}

/** The conversation with a person, where a channel is one: its history can be read, a person's cannot. Opened twice it is the same. */
async function placeOf(client: Clients['posts'], channel: string): Promise<string> {
  if (!/^[UW]/.test(channel)) return channel
  const { channel: direct } = await client.conversations.open({ users: channel })
  if (direct?.id === undefined) throw new Error('no conversation was opened')
  return direct.id
}

async function post(client: Clients['posts'], log: SlackLog, message: Outgoing): Promise<Sent> {
  const { key, text } = message
  const shown = await picturesOf(client, log, message)
  const blocks = [...message.blocks, ...shown]
  let channel = ''
  try {
    channel = await placeOf(client, message.channel)
  } catch (error) {
    const sent = fateOf(error)
    log.warn({ key, fate: sent.kind, ...describe(error) }, 'conversation not opened')
    // Nothing was posted yet, whatever became of the opening.
    return sent.kind === 'unknown' ? { kind: 'later', afterS: openWaitS } : sent
  }
  try {
    const answer = await client.chat.postMessage({
      channel,
      text,
      ...(blocks.length === 0 ? {} : { blocks }),
      metadata: { event_type: eventType, event_payload: { key } },
      unfurl_links: false,
      unfurl_media: false
    })
    if (answer.ts === undefined) return { kind: 'unknown' }
    await shareUnder(client, log, { ...message, channel }, answer.ts)
    return { kind: 'sent', ts: answer.ts }
  } catch (error) {
    const sent = fateOf(error)
    // A clear no to the blocks: perhaps the picture is not ready yet, and the words count more.
    if (sent.kind === 'refused' && sent.code === 'invalid_blocks' && shown.length > 0)
      return post(client, log, { ...message, files: message.files.filter(({ mime }) => mime !== picture) })
    log.warn({ key, fate: sent.kind, ...describe(error) }, 'post not sent')
    return sent
  }
}

async function edit(client: Clients['posts'], log: SlackLog, { channel, key, text, blocks }: Outgoing, ts: string): Promise<Sent> {
  try {
    await client.chat.update({ channel, ts, text, blocks: [...blocks] })
    return { kind: 'sent', ts }
  } catch (error) {
    const sent = fateOf(error)
    log.warn({ key, fate: sent.kind, ...describe(error) }, 'post not changed')
    return sent
  }
}

/** Files that no block can show follow in the thread of the message; one that fails is logged: it can be asked for again. */
async function shareUnder(client: Clients['posts'], log: SlackLog, { channel, key, files }: Outgoing, ts: string): Promise<void> {
  const papers = files.filter(({ mime }) => mime !== picture)
  if (papers.length === 0) return
  await upload({ posts: client }, { channel, thread: ts }, papers).catch((error: unknown) => log.warn({ key, ...describe(error) }, 'file not shared'))
}

/** The files as blocks that show them, uploaded where nobody sees them yet. Those that fail are left out: the words count more. */
async function picturesOf(client: Clients['posts'], log: SlackLog, { key, files }: Outgoing): Promise<readonly KnownBlock[]> {
  const pictures = files.filter(({ mime }) => mime === picture)
  if (pictures.length === 0) return []
  try {
    const ids = await upload({ posts: client }, null, pictures)
    await untilReady(client, ids)
    return pictures.flatMap(({ alt }, index) => {
      const id = ids[index]
      return id === undefined ? [] : [{ type: 'image' as const, slack_file: { id }, alt_text: alt.slice(0, mostAlt) }]
    })
  } catch (error) {
    log.warn({ key, ...describe(error) }, 'picture not uploaded')
    return []
  }
}

/** The service needs a moment for a file before a block may show it. One that answers slowly is not waited for: the post is held only so long. */
async function untilReady(client: Clients['posts'], ids: readonly string[]): Promise<void> {
  const end = performance.now() + readyMs
  for (const ms of readyWaitsMs) {
    const files = await Promise.all(ids.map((file) => client.files.info({ file })))
    if (files.every(({ file }) => (file?.mimetype ?? '') !== '') || performance.now() > end) return
    await pause(ms)
  }
}

/** What an error says of a message: only a clear no is one, everything else is of unknown fate. */
export function fateOf(error: unknown): Sent {
  if (error instanceof webApi.WebAPIRateLimitedError) return { kind: 'later', afterS: Math.min(Math.max(error.retryAfter, 1), longestWaitS) }
  const code = serviceCode(error)
  if (code === null || unsure.has(code)) return { kind: 'unknown' }
  return limited.has(code) ? { kind: 'later', afterS: limitedS } : { kind: 'refused', code }
}

async function find(client: Clients['posts'], log: SlackLog, place: string, key: string, since: Instant): Promise<Found> {
  try {
    const channel = await placeOf(client, place)
    let cursor = ''
    for (let page = 0; page < mostPages; page++) {
      const answer = await client.conversations.history({
        channel,
        oldest: String(since - clocksS),
        inclusive: true,
        limit: pageSize,
        include_all_metadata: true,
        ...(cursor === '' ? {} : { cursor })
      })
      const ts = answer.messages?.find(({ metadata }) => metadata?.event_type === eventType && keyOf(metadata.event_payload) === key)?.ts
      if (ts !== undefined) return { kind: 'found', ts }
      cursor = answer.response_metadata?.next_cursor ?? ''
      if (answer.messages === undefined) return { kind: 'later', afterS: lookWaitS }
      if (cursor === '') return { kind: 'absent' }
    }
    log.warn({ key, pages: mostPages }, 'history too long to look through')
  } catch (error) {
    log.warn({ key, ...describe(error) }, 'history not read')
    const sent = fateOf(error)
    // Only a clear no is one: a time-out, a limit or half an answer says nothing of the history.
    return sent.kind === 'refused' ? { kind: 'unreadable' } : { kind: 'later', afterS: sent.kind === 'later' ? sent.afterS : lookWaitS }
  }
  return { kind: 'unreadable' }
}

function keyOf(payload: object | undefined): unknown {
  return (payload as { readonly key?: unknown } | undefined)?.key
}
