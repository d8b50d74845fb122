import { addLast, type Folded, refold } from '../../core/log/fold.js'
import { toText } from './codec.js'
import { keptColumns, keptOf } from './entries.js'
import type { Queries, StateTable } from './schema.js'

const slice = 500

type Subject = Pick<StateTable, 'workspace' | 'site' | 'subject'>

/**
 * Folds every state anew from its entries, for a version whose states hold more than those of before: else `verify` would take the
 * difference for damage. Entries are read in slices; only a subject with a late entry, an undo or a correction is read whole.
 */
export async function refoldStates(db: Queries): Promise<void> {
  const subjects = await db
    .selectFrom('states')
    .select(['workspace', 'site', 'subject'])
    .orderBy('workspace')
    .orderBy('site')
    .orderBy('subject')
    .execute()
  for (const subject of subjects) {
    const folded = (await inOrder(db, subject)) ?? refold(subject.subject, await entriesAfter(db, subject, 0, null))
    const { workspace, site } = subject
    await db
      .updateTable('states')
      .set({ state: toText(folded) })
      .where('workspace', '=', workspace)
      .where('site', '=', site)
      .where('subject', '=', subject.subject)
      .execute()
  }
}

/** Entry by entry; null where one cannot be added at the end. */
async function inOrder(db: Queries, subject: Subject): Promise<Folded | null> {
  let folded: Folded | null = null
  for (let after = 0; ; ) {
    const entries = await entriesAfter(db, subject, after, slice)
    for (const entry of entries) {
      folded = addLast(subject.subject, folded, entry)
      if (folded === null) return null
    }
    if (entries.length < slice) return folded
    after = entries.at(-1)?.seq ?? after
  }
}

async function entriesAfter(db: Queries, { workspace, site, subject }: Subject, afterSeq: number, count: number | null) {
  const rows = db
    .selectFrom('touches')
    .innerJoin('entries', (join) =>
      join.onRef('entries.workspace', '=', 'touches.workspace').onRef('entries.site', '=', 'touches.site').onRef('entries.seq', '=', 'touches.seq')
    )
    .select(keptColumns)
    .where('touches.workspace', '=', workspace)
    .where('touches.site', '=', site)
    .where('touches.subject', '=', subject)
    .where('touches.seq', '>', afterSeq)
    .orderBy('touches.seq')
  return (await (count === null ? rows : rows.limit(count)).execute()).map((row) => keptOf(row).entry)
}
