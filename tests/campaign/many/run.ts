import { openPostgres } from '../../../src/adapters/store/open-postgres.js'
import type { Database } from '../../../src/adapters/store/schema.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { insertRows } from '../../../src/adapters/store/tables.js'
import { verifySite } from '../../../src/bot/verify.js'
import { firstPrev } from '../../../src/core/log/entry.js'
import { defaultSettings } from '../../../src/core/site.js'
import { seeded } from '../../support/random-log.js'
import { botToken, secret } from '../../support/slack.js'
import { type ChatService, startChatService } from './chat-service.js'
import { type SharedClock, sharedClock } from './clock.js'
import { type Acknowledged, commandOf, say } from './crew.js'
import { type Fleet, startFleet } from './fleet.js'

export interface Plan {
  readonly url: string
  readonly seed: number
  readonly instances: number
  readonly commands: number
  /** As many posts. */
  readonly sites: number
  /** Times as fast as ours. */
  readonly speed: number
  readonly beatMs: number
  /** Between one time that two are killed and the next. */
  readonly killEveryMs: number
  readonly downMs: number
  /** Minutes of the shared clock over which the posts come due. */
  readonly spreadMin: number
  readonly atOnce: number
  /** Told how it goes. */
  readonly note: (line: string) => void
}

export interface Outcome {
  readonly acknowledged: number
  readonly resent: number
  readonly kills: number
  readonly entries: number
  /** Acknowledged, and not in the store as it was said. */
  readonly lost: readonly string[]
  /** Entries that no claim accounts for: a command that took effect twice. */
  readonly unaccounted: number
  readonly brokenChains: readonly string[]
  readonly postsShown: number
  readonly postsLost: readonly string[]
  readonly postsDoubled: readonly string[]
  readonly faults: Readonly<Record<string, number>>
  readonly exits: readonly (number | null)[]
  readonly seconds: number
}

/** Commands and posts together on several instances of one PostgreSQL, two of which are killed again and again. */
export async function runMany(plan: Plan): Promise<Outcome> {
  const random = seeded(plan.seed)
  const database = await openPostgres(plan.url)
  const clock = sharedClock(plan.speed)
  await makeSites(database, plan)
  const service = await startChatService(clock, seeded(plan.seed + 1))
  const start = Date.now()
  const fleet = await startFleet({
    count: plan.instances,
    clock,
    beatMs: plan.beatMs,
    downMs: plan.downMs,
    env: { DATABASE_URL: plan.url, SLACK_BOT_TOKEN: botToken, SLACK_SIGNING_SECRET: secret, SLACK_API_URL: service.apiUrl }
  })
  const killing = setInterval(() => killTwo(fleet, plan.instances, random), plan.killEveryMs)
  try {
    const acknowledged = await sayAll(plan, clock, fleet, random)
    plan.note(`${acknowledged.length} commands acknowledged after ${Math.round((Date.now() - start) / 1000)} s, ${fleet.kills()} kills`)
    await postsOver(database, service, plan, () => clearInterval(killing))
    const exits = await fleet.stop()
    return {
      ...(await judge(database, service, plan, acknowledged)),
      kills: fleet.kills(),
      exits,
      faults: service.faults,
      seconds: (Date.now() - start) / 1000
    }
  } finally {
    clearInterval(killing)
    await fleet.stop()
    await service.close()
    await database.close()
  }
}

async function makeSites(database: Database, { sites, spreadMin }: Plan): Promise<void> {
  const rows = Array.from({ length: sites }, (_, index) => {
    const channel = `C${index}`
    const morning = `05:${String(30 + (index % spreadMin)).padStart(2, '0')}`
    const base = { ...defaultSettings, lat: 50, lon: 8, zone: 'UTC', days: [1, 2, 3, 4, 5, 6, 7], posts: ['morning'], morning, channel }
    return { workspace: 'T0', site: `s${index}`, base: JSON.stringify(base), channel, seq: 0, hash: firstPrev }
  })
  await database.write.transaction().execute((trx) => insertRows(trx, { table: 'sites', rows }))
  await createStore(database).savePerson('T0', 'U1', { role: 'supervisor' })
}

