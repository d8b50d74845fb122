import { allChains } from './all-chains.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { to: { type: 'string' }, data: { type: 'string' } } as const

/**
 * `seamhand move --to URL`: the SQLite file into an empty PostgreSQL, all or nothing, then every chain is verified there. The file
 * stays as it was. Exit 1 where a chain is not intact.
 */
export const move: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  if (positionals.length > 0) throw new Stop(`move takes no ${(positionals[0] ?? '').slice(0, 40)}`, 2, 'bad-option')
  if (values.to === undefined) throw new Stop('move needs --to postgres://…', 2, 'missing')
  if (!/^postgres(ql)?:\/\//.test(values.to)) throw new Stop('--to must be a postgres:// or postgresql:// address', 2, 'bad-option')
  const { store, rows } = await tools.upkeep.move(values.data ?? null, values.to)
  try {
    const { intact, sentence } = await allChains(store)
    tools.terminal.out(`${rows} rows moved; ${sentence}. From now on start with DATABASE_URL; the file stays as it is\n`)
    return intact ? 0 : 1
  } finally {
    await store.close()
  }
}
