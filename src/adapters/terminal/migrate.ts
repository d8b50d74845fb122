import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { data: { type: 'string' }, json: { type: 'boolean' } } as const

/** `seamhand migrate`: brings the store to the newest migration, before the servers of a new version start. */
export const migrate: Subcommand = async (args, tools) => {
  const { values } = readOptions(args, options)
  const store = await tools.openStore(values.data ?? null)
  try {
    const migrated = tools.upkeep.migrated(store)
    tools.terminal.out(values.json ? `${JSON.stringify(migrated)}\n` : `${sentence(migrated)}\n`)
    return 0
  } finally {
    await store.close()
  }
}

function sentence({ database, before, after }: { readonly database: string; readonly before: number; readonly after: number }): string {
  return before === after ? `${database}: at migration ${after} already` : `${database}: migrated from ${before} to ${after}`
}
