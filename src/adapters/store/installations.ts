import { StoreError } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import { fromText, plain, toText } from './codec.js'
import { notEnded } from './not-ended.js'
import { outside } from './outside.js'
import type { Database, InstallationTable, Queries } from './schema.js'
import type { Sealer } from './sealing.js'

/** A workspace that installed the app, and who the bot is there. */
export interface Installed {
  readonly workspace: string
  readonly botToken: string
  readonly botId: string
  readonly botUserId: string
}

/** The workspaces that installed the app. Tokens are sealed about their workspace: one moved to another's row opens nothing. */
export interface Installations {
  /** Null: not installed. Throws StoreError where no key opens the token. */
  find(workspace: string): Promise<Installed | null>
  save(installed: Installed, at: Instant): Promise<void>
  /** Takes the token and what was still to be posted away, unless it was installed after `at`; whether it is gone. */
  remove(workspace: string, at: Instant): Promise<boolean>
  all(): Promise<ReadonlySet<string>>
  /** Seals with the newest key what an older one sealed. How many rows there are, and whose token no key opens. */
  reseal(): Promise<{ readonly count: number; readonly closed: readonly string[] }>
}

export function installations({ read, write }: Database, sealer: Sealer): Installations {
  return {
    find: (workspace) => outside(() => find(read, sealer, workspace)),
    save: (installed, at) => outside(() => save(write, sealer, installed, at)),
    remove: (workspace, at) => outside(() => write.transaction().execute((trx) => remove(trx, workspace, at))),
    all: () => outside(async () => new Set((await read.selectFrom('installations').select('workspace').execute()).map((row) => row.workspace))),
    reseal: () => outside(() => reseal(write, sealer))
  }
}

async function find(db: Queries, sealer: Sealer, workspace: string): Promise<Installed | null> {
  const row = await db.selectFrom('installations').selectAll().where('workspace', '=', workspace).executeTakeFirst()
  if (row === undefined) return null
  const opened = openRow(sealer, row)
  if (opened === null) throw new StoreError(`no key of SEAMHAND_TOKEN_KEY opens the token of workspace ${workspace}`)
  return opened
}

async function save(db: Queries, sealer: Sealer, { workspace, botToken, botId, botUserId }: Installed, at: Instant): Promise<void> {
  const sealed = sealer.seal(aboutOf(workspace), toText({ botToken, botId, botUserId }))
  await db
    .insertInto('installations')
    .values({ workspace: plain(workspace), sealed, installed_at: at })
    .onConflict((conflict) => conflict.column('workspace').doUpdateSet({ sealed, installed_at: at }))
    .execute()
}

async function remove(db: Queries, workspace: string, at: Instant): Promise<boolean> {
  await db.deleteFrom('installations').where('workspace', '=', workspace).where('installed_at', '<=', at).execute()
  const left = await db.selectFrom('installations').select('workspace').where('workspace', '=', workspace).executeTakeFirst()
  if (left !== undefined) return false
  await db.updateTable('outbox').set({ state: 'skipped', claimed_until: null }).where('workspace', '=', workspace).where(notEnded('outbox')).execute()
  return true
}

async function reseal(db: Queries, sealer: Sealer): ReturnType<Installations['reseal']> {
  const rows = await db.selectFrom('installations').selectAll().orderBy('workspace').execute()
  const closed: string[] = []
  for (const row of rows) {
    const opened = openRow(sealer, row)
    if (opened === null) closed.push(row.workspace)
    else if (!sealer.isNewest(row.sealed)) {
      const { workspace, botToken, botId, botUserId } = opened
      const sealed = sealer.seal(aboutOf(workspace), toText({ botToken, botId, botUserId }))
      // Only what is still there as it was read: it may be installed anew or taken away meanwhile.
      await db.updateTable('installations').set({ sealed }).where('workspace', '=', workspace).where('sealed', '=', row.sealed).execute()
    }
  }
  return { count: rows.length, closed }
}

function openRow(sealer: Sealer, { workspace, sealed }: Pick<InstallationTable, 'workspace' | 'sealed'>): Installed | null {
  const text = sealer.open(aboutOf(workspace), sealed)
  return text === null ? null : { workspace, ...fromText<Omit<Installed, 'workspace'>>(text) }
}

function aboutOf(workspace: string): string {
  return `installation of ${workspace}`
}
