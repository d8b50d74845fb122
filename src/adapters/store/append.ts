import type { Appended, Batch, Claim, SiteView } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import type { SiteKey } from '../../core/site.js'
import { again } from './again.js'
import { writeBatch } from './batch.js'
import { keepReply, takeClaim } from './claims.js'
import { around, mayRetry } from './outside.js'
import type { Database, Queries } from './schema.js'
import { siteRow, siteView } from './view.js'

type Compose<Reply> = (view: SiteView) => Promise<Batch<Reply>>

const mostTries = 5

/**
 * The only writer of entries: see `Store.append`. PostgreSQL may ask for the whole transaction again (deadlock, serialization
 * failure), and another server may take over: `compose` is then called anew with what stands there now.
 */
export async function append<Reply extends Json>(
  db: Database,
  key: SiteKey,
  loggedAt: Instant,
  claim: Claim | null,
  compose: Compose<Reply>
): Promise<Appended<Reply> | null> {
  // Where the database went away while it committed, only a claim tells whether it did: without one nothing is tried again.
  return claim === null ? conflicted(db, key, loggedAt, claim, compose) : again(db.kind, () => conflicted(db, key, loggedAt, claim, compose))
}

async function conflicted<Reply extends Json>(
  db: Database,
  key: SiteKey,
  loggedAt: Instant,
  claim: Claim | null,
  compose: Compose<Reply>
): Promise<Appended<Reply> | null> {
  for (let tries = 1; tries < mostTries; tries += 1) {
    try {
      return await appendOnce(db, key, loggedAt, claim, compose)
    } catch (error) {
      if (!mayRetry(error)) throw error
    }
  }
  return appendOnce(db, key, loggedAt, claim, compose)
}

function appendOnce<Reply extends Json>(
  db: Database,
  key: SiteKey,
  loggedAt: Instant,
  claim: Claim | null,
  compose: Compose<Reply>
): Promise<Appended<Reply> | null> {
  const lock = db.kind === 'postgres'
  return around(compose, (composing) => db.write.transaction().execute((trx) => within(trx, lock, key, loggedAt, claim, composing)))
}

async function within<Reply extends Json>(
  trx: Queries,
  lock: boolean,
  key: SiteKey,
  loggedAt: Instant,
  claim: Claim | null,
  compose: Compose<Reply>
): Promise<Appended<Reply> | null> {
  const row = await siteRow(trx, key, lock)
  if (row === null) return null
  const before = claim && (await takeClaim<Reply>(trx, key.workspace, claim.key, loggedAt))
  if (before) return { kind: 'repeated', reply: before.reply }
  const batch = await compose(siteView(trx, row))
  const kept = await writeBatch(trx, key, row, loggedAt, batch)
  if (claim) await keepReply(trx, key.workspace, claim.key, batch.reply)
  return { kind: 'done', reply: batch.reply, kept }
}
