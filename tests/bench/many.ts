import { openPostgres } from '../../src/adapters/store/open-postgres.js'
import { insertRows } from '../../src/adapters/store/tables.js'
import { firstPrev } from '../../src/core/log/entry.js'
import { defaultSettings } from '../../src/core/site.js'
import { startChatService } from '../campaign/many/chat-service.js'
import { sharedClock } from '../campaign/many/clock.js'
import { commandOf, say } from '../campaign/many/crew.js'
import { startFleet } from '../campaign/many/fleet.js'
import { seeded } from '../support/random-log.js'
import { botToken, secret } from '../support/slack.js'
import type { BenchResult } from './rules.js'

const sites = 200
const atOnce = 16

/** `/spray` with readings over signed HTTP, 16 at once, acknowledged by 1, 2 and 4 servers of one PostgreSQL; what limits it is said. */
export async function benchMany(urlOf: (name: string) => Promise<string>, count = 400): Promise<readonly BenchResult[]> {
  const rates: { readonly instances: number; readonly perS: number }[] = []
  for (const instances of [1, 2, 4]) rates.push({ instances, perS: await rateOf(await urlOf(`bench${instances}`), instances, count) })
  const one = rates[0]?.perS ?? Number.NaN
  return rates.map(({ instances, perS }) => ({
    name: `/spray on PostgreSQL, ${instances} server${instances === 1 ? '' : 's'}, ${atOnce} at once: ${perS.toFixed(0)}/s (two cores shared with client and database limit it)`,
    peer: 'the same with one server, in the same run',
    value: perS / one,
    bar: Number.POSITIVE_INFINITY,
    ok: perS > 0
  }))
}

async function rateOf(url: string, instances: number, count: number): Promise<number> {
  const clock = sharedClock(1)
  const service = await startChatService(clock, seeded(1))
  const database = await openPostgres(url)
  const base = { ...defaultSettings, lat: 50, lon: 8, zone: 'UTC', posts: [] }
  const rows = Array.from({ length: sites }, (_, n) => ({
    workspace: 'T0',
    site: `s${n}`,
    base: JSON.stringify(base),
    channel: `C${n}`,
    seq: 0,
    hash: firstPrev
  }))
  await insertRows(database.write, { table: 'sites', rows })
  const env = { DATABASE_URL: url, SLACK_BOT_TOKEN: botToken, SLACK_SIGNING_SECRET: secret, SLACK_API_URL: service.apiUrl }
  const fleet = await startFleet({ count: instances, clock, beatMs: 60_000, downMs: 0, env })
  const random = seeded(2)
  const run = async (from: number, many: number) => {
    let next = from
    const worker = async () => {
      while (next < from + many) await say(commandOf(next++, sites, random), clock, fleet.up, random)
    }
    await Promise.all(Array.from({ length: atOnce }, worker))
  }
  try {
    await run(0, Math.ceil(count / 4))
    const start = performance.now()
    await run(count, count)
    return (count / (performance.now() - start)) * 1000
  } finally {
    await fleet.stop()
    await database.close()
    await service.close()
  }
}
