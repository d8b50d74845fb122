import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import type { Slot } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { toJson, toJsonObject } from '../json.js'
import { type SiteView, StoreError } from '../ports.js'
import { type PostKind, posts } from './index.js'
import { readSite, type WeatherOn, weatherOn } from './on-site.js'
import type { PostOn, Written } from './post.js'
import type { Speaker } from './speaker.js'
import type { TickPorts } from './tick-ports.js'

/** A slot of a site that has come. */
export interface Turn {
  readonly key: SiteKey
  readonly settings: SiteSettings
  readonly seq: number
  readonly slot: Slot
  readonly stale: boolean
}

/** From so many on it is worth while to have posts put into words elsewhere. */
export const manyTurns = 50

type QueuePorts = TickPorts & Required<Pick<TickPorts, 'goOn'>>

export function claimOf({ slot }: Pick<Turn, 'slot'>): string {
  return `post/${slot.key}`
}

/**
 * Queues turns, each in a transaction of its own, one after the other; of many some are put into words elsewhere in the meantime.
 * Those that were queued, in the order of turns. Throws only where the store fails, and then begins none any more.
 */
export async function queueTurns(turns: readonly Turn[], now: Instant, ports: QueuePorts): Promise<readonly Turn[]> {
  const speaker = turns.length > manyTurns ? (ports.speaker?.() ?? null) : null
  const done = new Set<Turn>()
  const left = turns.values()
  let ended = false
  async function lane(by: Speaker | null): Promise<void> {
    try {
      for (const turn of left) {
        if (by === null) await speaker?.letIn()
        ended ||= !(await ports.goOn())
        if (ended) break
        if (await queueOrReport(turn, now, ports, by)) done.add(turn)
      }
    } catch (error) {
      // The other lanes finish what they have begun.
      ended = true
      throw error
    }
  }
  try {
    const lanes = await Promise.allSettled([lane(null), ...Array.from({ length: speaker?.width ?? 0 }, () => lane(speaker))])
    for (const each of lanes) if (each.status === 'rejected') throw each.reason
  } finally {
    await speaker?.close()
  }
  return turns.filter((turn) => done.has(turn))
}

/** A site that fails must not silence the others: its slot is tried again at the next tick. */
async function queueOrReport(turn: Turn, now: Instant, ports: TickPorts, speaker: Speaker | null): Promise<boolean> {
  try {
    return await queue(turn, now, ports, speaker)
  } catch (error) {
    if (error instanceof StoreError) throw error
    ports.report(error, { site: turn.key.site, post: turn.slot.key })
    return false
  }
}

/** Evaluates, claims and queues in one transaction. False when another instance was quicker, or the site is gone. */
async function queue(turn: Turn, now: Instant, ports: TickPorts, speaker: Speaker | null): Promise<boolean> {
  const { key, settings, slot, stale } = turn
  const seen = stale ? null : await weatherOn(ports.weather, settings, now)
  const ahead = seen === null || speaker === null ? null : await spokenAhead(turn, now, seen, ports, speaker)
  const appended = await ports.store.append(key, now, { key: claimOf(turn) }, async (view) => {
    // What was put into words before holds as long as nothing was logged since.
    const known = ahead !== null && ahead.seq === view.head.seq ? ahead.written : null
    // A stale one is kept without words, so that it is noted once.
    const written = seen === null ? null : (known ?? posts[kindOf(turn)].speak(await siteOn(turn, view, now, seen, ports)))
    const payload = written === null ? null : payloadOf(written)
    const post = { key: slot.key, site: key.site, kind: slot.kind, channel: ports.channelOf(key, settings), dueAt: slot.dueAt, payload }
    return { drafts: [], moved: [], keepsakes: [], posts: [post], reply: toJson({ key: slot.key, brief: written?.brief ?? null }) }
  })
  return appended?.kind === 'done'
}

/** The words of a post as the site is before its transaction; null where there are none. */
async function spokenAhead(
  turn: Turn,
  now: Instant,
  seen: WeatherOn,
  ports: TickPorts,
  speaker: Speaker
): Promise<{ readonly seq: number; readonly written: Written } | null> {
  const view = await ports.store.view(turn.key)
  if (view === null) return null
  const written = await speaker.speak(kindOf(turn), await siteOn(turn, view, now, seen, ports))
  return written === null ? null : { seq: view.head.seq, written }
}

function kindOf({ slot }: Turn): PostKind {
  return slot.kind as PostKind
}

function siteOn(turn: Turn, view: SiteView, now: Instant, seen: WeatherOn, { sheets }: TickPorts): Promise<PostOn> {
  return readSite({ key: turn.key, date: turn.slot.date, now, ...seen, wants: posts[kindOf(turn)].wants }, view, sheets)
}

/** As it is kept until it is sent. Papers stay as they are: whoever draws them reads them again. */
function payloadOf({ papers, brief: _brief, ...words }: Written): Json {
  return { ...toJsonObject(words), papers: papers as unknown as Json }
}
