import { readSheets } from '../../src/adapters/limits/files.js'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import { createStore, type StoreExtras } from '../../src/adapters/store/store.js'
import { sampleWeather } from '../../src/adapters/weather/index.js'
import type { Lang, Units } from '../../src/bot/answer.js'
import type { Ports } from '../../src/bot/context.js'
import type { Store } from '../../src/bot/ports.js'
import { createTalk } from '../../src/bot/talk/create-talk.js'
import type { Delivery, Talk } from '../../src/bot/talk/talk.js'
import { draw } from '../../src/wiring/papers.js'
import { freshFolder } from './seamhand.js'

export interface Talking {
  readonly talk: Talk
  readonly store: Store & StoreExtras
  readonly bugs: unknown[]
  delivery(part?: Partial<Delivery>): Delivery
  close(): Promise<void>
}

/** 10:00 in Berlin, a Monday. */
export const morningAt = Date.parse('2026-05-04T08:00:00Z') / 1000

/** The bot as a transport meets it, on a fresh store with the demo site in channel C1, the invented week above it. */
export async function startTalking(broken: Partial<Store> = {}): Promise<Talking> {
  const database = await openSqlite(freshFolder(), { server: false })
  const store = createStore(database)
  const bugs: unknown[] = []
  const report = (error: unknown) => {
    bugs.push(error)
    return `ref${bugs.length}`
  }
  const ports: Ports = {
    store: { ...store, ...broken },
    weather: sampleWeather(),
    sheets: readSheets(null),
    draw,
    lang: 'en',
    units: 'metric',
    report
  }
  const talk = createTalk(ports, {
    siteOfChannel: async (_workspace, channel) => (channel === 'C1' ? 'demo' : store.siteOfChannel('local', channel))
  })
  let count = 0
  return {
    talk,
    store,
    bugs,
    delivery: (part = {}) => {
      count += 1
      return {
        workspace: 'local',
        user: 'U1',
        channel: 'C1',
        via: 'slack',
        at: morningAt,
        claim: `delivery-${count}`,
        lang: null,
        units: null,
        ...part
      }
    },
    close: () => store.close()
  }
}

export const everyHow: readonly { lang: Lang; units: Units }[] = (['en', 'es', 'fr'] as const).flatMap((lang) =>
  (['metric', 'us'] as const).map((units) => ({ lang, units }))
)
