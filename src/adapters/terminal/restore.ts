import { allChains } from './all-chains.js'
import { onlyFile } from './backup.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { data: { type: 'string' } } as const

/** `seamhand restore FILE`: into an empty store, all or nothing, then every chain is verified. Exit 1 where one is not intact. */
export const restore: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  const file = onlyFile(positionals, 'restore')
  const store = await tools.openStore(values.data ?? null)
  try {
    const rows = await tools.upkeep.restore(store, file)
    const { intact, sentence } = await allChains(store)
    tools.terminal.out(`${rows} rows restored; ${sentence}\n`)
    return intact ? 0 : 1
  } finally {
    await store.close()
  }
}
