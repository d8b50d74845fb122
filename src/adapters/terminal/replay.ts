import { replay as replayEntry } from '../../bot/replay.js'
import { parseEntryId } from '../../core/log/entry.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { Subcommand } from './tools.js'

const options = { json: { type: 'boolean' }, data: { type: 'string' }, workspace: { type: 'string' } } as const

/** `seamhand replay ID`: the decision again from its own inputs and limits. Exit 0 the same, 1 not. */
export const replay: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  const id = positionals[0]
  if (id === undefined) throw new Stop('which decision? seamhand replay SITE-SEQ', 2, 'missing')
  const store = await tools.openStore(values.data ?? null)
  try {
    const place = parseEntryId(id)
    if (place === null) throw new Stop(`not the id of an entry: ${id.slice(0, 80)} (SITE-SEQ)`, 2, 'not-found')
    const { workspace } = await siteKey(store, place.site, values.workspace ?? null)
    const replayed = await replayEntry(store, workspace, id, tools.resolveSheet)
    if (replayed === null) throw new Stop(`no decision ${id.slice(0, 80)} here`, 2, 'not-found')
    tools.terminal.out(values.json ? `${JSON.stringify(replayed)}\n` : `${sentence(replayed)}\n`)
    return replayed.same ? 0 : 1
  } finally {
    await store.close()
  }
}

function sentence({ id, same, outcome, engine, recordedEngine, differs }: NonNullable<Awaited<ReturnType<typeof replayEntry>>>): string {
  if (same) return `${id}: the same answer, ${outcome} (engine ${engine}, recorded by ${recordedEngine})`
  const now = outcome === null ? 'not to be decided again' : `${outcome} now`
  return `${id}: NOT the same: ${now}; differs in ${differs.join(', ') || 'outcome'} (engine ${engine}, recorded by ${recordedEngine})`
}
