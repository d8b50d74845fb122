import type { Kept, SiteView, Store } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import { firstPrev } from '../../core/log/entry.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { again } from './again.js'
import { append } from './append.js'
import { keptReply } from './claims.js'
import { plain } from './codec.js'
import type { RawRow } from './entries.js'
import { keptRows, rawRows } from './entries.js'
import { fixed } from './fixed.js'
import { readKeepsake } from './keepsakes.js'
import { sql } from './kysely.js'
import { around, outside } from './outside.js'
import { claimSupervisor, forgetPerson, lockRoles, nameRole, readPerson, readSupervisor, readSupervisors, writePerson } from './people.js'
import type { Database, Queries } from './schema.js'
import { insertSite, siteRow, siteView } from './view.js'

/** What verify, export and move need besides. */
export interface StoreExtras {
  /** Every site of every workspace, in order. */
  allSites(): Promise<readonly SiteKey[]>
  entriesCount(key: SiteKey): Promise<number>
  /** Entries as they lie in the store, in slices: not parsed, so that a damaged one can be read too. */
  exportRows(key: SiteKey, afterSeq: number, count: number): Promise<readonly RawRow[]>
  /**
   * Reads a site as it is at one moment, however long it takes and whoever writes beside it. On SQLite other reads of this
   * process wait meanwhile. Null: no such site.
   */
  snapshot<T>(key: SiteKey, read: (snapshot: Snapshot) => Promise<T>): Promise<T | null>
  /**
   * Forgets who a person is; the log keeps the id. False: nothing was known; null: the only supervisor, and no successor.
   */
  forget(workspace: string, id: string, successor: string | null): Promise<boolean | null>
}

/** A site at one moment. */
export interface Snapshot {
  readonly view: SiteView
  rows(afterSeq: number, count: number): Promise<readonly RawRow[]>
}

/** The store over an open database (`openSqlite`, `openPostgres`); `close` closes it. */
export function createStore(db: Database): Store & StoreExtras {
  const { read, write } = db
  // What only reads, or writes the same thing twice, may be done again while another server takes over.
  const safely = <T>(run: () => Promise<T>) => again(db.kind, () => outside(run))
  return {
    sites: (workspace) => safely(() => siteNames(read, workspace)),
    view: (key) => safely(() => openView(read, key)),
    createSite: (key, base) => outside(() => makeSite(write, key, base)),
    append: (key, loggedAt, claim, compose) => append(db, key, loggedAt, claim, compose),
    entries: (key, afterSeq, count): Promise<readonly Kept[]> => safely(() => keptRows(read, key, afterSeq, count)),
    keepsake: (workspace, sha256) => safely(() => readKeepsake(read, workspace, sha256)),
    person: (workspace, id) => safely(() => readPerson(read, workspace, id)),
    savePerson: (workspace, id, change) => safely(() => write.transaction().execute((trx) => writePerson(trx, workspace, id, change))),
    keptReply: (workspace, claim) => safely(() => keptReply(read, workspace, claim)),
    givenUp: (workspace, dueSince, count) => safely(() => givenUp(read, workspace, dueSince, count)),
    supervisors: (workspace) => safely(() => readSupervisors(read, workspace)),
    hasSupervisor: (workspace) => safely(() => readSupervisor(read, workspace)),
    claimSupervisor: (workspace, id) => safely(() => overRoles(db, workspace, (trx) => claimSupervisor(trx, workspace, id))),
    nameRole: (workspace, id, role) => safely(() => overRoles(db, workspace, (trx) => nameRole(trx, workspace, id, role))),
    siteOfChannel: (workspace, channel) => safely(() => siteOfChannel(read, workspace, channel)),
    close: () => outside(() => db.close()),
    allSites: () => outside(() => read.selectFrom('sites').select(['workspace', 'site']).orderBy('workspace').orderBy('site').execute()),
    entriesCount: (key) => outside(() => countEntries(read, key)),
    exportRows: (key, afterSeq, count) => outside(() => rawRows(read, key, afterSeq, count)),
    snapshot: (key, look) => snapshot(db, key, look),
    forget: (workspace, id, successor) => outside(() => overRoles(db, workspace, (trx) => forgetPerson(trx, workspace, id, successor)))
  }
}

/** Alone with the roles of a workspace: of two who would be its first supervisor, or who take the last one away, one waits. */
function overRoles<T>({ kind, write }: Database, workspace: string, run: (db: Queries) => Promise<T>): Promise<T> {
  return write.transaction().execute(async (trx) => {
    await lockRoles(trx, kind, workspace)
    return run(trx)
  })
}

async function givenUp(db: Queries, workspace: string, dueSince: Instant, count: number) {
  const dead = db.selectFrom('outbox').select(['site', 'kind', 'key']).where('workspace', '=', workspace).where(sql<boolean>`outbox.state = 'dead'`)
  return dead.where('due_at', '>=', dueSince).orderBy('due_at', 'desc').orderBy('key').limit(count).execute()
}

async function siteNames(db: Queries, workspace: string): Promise<readonly string[]> {
  const rows = await db.selectFrom('sites').select('site').where('workspace', '=', workspace).orderBy('site').execute()
  return rows.map((row) => row.site)
}

const sitesOfChannel = fixed<[string, string], { site: string }>((db, workspace, channel) =>
  db.selectFrom('sites').select('site').where('workspace', '=', workspace).where('channel', '=', channel).orderBy('site').limit(1)
)

async function siteOfChannel(db: Queries, workspace: string, channel: string): Promise<string | null> {
  const [row] = await sitesOfChannel(db, workspace, channel)
  return row?.site ?? null
}

function makeSite(db: Queries, key: SiteKey, base: SiteSettings): Promise<boolean> {
  const named = { workspace: plain(key.workspace), site: plain(key.site) }
  return db.transaction().execute((trx) => insertSite(trx, named, base, firstPrev))
}

async function openView(db: Queries, key: SiteKey): Promise<SiteView | null> {
  const row = await siteRow(db, key, false)
  return row && siteView(db, row)
}

async function countEntries(db: Queries, { workspace, site }: SiteKey): Promise<number> {
  const counted = db.selectFrom('entries').select((count) => count.fn.countAll<number>().as('entries'))
  return (await counted.where('workspace', '=', workspace).where('site', '=', site).executeTakeFirstOrThrow()).entries
}

function snapshot<T>(db: Database, key: SiteKey, read: (snapshot: Snapshot) => Promise<T>): Promise<T | null> {
  const start = db.read.transaction()
  const isolated = db.kind === 'postgres' ? start.setIsolationLevel('repeatable read') : start
  return around(read, (reading) =>
    isolated.execute(async (trx) => {
      const view = await openView(trx, key)
      return view && reading({ view, rows: (afterSeq, count) => outside(() => rawRows(trx, key, afterSeq, count)) })
    })
  )
}
