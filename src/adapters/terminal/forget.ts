import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { person: { type: 'string' }, workspace: { type: 'string' }, successor: { type: 'string' }, data: { type: 'string' } } as const

/** `seamhand forget --person ID`: name, language, units and role go; the log keeps the id, and no chain changes. */
export const forget: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const { person, workspace = 'local', successor = null } = values
  if (person === undefined) throw new Stop('whom? seamhand forget --person ID [--workspace TEAM] [--successor ID]', 2, 'missing')
  if (person === successor) throw new Stop('--successor must be another person', 2, 'bad-option')
  const store = await tools.openStore(values.data ?? null)
  try {
    const forgotten = await store.forget(workspace, person, successor)
    if (forgotten === null) throw new Stop(`${person} is the only supervisor of ${workspace}: name --successor ID`, 2, 'wrong-state')
    if (!forgotten) throw new Stop(`nothing is kept about ${person.slice(0, 80)} in ${workspace.slice(0, 80)}`, 2, 'not-found')
    tools.terminal.out(`${person} is forgotten; the log keeps the id alone\n`)
    return 0
  } finally {
    await store.close()
  }
}
