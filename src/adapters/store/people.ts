import type { KnownPerson, Person } from '../../bot/ports.js'
import { plain } from './codec.js'
import { fixed } from './fixed.js'
import { sql } from './kysely.js'
import type { Kind, Queries } from './schema.js'

const nobody: Person = { lang: null, units: null, role: null, name: null, summary: null }

const findPerson = fixed<[string, string], Person>((db, workspace, id) =>
  db.selectFrom('people').select(['lang', 'units', 'role', 'name', 'summary']).where('workspace', '=', workspace).where('person', '=', id)
)

/** What is known of a person; all null for one never seen. */
export async function readPerson(db: Queries, workspace: string, id: string): Promise<Person> {
  const [row] = await findPerson(db, workspace, id)
  return row ?? nobody
}

/** The supervisors of a workspace, in order of id. */
export async function readSupervisors(db: Queries, workspace: string): Promise<readonly KnownPerson[]> {
  const people = db.selectFrom('people').select(['person as id', 'lang', 'units', 'role', 'name', 'summary']).where('workspace', '=', workspace)
  return (await people.where('role', '=', 'supervisor').orderBy('person').execute()) as readonly KnownPerson[]
}

const findSupervisor = fixed<[string], { person: string }>((db, workspace) =>
  db.selectFrom('people').select('person').where('workspace', '=', workspace).where('role', '=', 'supervisor').limit(1)
)

/** Is there a supervisor in the workspace yet? Asked with every command of somebody without a role. */
export async function readSupervisor(db: Queries, workspace: string): Promise<boolean> {
  return (await findSupervisor(db, workspace)).length > 0
}

/** Changes what is named, and leaves the rest. */
export async function writePerson(db: Queries, workspace: string, id: string, change: Partial<Person>): Promise<void> {
  const changed = Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined)) as Partial<Person>
  if (Object.keys(changed).length === 0) return
  if (changed.name) plain(changed.name)
  await db
    .insertInto('people')
    .values({ workspace, person: plain(id), ...nobody, ...changed })
    .onConflict((conflict) => conflict.columns(['workspace', 'person']).doUpdateSet(changed))
    .execute()
}

/** One of two keys of the lock; the other is the workspace. */
const rolesLock = 73_264_264

/** Holds the roles of a workspace until the transaction ends. On SQLite a transaction that writes is alone from its beginning. */
export async function lockRoles(db: Queries, kind: Kind, workspace: string): Promise<void> {
  if (kind === 'postgres') await sql`select pg_advisory_xact_lock(${rolesLock}, hashtext(${workspace}))`.execute(db)
}

/** Within `lockRoles`: makes a person the first supervisor; false when somebody else is. Done twice it is done once. */
export async function claimSupervisor(db: Queries, workspace: string, id: string): Promise<boolean> {
  if (await readSupervisor(db, workspace)) return (await readPerson(db, workspace, id)).role === 'supervisor'
  await writePerson(db, workspace, id, { role: 'supervisor' })
  return true
}

/** Within `lockRoles`: gives a person a role; false when it would take the last supervisor away. */
export async function nameRole(db: Queries, workspace: string, id: string, role: NonNullable<Person['role']>): Promise<boolean> {
  const supervisors = role === 'supervisor' ? [] : await readSupervisors(db, workspace)
  if (supervisors.length === 1 && supervisors[0]?.id === id) return false
  await writePerson(db, workspace, id, { role })
  return true
}

/**
 * Forgets a person: name, language, units and role. The log keeps the id alone. `successor` becomes supervisor in the place of the
 * last one, since else whoever speaks next would be one. False when nothing was known; null when the last supervisor has no successor.
 */
export async function forgetPerson(db: Queries, workspace: string, id: string, successor: string | null): Promise<boolean | null> {
  const supervisors = await db.selectFrom('people').select('person').where('workspace', '=', workspace).where('role', '=', 'supervisor').execute()
  const last = supervisors.length === 1 && supervisors[0]?.person === id
  if (last && successor === null) return null
  if (successor !== null) await writePerson(db, workspace, successor, { role: 'supervisor' })
  const gone = await db.deleteFrom('people').where('workspace', '=', workspace).where('person', '=', id).returning('person').execute()
  return gone.length > 0
}
