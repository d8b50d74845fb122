import type { Readings } from '../adapters/http/counted.js'
import type { Health } from '../adapters/http/health.js'
import { within } from '../adapters/slack/work.js'
import { openPosts } from '../adapters/store/open-posts.js'
import type { Database } from '../adapters/store/schema.js'
import type { Instant } from '../core/instant.js'

const lookMs = 2000

/** What is read of store and parts when somebody looks at the metrics. */
export function readings(database: Database, health: Health, now: () => Instant): Readings {
  const look = async () => {
    const found = await within(
      openPosts(database).catch(() => null),
      lookMs
    )
    return found === 'late' ? null : found.value
  }
  return {
    outbox: async () => (await look())?.byState ?? null,
    overdueS: async () => {
      const found = await look()
      return found === null ? null : Math.max(0, now() - (found.oldestDueAt ?? now()))
    },
    ready: async () => {
      const [store, outbox] = await Promise.all([health.store(), health.outbox()])
      return { store, chat: health.chat(), weather: health.weather(), outbox }
    }
  }
}
