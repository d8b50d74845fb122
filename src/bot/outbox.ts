import type { Instant } from '../core/instant.js'
import { isStale, staleAfterS } from '../core/schedule.js'
import type { Spoken } from './answer.js'
import type { Chat, Outbox, PostState, QueuedPost } from './chat-ports.js'
import type { Draw, DrawnFile, Paper } from './papers/paper.js'
import { StoreError } from './ports.js'

/** Why a post was not sent, for the log and the supervisor. */
export interface PostNote {
  readonly workspace: string
  readonly key: string
  readonly why: 'stale' | 'no-channel' | 'unreadable' | 'refused' | 'given-up' | 'bug'
  readonly detail: string | null
}

export interface DrainPorts {
  readonly outbox: Outbox
  /** Null: there is no chat to post to. Nothing is sent. */
  readonly chat: Chat | null
  /** Where a post without a channel of its own goes; null: nowhere. */
  channelOf(post: QueuedPost): string | null
  /** The time now, as sending takes time. */
  clock(): Instant
  /** Waits so many seconds, for the next message of a channel; null: leave it for the next tick. */
  readonly wait: ((seconds: number) => Promise<void>) | null
  readonly note: (note: PostNote, error?: unknown) => void
  /** Pictures are drawn when they are sent, not when they are queued. */
  readonly draw: Draw
}

export interface Drained {
  readonly sent: readonly string[]
  readonly skipped: readonly string[]
}

/** One instance has a post so long: looking and sending must be over well before. Afterwards another may look what became of it. */
const holdS = 120
/** A message shows in the history within this; then the waits double. */
const lookAfterS = 30
const mostSends = 6
/** A tick sends no more than this; the next one goes on. */
const mostInATick = 200
/** The history is read from this long before a post was due. */
const lookBackS = 3600
const waitS = 60

type Change = Parameters<Outbox['settle']>[2]

/** When a message was last posted to each channel, and whether another was put off for that. */
interface Pace {
  readonly last: Map<string, Instant>
  putOff: boolean
}

/** Sends what is to be sent: take, post, settle, one after the other; never twice, given that what was sent shows in the history. */
export async function drain(now: Instant, ports: DrainPorts): Promise<Drained> {
  const { outbox, chat } = ports
  const stale = await outbox.skipQueued(now - staleAfterS)
  for (const { workspace, key } of stale) ports.note({ workspace, key, why: 'stale', detail: null })
  const skipped = stale.map(({ key }) => key)
  if (chat === null) return { sent: [], skipped }
  const sent: string[] = []
  const pace: Pace = { last: new Map(), putOff: false }
  for (let count = 0; count < mostInATick; count += 1) {
    const at = ports.clock()
    const [post] = await outbox.take(at, at + holdS, 1)
    if (post === undefined) {
      if (!pace.putOff || ports.wait === null) break
      pace.putOff = false
      await ports.wait(1)
      continue
    }
    const state = await deliver(post, at, chat, pace, ports)
    if (state === 'sent') sent.push(post.key)
    if (state === 'skipped') skipped.push(post.key)
  }
  return { sent, skipped }
}

/** One post that this instance holds. What it became; null when that is not known because of a bug, and the hold must run out. */
async function deliver(post: QueuedPost, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<PostState | null> {
  try {
    const change = await fate(post, at, chat, pace, ports)
    await ports.outbox.settle(post.workspace, post.key, change)
    return change.state
  } catch (error) {
    if (error instanceof StoreError) throw error
    ports.note({ workspace: post.workspace, key: post.key, why: 'bug', detail: null }, error)
    return null
  }
}

async function fate(post: QueuedPost, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<Change> {
  const { workspace, key, state, attempts, dueAt } = post
  const ended = (to: PostState, why: PostNote['why'], detail: string | null = null): Change => {
    ports.note({ workspace, key, why, detail })
    return { state: to, nextAt: at, attempts, messageTs: null }
  }
  const channel = post.channel ?? ports.channelOf(post)
  if (channel === null) return ended('skipped', 'no-channel')
  if (state === 'unknown') {
    const found = await chat.find(workspace, channel, key, dueAt - lookBackS)
    if (found.kind === 'found') return { state: 'sent', nextAt: at, attempts, messageTs: found.ts }
    if (found.kind === 'unreadable') return ended('dead', 'unreadable')
    if (attempts >= mostSends) return ended('dead', 'given-up')
  }
  if (isStale(dueAt, ports.clock())) return ended('skipped', 'stale')
  return send(post, channel, at, chat, pace, ports)
}

async function send(post: QueuedPost, channel: string, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<Change> {
  const { workspace, key, attempts } = post
  const back = (afterS: number): Change => ({ state: post.state, nextAt: ports.clock() + afterS, attempts, messageTs: null })
  const start = ports.clock()
  const place = `${workspace} ${channel}`
  if (start - (pace.last.get(place) ?? Number.NEGATIVE_INFINITY) < 1) {
    pace.putOff = true
    return back(1)
  }
  // The look took so long that the hold may run out while the message is on its way.
  if (start - at > holdS / 2) return back(0)
  const { text, blocks, papers = [] } = post.payload as unknown as Spoken & { readonly papers?: readonly Paper[] }
  const files = await drawnFor(post, papers, ports)
  const sent = await chat.post({ workspace, channel, key, text, blocks, files })
  const now = ports.clock()
  pace.last.set(place, now)
  switch (sent.kind) {
    case 'sent':
      return { state: 'sent', nextAt: now, attempts: attempts + 1, messageTs: sent.ts }
    case 'later':
      return back(sent.afterS > 0 ? Math.ceil(Math.min(sent.afterS, staleAfterS)) : waitS)
    case 'unknown':
      return { state: 'unknown', nextAt: now + lookAfterS * 2 ** attempts, attempts: attempts + 1, messageTs: null }
    case 'refused':
      ports.note({ workspace, key, why: 'refused', detail: sent.code })
      return { state: 'dead', nextAt: now, attempts: attempts + 1, messageTs: null }
  }
}

/** A picture that cannot be drawn is a bug, and the post goes without it. */
async function drawnFor({ workspace, key }: QueuedPost, papers: readonly Paper[], { draw, note }: DrainPorts): Promise<readonly DrawnFile[]> {
  const files: DrawnFile[] = []
  for (const paper of papers) {
    try {
      files.push(await draw(paper))
    } catch (error) {
      note({ workspace, key, why: 'bug', detail: paper.kind }, error)
    }
  }
  return files
}
