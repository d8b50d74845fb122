import type { Changes } from './changes.js'
import type { Journal } from './journal.js'
import type { RoomMessage } from './types.js'

export interface Messages {
  /** A new ts, later than every one before it. */
  readonly nextTs: () => string
  readonly put: (message: RoomMessage) => RoomMessage
  readonly remove: (channel: string, ts: string) => void
  readonly get: (channel: string, ts: string) => RoomMessage | null
  /** By ts, oldest first. */
  readonly of: (channel: string) => readonly RoomMessage[]
  readonly changedSince: (channel: string, seq: number) => readonly RoomMessage[]
  readonly removedSince: (channel: string, seq: number) => readonly string[]
}

interface Row {
  readonly message: RoomMessage
  readonly seq: number
}

/** What stands in the channels. Only what everyone sees is kept: a message for one person is lost with the process. */
export function createMessages(journal: Journal, changes: Changes, now: () => number): Messages {
  const channels = new Map<string, Map<string, Row>>()
  const removed: { readonly channel: string; readonly ts: string; readonly seq: number }[] = []
  const rows = (channel: string) => channels.get(channel) ?? channels.set(channel, new Map()).get(channel) ?? new Map<string, Row>()
  let last = 0
  const set = (message: RoomMessage, seq: number) => {
    last = Math.max(last, micros(message.ts))
    rows(message.channel).set(message.ts, { message, seq })
  }
  for (const line of journal.lines) {
    if (line.op === 'message') set(line.message, 1)
    if (line.op === 'remove') rows(line.channel).delete(line.ts)
  }
  return {
    nextTs: () => {
      last = Math.max(last + 1, Math.round(now() * 1000))
      return `${Math.floor(last / 1e6)}.${String(last % 1e6).padStart(6, '0')}`
    },
    put: (message) => {
      if (message.onlyFor === null) journal.add({ op: 'message', message })
      set(message, changes.bump())
      return message
    },
    remove: (channel, ts) => {
      const row = rows(channel).get(ts)
      if (row === undefined) return
      if (row.message.onlyFor === null) journal.add({ op: 'remove', channel, ts })
      rows(channel).delete(ts)
      removed.push({ channel, ts, seq: changes.bump() })
    },
    get: (channel, ts) => rows(channel).get(ts)?.message ?? null,
    of: (channel) => [...rows(channel).values()].map((row) => row.message),
    changedSince: (channel, seq) => [...rows(channel).values()].filter((row) => row.seq > seq).map((row) => row.message),
    removedSince: (channel, seq) => removed.filter((gone) => gone.channel === channel && gone.seq > seq).map((gone) => gone.ts)
  }
}

/** A ts as whole microseconds; exact below 2^53. */
function micros(ts: string): number {
  const [seconds = '0', rest = '0'] = ts.split('.')
  return Number(seconds) * 1e6 + Number(rest)
}

/** Same length on both sides, so that texts compare as numbers do. */
export function laterThan(ts: string, than: string): boolean {
  return micros(ts) > micros(than)
}
