import type { CreateTableBuilder, Kysely } from 'kysely'
import { firstPrev } from '../../../core/log/entry.js'
import { demoSite } from '../../../core/site.js'
import { toText } from '../codec.js'
import { sql } from '../kysely.js'
import type { Migration } from '../migrate.js'
import type { Kind } from '../schema.js'

/** `key?`: may be null. Keys compare by code point on both databases, so order and ranges are the same. */
type Column = 'key' | 'key?' | 'text' | 'int' | 'int?'
type Columns = Readonly<Record<string, Column>>

const tables: Readonly<Record<string, { readonly primary: readonly string[]; readonly columns: Columns }>> = {
  sites: { primary: ['workspace', 'site'], columns: { workspace: 'key', site: 'key', base: 'text', channel: 'key?', seq: 'int', hash: 'key' } },
  entries: {
    primary: ['workspace', 'site', 'seq'],
    columns: {
      workspace: 'key',
      site: 'key',
      seq: 'int',
      hash: 'key',
      canonical: 'text',
      at: 'int',
      logged_at: 'int',
      author: 'key',
      type: 'key',
      subject: 'key',
      batch: 'int',
      day: 'key'
    }
  },
  touches: { primary: ['workspace', 'site', 'subject', 'seq'], columns: { workspace: 'key', site: 'key', subject: 'key', seq: 'int' } },
  states: {
    primary: ['workspace', 'site', 'subject'],
    columns: { workspace: 'key', site: 'key', subject: 'key', state: 'text', seq: 'int' }
  },
  claims: { primary: ['workspace', 'key'], columns: { workspace: 'key', key: 'key', reply: 'text', created_at: 'int' } },
  outbox: {
    primary: ['workspace', 'key'],
    columns: {
      workspace: 'key',
      key: 'key',
      site: 'key',
      kind: 'key',
      channel: 'key?',
      due_at: 'int',
      payload: 'text',
      state: 'key',
      attempts: 'int',
      next_at: 'int',
      claimed_until: 'int?',
      message_ts: 'key?',
      created_at: 'int'
    }
  },
  keepsakes: { primary: ['workspace', 'sha256'], columns: { workspace: 'key', sha256: 'key', kind: 'key', body: 'text' } },
  people: {
    primary: ['workspace', 'person'],
    columns: { workspace: 'key', person: 'key', name: 'key?', lang: 'key?', units: 'key?', role: 'key?' }
  },
  forecasts: {
    primary: ['workspace', 'cell', 'source'],
    columns: {
      workspace: 'key',
      cell: 'key',
      source: 'key',
      fetched_at: 'int',
      issued_at: 'int',
      expires_at: 'int',
      last_modified: 'key?',
      forecast: 'text'
    }
  },
  hours: { primary: ['workspace', 'cell', 'at'], columns: { workspace: 'key', cell: 'key', at: 'int', hour: 'text' } }
}

async function up(db: Kysely<unknown>, kind: Kind): Promise<void> {
  for (const [name, { primary, columns }] of Object.entries(tables)) await createTable(db, kind, name, primary, columns)
  await db.schema.createIndex('entries_by_author').on('entries').columns(['workspace', 'site', 'author', 'seq']).execute()
  await db.schema.createIndex('sites_by_channel').on('sites').columns(['workspace', 'channel']).execute()
  await db.schema.createIndex('outbox_by_turn').on('outbox').columns(['state', 'next_at']).execute()
  await sql`insert into sites (workspace, site, base, seq, hash) values ('local', 'demo', ${toText(demoSite)}, 0, ${firstPrev})`.execute(db)
}

async function createTable(db: Kysely<unknown>, kind: Kind, name: string, primary: readonly string[], columns: Columns): Promise<void> {
  const base: CreateTableBuilder<string, string> = db.schema.createTable(name)
  const full = Object.entries(columns).reduce((table, [column, type]) => {
    return table.addColumn(column, typeOf(type, kind), (made) => (type.endsWith('?') ? made : made.notNull()))
  }, base)
  const keyed = full.addPrimaryKeyConstraint(`${name}_key`, primary as string[])
  // STRICT: SQLite then refuses what PostgreSQL refuses, text in a column of numbers.
  await (kind === 'sqlite' ? keyed.modifyEnd(sql`strict`) : keyed).execute()
}

function typeOf(type: Column, kind: Kind): ReturnType<typeof sql> {
  if (type.startsWith('int')) return kind === 'sqlite' ? sql`integer` : sql`bigint`
  return type.startsWith('key') && kind === 'postgres' ? sql`text collate "C"` : sql`text`
}

export const first: Migration = { number: 1, name: 'first', up }
