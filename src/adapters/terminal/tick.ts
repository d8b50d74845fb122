import { tick as runTick, type Ticked } from '../../bot/posts/tick.js'
import { fromIso } from '../../core/instant.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { at: { type: 'string' }, json: { type: 'boolean' }, data: { type: 'string' } } as const

/** `seamhand tick --at ISO`: one tick of the clock. Without a chat it queues what is due and sends nothing. */
export const tick: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  if (positionals.length > 0) throw new Stop(`tick takes no ${(positionals[0] ?? '').slice(0, 40)}`, 2, 'bad-option')
  const at = values.at === undefined ? tools.terminal.now() : fromIso(values.at)
  if (at === null) throw new Stop(`--at needs an ISO 8601 instant with Z or an offset, not ${String(values.at).slice(0, 60)}`, 2, 'bad-option')
  const store = await tools.openStore(values.data ?? null)
  try {
    const ticked = await runTick(at, {
      store,
      weather: await tools.weather(null, at, store),
      sheets: tools.sheets(null),
      ...tools.defaults,
      ...tools.posting(store, at)
    })
    tools.terminal.out(values.json ? `${JSON.stringify(ticked)}\n` : sentences(ticked))
    return 0
  } finally {
    await store.close()
  }
}

const parts = ['due', 'queued', 'sent', 'skipped'] as const

function sentences(ticked: Ticked): string {
  const lines = parts.map((part) => `${part}: ${ticked[part].length === 0 ? 'nothing' : ticked[part].join(', ')}`)
  return `${[ticked.at, ...lines].join('\n')}\n`
}
