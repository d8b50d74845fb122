import type { SiteView, StateRow } from '../../bot/ports.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { fromText, toText } from './codec.js'
import { keptColumns, keptOf } from './entries.js'
import { fixed, fixedList } from './fixed.js'
import { outside } from './outside.js'
import type { Queries, SiteTable, StateTable } from './schema.js'

type StateColumns = Pick<StateTable, 'subject' | 'state' | 'seq'>

/** No text that begins with a prefix sorts after the prefix and the last code point. */
const lastCodePoint = '\u{10FFFF}'

const findSite = fixed<[string, string], SiteTable>((db, workspace, site) => oneSite(db, workspace, site))
const lockSite = fixed<[string, string], SiteTable>((db, workspace, site) => oneSite(db, workspace, site).forUpdate())
const findState = fixed<[string, string, string], StateColumns>((db, workspace, site, subject) =>
  statesIn(db, { workspace, site }).where('subject', '=', subject)
)
const findStates = fixedList<StateColumns>((db, workspace, site, ...subjects) =>
  statesIn(db, { workspace: workspace as string, site: site as string }).where('subject', 'in', subjects as readonly string[])
)

function oneSite(db: Queries, workspace: string, site: string) {
  return db.selectFrom('sites').selectAll().where('workspace', '=', workspace).where('site', '=', site)
}

/** The row of a site; null when there is none. `lock`: nobody else may write to the site until the transaction ends. */
export async function siteRow(db: Queries, { workspace, site }: SiteKey, lock: boolean): Promise<SiteTable | null> {
  const [row] = await (lock ? lockSite : findSite)(db, workspace, site)
  return row ?? null
}

/** Makes a site with an empty chain; false when the name is taken. */
export async function insertSite(db: Queries, { workspace, site }: SiteKey, base: SiteSettings, firstHash: string): Promise<boolean> {
  const made = await db
    .insertInto('sites')
    .values({ workspace, site, base: toText(base), channel: base.channel, seq: 0, hash: firstHash })
    .onConflict((conflict) => conflict.doNothing())
    .returning('site')
    .executeTakeFirst()
  return made !== undefined
}

/** What may be read of a site, through a transaction or without one. */
export function siteView(db: Queries, { workspace, site, base, seq, hash }: SiteTable): SiteView {
  const key = { workspace, site }
  return {
    key,
    head: { seq, hash },
    base: fromText<SiteSettings>(base),
    state: (subject) => outside(() => stateOf(db, key, subject)),
    statesAt: (subjects) => outside(async () => (subjects.length === 0 ? [] : (await findStates(db, workspace, site, ...subjects)).map(stateRow))),
    states: (prefix) => outside(() => statesOf(db, key, prefix)),
    entriesOf: (subject) => outside(async () => (await touching(db, key).where('touches.subject', '=', subject).execute()).map(keptOf)),
    entriesOfDay: (day) => outside(async () => (await ofDay(db, key, day).execute()).map(keptOf)),
    entry: (wanted) => outside(async () => (await ofSite(db, key).where('seq', '=', wanted).execute()).map(keptOf)[0] ?? null),
    latestOf: (author, count) => outside(async () => (await newest(db, key, author, count).execute()).map(keptOf))
  }
}

async function stateOf(db: Queries, key: SiteKey, subject: string): Promise<StateRow | null> {
  const [row] = await findState(db, key.workspace, key.site, subject)
  return row ? stateRow(row) : null
}

async function statesOf(db: Queries, key: SiteKey, prefix: string): Promise<readonly StateRow[]> {
  const rows = statesIn(db, key)
    .where('subject', '>=', prefix)
    .where('subject', '<', prefix + lastCodePoint)
    .orderBy('subject')
  return (await rows.execute()).map(stateRow)
}

function stateRow({ subject, state, seq }: StateColumns): StateRow {
  return { subject, state: fromText(state), seq }
}

function statesIn(db: Queries, { workspace, site }: SiteKey) {
  return db.selectFrom('states').select(['subject', 'state', 'seq']).where('workspace', '=', workspace).where('site', '=', site)
}

function ofSite(db: Queries, { workspace, site }: SiteKey) {
  return db.selectFrom('entries').select(keptColumns).where('entries.workspace', '=', workspace).where('entries.site', '=', site)
}

function newest(db: Queries, key: SiteKey, author: string, count: number) {
  return ofSite(db, key).where('author', '=', author).orderBy('seq', 'desc').limit(count)
}

function touching(db: Queries, { workspace, site }: SiteKey) {
  return db
    .selectFrom('touches')
    .innerJoin('entries', (join) =>
      join.onRef('entries.workspace', '=', 'touches.workspace').onRef('entries.site', '=', 'touches.site').onRef('entries.seq', '=', 'touches.seq')
    )
    .select(keptColumns)
    .where('touches.workspace', '=', workspace)
    .where('touches.site', '=', site)
    .orderBy('touches.seq')
}

function ofDay(db: Queries, key: SiteKey, day: string) {
  const subjects = ofSiteRows(db, key).select('entries.subject').where('entries.day', '=', day)
  return ofSite(db, key)
    .where((is) =>
      is.or([is('entries.day', '=', day), is.and([is('entries.type', 'in', ['undo', 'correction']), is('entries.subject', 'in', subjects)])])
    )
    .orderBy('entries.seq')
}

function ofSiteRows(db: Queries, { workspace, site }: SiteKey) {
  return db.selectFrom('entries').where('entries.workspace', '=', workspace).where('entries.site', '=', site)
}
