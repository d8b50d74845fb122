import type { Instant } from '../../core/instant.js'
import { staleAfterS } from '../../core/schedule.js'
import type { Chat, PostState, QueuedPost } from '../chat-ports.js'
import { StoreError } from '../ports.js'
import { type DrainPorts, holdS } from './drain-ports.js'
import { fate } from './fate.js'
import type { Pace } from './pace.js'

export interface Drained {
  readonly sent: readonly string[]
  readonly skipped: readonly string[]
}

/** Calls to the service at once: it answers in some 200 ms, and takes hundreds a minute of a workspace. */
const most = 16
/** A tick takes up no more posts after so long, s: the next one goes on. */
const takingS = 45
const mostInATick = 5000

/**
 * Sends what is to be sent: take, post, settle, each channel in its order, many channels at once; never twice, given that what was
 * sent shows in the history. Throws only where the store fails, when all that was begun has ended.
 */
export async function drain(now: Instant, ports: DrainPorts): Promise<Drained> {
  const { outbox, chat } = ports
  const stale = await outbox.skipQueued(now - staleAfterS)
  for (const { workspace, key } of stale) ports.note({ workspace, key, why: 'stale', detail: null })
  const skipped = stale.map(({ key }) => key)
  if (chat === null) return { sent: [], skipped }
  const sent: string[] = []
  const pace: Pace = { last: new Map(), pausedUntil: ports.pausedUntil ?? new Map(), putOff: false }
  await takeAll(chat, pace, ports, (key, state) => {
    if (state === 'sent') sent.push(key)
    if (state === 'skipped') skipped.push(key)
  })
  // In order of key, not of who answered first.
  return { sent: sent.sort(), skipped }
}

async function takeAll(chat: Chat, pace: Pace, ports: DrainPorts, done: (key: string, state: PostState | null) => void): Promise<void> {
  const { outbox, clock, wait } = ports
  const running = new Set<Promise<void>>()
  const failed: unknown[] = []
  const end = clock() + takingS
  let [taken, waits] = [0, 0]
  while (failed.length === 0 && clock() < end && taken < mostInATick) {
    const at = clock()
    const busy = running.size
    const posts = await outbox.take(at, at + holdS, most - running.size, pausedAt(pace, at)).catch((error: unknown) => {
      failed.push(error)
      return []
    })
    taken += posts.length
    for (const post of posts) {
      const run: Promise<void> = deliver(post, at, chat, pace, ports)
        .then(
          (state) => done(post.key, state),
          (error: unknown) => void failed.push(error)
        )
        .finally(() => running.delete(run))
      running.add(run)
    }
    if (running.size >= most || (posts.length === 0 && running.size > 0)) await Promise.race(running)
    else if (posts.length === 0) {
      // What was on its way ended while the store was asked: the next of its channel was not free yet.
      if (busy > 0) continue
      // The service wants a workspace left alone for about as long as ticks are apart: who left it to the next tick would lose every other one.
      const more = pace.putOff || endsBefore(pace, clock(), end)
      if (!more || wait === null || waits >= takingS || ports.stopping?.() === true) break
      pace.putOff = false
      waits += 1
      await wait(1)
    }
  }
  await Promise.all(running)
  if (failed.length > 0) throw failed[0]
}

/** True where a workspace that is left alone may be asked again before an instant. */
function endsBefore({ pausedUntil }: Pace, at: Instant, end: Instant): boolean {
  return [...pausedUntil.values()].some((until) => until > at && until < end)
}

function pausedAt({ pausedUntil }: Pace, at: Instant): readonly string[] {
  for (const [workspace, until] of pausedUntil) if (!(at < until && until - at <= staleAfterS)) pausedUntil.delete(workspace)
  return [...pausedUntil.keys()]
}

/** One post that this instance holds. What it became; null when that is not known, because of a bug or because the hold ran out. */
async function deliver(post: QueuedPost, at: Instant, chat: Chat, pace: Pace, ports: DrainPorts): Promise<PostState | null> {
  try {
    const change = await fate(post, at, chat, pace, ports)
    // Another instance has it by now, and will say what became of it.
    if (change === null) return null
    await ports.outbox.settle(post.workspace, post.key, change)
    return change.state
  } catch (error) {
    if (error instanceof StoreError) throw error
    ports.note({ workspace: post.workspace, key: post.key, why: 'bug', detail: null }, error)
    return null
  }
}
