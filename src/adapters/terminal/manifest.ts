import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand } from './tools.js'

const options = { url: { type: 'string' } } as const
const longest = 2000

/** `seamhand manifest --url https://…`: the app's manifest for deliveries over HTTP, as YAML. */
export const manifest: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  if (positionals.length > 0) throw new Stop(`manifest takes no ${(positionals[0] ?? '').slice(0, 40)}`, 2, 'bad-option')
  if (values.url === undefined) throw new Stop('manifest needs --url https://… (manifest.yaml itself is for Socket Mode)', 2, 'missing')
  tools.terminal.out(await tools.manifest(checked(values.url)))
  return 0
}

/** The service delivers over TLS alone; a path is kept, a query is not understood. */
function checked(text: string): string {
  const url = URL.canParse(text) ? new URL(text) : null
  const good = url !== null && url.protocol === 'https:' && url.search === '' && url.hash === '' && url.username === '' && text.length <= longest
  if (!good) throw new Stop(`--url needs an https:// address, not ${text.slice(0, 60)}`, 2, 'bad-option')
  return url.href
}
