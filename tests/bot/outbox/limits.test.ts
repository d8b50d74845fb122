import { describe, expect, test } from 'vitest'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { outboxTable } from '../../../src/adapters/store/outbox-table.js'
import { createStore } from '../../../src/adapters/store/store.js'
import type { Chat, Outbox } from '../../../src/bot/chat-ports.js'
import { drain } from '../../../src/bot/outbox/drain.js'
import { draw } from '../../../src/wiring/papers.js'
import { batch, demo } from '../../adapters/store/drafts.js'
import { temporaryFolder } from '../../support/databases.js'
import { iso } from '../../support/instant.js'
import { memoryOutbox } from '../../support/memory-outbox.js'

const folder = temporaryFolder()
const at = iso('2026-05-04T03:30:00Z')

interface Service {
  readonly chat: Chat
  readonly calls: () => number
  readonly limited: () => number
}

/**
 * A service that takes so many messages a minute of a workspace and one a second of a channel, each answered after 0.2 s while 16
 * are under way. Source: the service's page on rate limits says one message a second a channel and several hundred a minute a
 * workspace; the number of 300 is made up within that.
 */
function serviceOf(clock: { now: number }, perMinute: number): Service {
  const takenOf = new Map<string, number[]>()
  const lastOf = new Map<string, number>()
  const seen = { calls: 0, limited: 0 }
  const post: Chat['post'] = async ({ workspace, channel }) => {
    seen.calls += 1
    const taken = takenOf.get(workspace) ?? []
    takenOf.set(workspace, taken)
    clock.now += 0.2 / 16
    while ((taken[0] ?? clock.now) < clock.now - 60) taken.shift()
    const tooSoon = clock.now - (lastOf.get(`${workspace} ${channel}`) ?? Number.NEGATIVE_INFINITY) < 0.9
    if (taken.length >= perMinute || tooSoon) {
      seen.limited += 1
      return { kind: 'later', afterS: tooSoon ? 1 : Math.max(1, Math.ceil((taken[0] ?? 0) + 60 - clock.now)) }
    }
    taken.push(clock.now)
    lastOf.set(`${workspace} ${channel}`, clock.now)
    return { kind: 'sent', ts: `${seen.calls}.0` }
  }
  return {
    chat: { post, edit: async (_message, ts) => ({ kind: 'sent', ts }), find: async () => ({ kind: 'absent' }) },
    calls: () => seen.calls,
    limited: () => seen.limited
  }
}

interface Drained {
  readonly minutes: number
  readonly service: Service
}

/** So many posts of the local workspace in the embedded store. */
async function minutesFor(posts: number, channels: number, perMinute: number): Promise<Drained> {
  const database = await openSqlite(`${folder()}/${posts}-${channels}`, { server: false })
  const queued = Array.from({ length: posts }, (_, n) => ({
    key: `${String(n).padStart(6, '0')}`,
    site: 'demo',
    kind: 'morning',
    channel: `C${n % channels}`,
    dueAt: at,
    payload: { text: 'GO', blocks: [] }
  }))
  await createStore(database).append(demo, at, null, async () => batch({ posts: queued, reply: 1 }))
  const drained = await drainAll(outboxTable(database), posts, perMinute)
  await database.close()
  return drained
}

/** Drains by ticks a minute apart on a clock of its own; minutes until all is sent. */
async function drainAll(outbox: Outbox, posts: number, perMinute: number): Promise<Drained> {
  const clock = { now: at }
  const service = serviceOf(clock, perMinute)
  const wait = async (seconds: number) => {
    clock.now += seconds
  }
  const pausedUntil = new Map<string, number>()
  let sent = 0
  let ticks = 0
  for (; sent < posts && ticks < 200; ticks += 1) {
    clock.now = Math.max(clock.now, at + ticks * 60)
    const now = Math.floor(clock.now)
    const drained = await drain(now, {
      outbox,
      chat: service.chat,
      channelOf: () => null,
      clock: () => Math.floor(clock.now),
      wait,
      note: () => undefined,
      draw,
      pausedUntil
    })
    sent += drained.sent.length
  }
  return { minutes: (clock.now - at) / 60, service }
}

describe('the queue at the limits of the service', () => {
  test('a workspace of 600 channels at 300 messages a minute: within a tick of what the limit allows, few calls for nothing', async () => {
    const { minutes, service } = await minutesFor(600, 600, 300)
    expect(minutes).toBeLessThanOrEqual(600 / 300 + 1)
    expect(service.calls() - service.limited()).toBe(600)
    // At most what was under way when the limit was met, each time.
    expect(service.limited()).toBeLessThanOrEqual(16 * Math.ceil(600 / 300))
  })

  test('10,000 channels of one workspace: the limit itself, and some sixteen calls for nothing each time it is met', async () => {
    const { minutes, service } = await drainAll(memoryOutbox(10_000, ['T1'], at), 10_000, 300)
    expect(minutes).toBeGreaterThanOrEqual(10_000 / 300 - 1)
    expect(minutes).toBeLessThanOrEqual(10_000 / 300 + 1)
    expect(service.calls() - service.limited()).toBe(10_000)
    // A window that opens bit by bit is met a few times more often than once a minute.
    expect(service.limited()).toBeLessThanOrEqual(16 * 1.2 * Math.ceil(10_000 / 300))
  })

  test('10,000 channels of four workspaces: each told by its own Retry-After, none held up by the limit of another', async () => {
    const { minutes, service } = await drainAll(memoryOutbox(10_000, ['T1', 'T2', 'T3', 'T4'], at), 10_000, 300)
    expect(minutes).toBeLessThanOrEqual(2500 / 300 + 1)
    expect(service.calls() - service.limited()).toBe(10_000)
    expect(service.limited()).toBeLessThanOrEqual(4 * 16 * Math.ceil(2500 / 300))
  })

  test('one channel of 30 messages: one a second, none refused', async () => {
    const { minutes, service } = await minutesFor(30, 1, 300)
    expect(minutes).toBeGreaterThanOrEqual(29 / 60)
    expect(minutes).toBeLessThanOrEqual(1.5)
    expect(service.limited()).toBe(0)
  })
})
