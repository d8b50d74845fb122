import { replay as replayEntry } from '../../bot/replay.js'
import { settingsOf } from '../../bot/session/session.js'
import { texts } from '../../bot/text/index.js'
import { howOf } from '../../bot/views/how.js'
import { replayLines } from '../../bot/views/replayed.js'
import { parseEntryId } from '../../core/log/entry.js'
import { Stop } from './io.js'
import { langOption, readOptions } from './options.js'
import { siteKey } from './site-key.js'
import type { Subcommand } from './tools.js'

const options = { json: { type: 'boolean' }, lang: { type: 'string' }, data: { type: 'string' }, workspace: { type: 'string' } } as const

/** `seamhand replay ID`: the decision again from its own inputs and limits, and what of it can be checked. Exit 0 the same, 1 not. */
export const replay: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  const id = positionals[0]
  if (id === undefined) throw new Stop('which decision? seamhand replay SITE-SEQ', 2, 'missing')
  const lang = langOption(values.lang)
  const store = await tools.openStore(values.data ?? null)
  try {
    const place = parseEntryId(id)
    if (place === null) throw new Stop(`not the id of an entry: ${id.slice(0, 80)} (SITE-SEQ)`, 2, 'not-found')
    const key = await siteKey(store, place.site, values.workspace ?? null)
    const replayed = await replayEntry(store, key.workspace, id, tools.resolveSheet)
    const view = await store.view(key)
    const kept = (await view?.entry(place.seq)) ?? null
    if (replayed === null || view === null || kept === null) throw new Stop(`no decision ${id.slice(0, 80)} here`, 2, 'not-found')
    if (values.json) tools.terminal.out(`${JSON.stringify(replayed)}\n`)
    else {
      const how = howOf(await settingsOf(view))
      const shown = { ...how, lang: lang ?? how.lang }
      tools.terminal.out(`${replayLines(replayed, kept.entry, shown, texts[shown.lang]).join('\n')}\n`)
    }
    return replayed.same ? 0 : 1
  } finally {
    await store.close()
  }
}
