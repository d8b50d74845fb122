import type { Outbox, QueuedPost } from '../../src/bot/chat-ports.js'

interface Row {
  readonly post: QueuedPost
  state: QueuedPost['state']
  nextAt: number
  heldUntil: number
}

/**
 * So many posts, each for a channel of its own, in turn for some workspaces, all due at an instant: an outbox in memory for simulations of
 * thousands, of which the one in the store would take minutes. The tests of `outbox-table` hold what the real one does.
 */
export function memoryOutbox(count: number, workspaces: readonly string[], dueAt: number): Outbox {
  const rows: Row[] = Array.from({ length: count }, (_, n) => {
    const workspace = workspaces[n % workspaces.length] ?? ''
    const key = String(n).padStart(6, '0')
    const post: QueuedPost = {
      workspace,
      key,
      site: key,
      kind: 'morning',
      channel: `C${n}`,
      dueAt,
      payload: { text: 'GO', blocks: [] },
      state: 'queued',
      attempts: 0,
      messageTs: null,
      createdAt: dueAt
    }
    return { post, state: 'queued', nextAt: 0, heldUntil: 0 }
  })
  const byKey = new Map(rows.map((row) => [`${row.post.workspace} ${row.post.key}`, row]))
  let open = rows
  return {
    take: async (now, holdUntil, most, except = []) => {
      open = open.filter(({ state }) => state !== 'sent')
      const taken: Row[] = []
      for (const row of open) {
        if (taken.length >= most) break
        if (row.heldUntil <= now && row.nextAt <= now && !except.includes(row.post.workspace)) taken.push(row)
      }
      for (const row of taken) row.heldUntil = holdUntil
      return taken.map(({ post, state }) => ({ ...post, state }))
    },
    renew: async () => true,
    settle: async (workspace, key, { state, nextAt }) => {
      Object.assign(byKey.get(`${workspace} ${key}`) as Row, { state, nextAt, heldUntil: 0 })
    },
    post: async (workspace, key) => byKey.get(`${workspace} ${key}`)?.post ?? null,
    skipQueued: async () => [],
    untold: async () => []
  }
}
