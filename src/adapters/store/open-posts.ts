import type { Instant } from '../../core/instant.js'
import { notEnded } from './not-ended.js'
import { outside } from './outside.js'
import type { Database, PostState } from './schema.js'

/** States of a post that is not ended. */
const open: readonly PostState[] = ['queued', 'sending', 'unknown']

/** Of the posts that are not ended: how many are in each state, and when the oldest was due. */
export function openPosts({ read }: Database): Promise<{ readonly byState: Readonly<Record<string, number>>; readonly oldestDueAt: Instant | null }> {
  return outside(async () => {
    const rows = await read
      .selectFrom('outbox')
      .select((of) => ['state', of.fn.countAll<number>().as('count'), of.fn.min<number>('due_at').as('due_at')])
      .where(notEnded('outbox'))
      .groupBy('state')
      .execute()
    const byState = { ...Object.fromEntries(open.map((state) => [state, 0])), ...Object.fromEntries(rows.map(({ state, count }) => [state, count])) }
    return { byState, oldestDueAt: rows.length === 0 ? null : Math.min(...rows.map((row) => row.due_at)) }
  })
}
