import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { data: { type: 'string' } } as const

/** `seamhand backup FILE`: the whole store as it is now, while servers go on; the same file for both databases. */
export const backup: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  const file = onlyFile(positionals, 'backup')
  const store = await tools.openStore(values.data ?? null)
  try {
    const rows = await tools.upkeep.backup(store, file)
    tools.terminal.out(`${rows} rows in ${file}\n`)
    return 0
  } finally {
    await store.close()
  }
}

export function onlyFile(positionals: readonly string[], name: string): string {
  const [file] = positionals
  if (file === undefined || positionals.length > 1) throw new Stop(`${name} needs one FILE`, 2, 'missing')
  return file
}
