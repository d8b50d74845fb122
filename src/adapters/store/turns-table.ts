import type { Instant } from '../../core/instant.js'
import { plain } from './codec.js'
import { outside } from './outside.js'
import type { Database, Queries } from './schema.js'

/** Turns belong to no workspace. */
const workspace = '*'
/** No turn is as long as this, s: one that is was taken before the clock went back. */
const longestS = 6 * 3600

/** Turns that servers over one store take with one another. */
export interface TurnsTable {
  /** Takes a turn until an instant where nobody has it. Null: taken; else until when another has it. */
  take(what: string, now: Instant, until: Instant): Promise<Instant | null>
  /** Says anew when a turn that was taken ends. */
  end(what: string, until: Instant): Promise<void>
}

export function turnsTable({ read, write }: Database): TurnsTable {
  return {
    take: (what, now, until) => outside(() => take(write, read, what, now, until)),
    end: (what, until) =>
      outside(async () => {
        await write.updateTable('turns').set({ until }).where('workspace', '=', workspace).where('what', '=', what).execute()
      })
  }
}

/** One statement: of two that take at once one finds the row of the other. */
async function take(write: Queries, read: Queries, what: string, now: Instant, until: Instant): Promise<Instant | null> {
  const row = { workspace, what: plain(what), until }
  const taken = await write
    .insertInto('turns')
    .values(row)
    .onConflict((conflict) =>
      conflict
        .columns(['workspace', 'what'])
        .doUpdateSet({ until })
        .where((is) => is.or([is('turns.until', '<=', now), is('turns.until', '>', now + longestS)]))
    )
    .returning('what')
    .execute()
  if (taken.length > 0) return null
  const other = await read.selectFrom('turns').select('until').where('workspace', '=', workspace).where('what', '=', what).executeTakeFirst()
  return other?.until ?? until
}
