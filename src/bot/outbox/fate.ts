import type { Instant } from '../../core/instant.js'
import { isStale, staleAfterS } from '../../core/schedule.js'
import type { Spoken } from '../answer.js'
import type { Chat, Outbox, PostState, QueuedPost, Sent } from '../chat-ports.js'
import type { DrawnFile, Paper } from '../papers/paper.js'
import { type DrainPorts, holdS, type PostNote, renewAfterS } from './drain-ports.js'
import { type Pace, pause, tooSoon } from './pace.js'

/** What a post holds in the store: words, what is drawn when it is sent, and of an edit the post that it changes. */
export interface Payload extends Spoken {
  readonly papers?: readonly Paper[]
  /** Local date of the day record that goes with it. */
  readonly recordOf?: string
  /** Slot key of the post whose message is changed. */
  readonly edits?: string
}

type Change = Parameters<Outbox['settle']>[2]

/** A message shows in the history within this; then the waits double. */
const lookAfterS = 30
const mostSends = 6
/** The history is read from this long before a post was due. */
const lookBackS = 3600
const waitS = 60
const longestLookWaitS = 600
/** Refusals of the token, not of the message: it may be given anew. */
const ofToken: ReadonlySet<string> = new Set(['token_revoked', 'token_expired', 'invalid_auth', 'not_authed', 'account_inactive', 'not_installed'])
const tokenWaitS = 600

/** What becomes of a post that is held: looked up where it may be there, sent where it is not, or put off. Null: it is held no more. */
export async function fate(post: QueuedPost, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<Change | null> {
  const { workspace, key, state, attempts, dueAt } = post
  const ended = (to: PostState, why: PostNote['why'], detail: string | null = null): Change => {
    ports.note({ workspace, key, why, detail })
    return { state: to, nextAt: at, attempts, messageTs: null }
  }
  const channel = post.channel ?? ports.channelOf(post)
  if (channel === null) return ended('skipped', 'no-channel')
  const { edits } = post.payload as unknown as Payload
  if (state === 'unknown') {
    // An edit done twice is an edit done once.
    const found = edits === undefined ? await chat.find(workspace, channel, key, dueAt - lookBackS) : absent
    if (found.kind === 'found') return { state: 'sent', nextAt: at, attempts, messageTs: found.ts }
    if (found.kind === 'later' && !isStale(dueAt, ports.clock())) {
      return { state, nextAt: ports.clock() + Math.max(1, Math.ceil(Math.min(found.afterS, longestLookWaitS))), attempts, messageTs: null }
    }
    if (found.kind === 'later' || found.kind === 'unreadable') return ended('dead', 'unreadable')
    if (attempts >= mostSends) return ended('dead', 'given-up')
  }
  if (isStale(dueAt, ports.clock())) return ended('skipped', 'stale')
  const target = edits === undefined ? undefined : ((await ports.outbox.post(workspace, edits))?.messageTs ?? null)
  if (target === null) return ended('skipped', 'no-message')
  return send(post, { channel, ts: target ?? null }, at, chat, pace, ports)
}

const absent = { kind: 'absent' } as const

interface Place {
  readonly channel: string
  /** Of the message to change; null: a new one. */
  readonly ts: string | null
}

async function send(post: QueuedPost, { channel, ts }: Place, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<Change | null> {
  const { workspace, key } = post
  const back = (afterS: number): Change => ({ state: post.state, nextAt: ports.clock() + afterS, attempts: post.attempts, messageTs: null })
  const start = ports.clock()
  if (tooSoon(pace, `${workspace} ${channel}`, start)) return back(1)
  // The look took so long that the hold may run out while the message is on its way; or the clock went back.
  if (!(start - at <= holdS / 2 && start >= at)) return back(0)
  const { text, blocks, papers = [], recordOf } = post.payload as unknown as Payload
  const message = { workspace, channel, key, text, blocks, files: await drawnFor(post, papers, recordOf, ports) }
  // Drawing may take long where all is busy, and so may the way to the service.
  const drawnAt = ports.clock()
  if (drawnAt - at > renewAfterS && !(await ports.outbox.renew(workspace, key, at + holdS, drawnAt + holdS))) return null
  const sent = ts === null ? await chat.post(message) : await chat.edit(message, ts)
  return afterSending(post, sent, ts, pace, ports, back)
}

function afterSending(post: QueuedPost, sent: Sent, ts: string | null, pace: Pace, ports: DrainPorts, back: (afterS: number) => Change): Change {
  const { workspace, key } = post
  const now = ports.clock()
  const attempts = post.attempts + 1
  switch (sent.kind) {
    case 'sent':
      return { state: 'sent', nextAt: now, attempts, messageTs: sent.ts }
    case 'later': {
      const afterS = sent.afterS > 0 ? Math.ceil(Math.min(sent.afterS, staleAfterS)) : waitS
      pause(pace, workspace, now, afterS)
      return back(afterS)
    }
    case 'unknown':
      return { state: 'unknown', nextAt: now + lookAfterS * 2 ** post.attempts, attempts, messageTs: null }
    case 'refused':
      if (ofToken.has(sent.code)) {
        if (!pace.pausedUntil.has(workspace)) ports.note({ workspace, key, why: 'no-token', detail: sent.code })
        pause(pace, workspace, now, tokenWaitS)
        return back(tokenWaitS)
      }
      ports.note({ workspace, key, why: 'refused', detail: sent.code })
      // The message that was to be changed is gone, or past changing: there is nothing to tell anybody.
      return { state: ts === null ? 'dead' : 'skipped', nextAt: now, attempts, messageTs: null }
  }
}

/** A picture that cannot be drawn is a bug, and the post goes without it. */
async function drawnFor(
  { workspace, key, site }: QueuedPost,
  papers: readonly Paper[],
  recordOf: string | undefined,
  { draw, note, record }: DrainPorts
): Promise<readonly DrawnFile[]> {
  const files: DrawnFile[] = []
  const drawn = async (what: string, paper: () => Promise<Paper | null>) => {
    try {
      const found = await paper()
      if (found !== null) files.push(await draw(found))
    } catch (error) {
      note({ workspace, key, why: 'bug', detail: what }, error)
    }
  }
  for (const paper of papers) await drawn(paper.kind, async () => paper)
  if (recordOf !== undefined && record !== undefined) await drawn('record', () => record({ workspace, site }, recordOf))
  return files
}
