import { type Installations, installations } from '../adapters/store/installations.js'
import type { Database } from '../adapters/store/schema.js'
import { createSealer } from '../adapters/store/sealing.js'
import type { Slots } from '../bot/chat-ports.js'
import { ConfigError } from '../config.js'

/** Of the log, what is needed here. */
interface Log {
  error(fields: object, message: string): void
}

/** The book of installations, all sealed with the newest key. Throws a ConfigError where no key opens any of them. */
export async function bookOf(database: Database, keys: readonly Buffer[], log: Log): Promise<Installations> {
  const book = installations(database, createSealer(keys))
  const { count, closed } = await book.reseal()
  if (closed.length > 0 && closed.length === count) throw new ConfigError(`SEAMHAND_TOKEN_KEY: opens none of the ${count} tokens of the store`)
  for (const workspace of closed) log.error({ workspace }, 'no key of SEAMHAND_TOKEN_KEY opens its token: it must be installed again')
  return book
}

/** Slots of the workspaces that have the app: nothing is queued for one that threw it out. */
export function installedOnly(slots: Slots, book: Pick<Installations, 'all'>): Slots {
  return {
    ...slots,
    keptSites: async () => {
      const here = await book.all()
      return (await slots.keptSites()).filter(({ key }) => here.has(key.workspace))
    }
  }
}