/** Two of those that are up, once all are. */
function killTwo(fleet: Fleet, instances: number, random: () => number): void {
  if (fleet.up().length < instances) return
  for (let n = 0; n < 2; n += 1) fleet.kill(Math.floor(random() * instances))
}

async function sayAll(plan: Plan, clock: SharedClock, fleet: Fleet, random: () => number): Promise<readonly (Acknowledged & { tries: number })[]> {
  const done: (Acknowledged & { tries: number })[] = []
  let next = 0
  async function one(): Promise<void> {
    while (next < plan.commands) {
      const n = next
      next += 1
      done.push(await say(commandOf(n, plan.sites, random), clock, fleet.up, random))
      if (done.length % 1000 === 0) plan.note(`${done.length} acknowledged, ${fleet.kills()} kills`)
    }
  }
  await Promise.all(Array.from({ length: plan.atOnce }, one))
  return done
}

/** Waits for the posts; the last of them without kills, so that there is an end to it. */
async function postsOver(database: Database, service: ChatService, { sites, note }: Plan, calm: () => void): Promise<void> {
  for (let tries = 0; tries < 36_000; tries += 1) {
    const shown = service.shown().size
    if (shown > sites * 0.97) calm()
    const open = await database.read
      .selectFrom('outbox')
      .select((count) => count.fn.countAll<number>().as('count'))
      .where('workspace', '=', 'T0')
      .where('state', 'not in', ['sent', 'skipped', 'dead'])
      .executeTakeFirstOrThrow()
    if (shown >= sites && open.count === 0) return
    if (tries % 300 === 0) note(`${shown} posts shown, ${open.count} open`)
    await new Promise((wait) => setTimeout(wait, 100))
  }
}

/** The stored answer of a claim; of a post's it is a text. */
type Answered = { readonly text?: string; readonly logged?: readonly string[]; readonly decision?: string | null } | null

function idsOf(reply: Answered): readonly string[] {
  if (typeof reply !== 'object' || reply === null) return []
  return [...(reply.logged ?? []), ...(reply.decision == null ? [] : [reply.decision])]
}

async function judge(database: Database, service: ChatService, { sites }: Plan, acknowledged: readonly (Acknowledged & { tries: number })[]) {
  const store = createStore(database)
  const claims = await database.read.selectFrom('claims').select(['key', 'reply']).where('workspace', '=', 'T0').execute()
  const replies = new Map(claims.map(({ key, reply }) => [key, JSON.parse(reply) as Answered]))
  const kept = await database.read.selectFrom('entries').select(['site', 'seq']).where('workspace', '=', 'T0').execute()
  const ids = new Set(kept.map(({ site, seq }) => `${site}-${seq}`))
  const lost = acknowledged.filter(({ trigger, text }) => {
    const reply = replies.get(`command:${trigger}`)
    return reply === undefined || reply?.text !== text || idsOf(reply).length < 2 || !idsOf(reply).every((id) => ids.has(id))
  })
  const accounted = new Set([...replies.values()].flatMap(idsOf))
  const brokenChains: string[] = []
  for (const site of new Set(kept.map((row) => row.site))) {
    const verdict = await verifySite(store, { workspace: 'T0', site }, [])
    if (verdict === null || verdict.firstBad !== null) brokenChains.push(`${site} ${JSON.stringify(verdict?.firstBad)}`)
  }
  const shown = service.shown()
  const wanted = (await database.read.selectFrom('outbox').select('key').where('workspace', '=', 'T0').execute()).map(({ key }) => key)
  return {
    acknowledged: acknowledged.length,
    resent: acknowledged.filter(({ tries }) => tries > 1).length,
    entries: kept.length,
    lost: lost.map(({ trigger }) => trigger),
    unaccounted: [...ids].filter((id) => !accounted.has(id)).length,
    brokenChains,
    postsShown: shown.size,
    postsLost: [
      ...wanted.filter((key) => !shown.has(key)),
      ...Array.from({ length: Math.max(0, sites - wanted.length) }, (_, n) => `never queued ${n}`)
    ],
    postsDoubled: [...shown].filter(([, count]) => count > 1).map(([key]) => key)
  }
}
