import type { DatabaseSync } from 'node:sqlite'

export type { DatabaseSync } from 'node:sqlite'
export type OpenFile = (path: string) => DatabaseSync

/** The `node:sqlite` API: Node's own (from 22.13), else its drop-in from npm. Chosen once, at start. */
export async function sqliteApi(): Promise<OpenFile> {
  const builtIn = quietly(() => process.getBuiltinModule?.('node:sqlite'))
  if (builtIn) return (path) => new builtIn.DatabaseSync(path)
  const dropIn = await import('@photostructure/sqlite')
  return (path) => new dropIn.DatabaseSync(path) as unknown as DatabaseSync
}

/** Node 22 warns on standard error that the module is experimental; that stream is for our log lines. */
function quietly<T>(load: () => T): T {
  const warn = process.emitWarning
  process.emitWarning = () => undefined
  try {
    return load()
  } finally {
    process.emitWarning = warn
  }
}
