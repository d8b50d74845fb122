import type { Ports } from '../../bot/context.js'
import { respond } from '../../bot/respond.js'
import type { Subcommand } from './tools.js'

const welcome = 'Seamhand · site demo (an invented roof and an invented week of weather) · try: can we spray now? · help · an empty line or Ctrl-D ends\n'

/** `seamhand serve` until there is a room: the same dispatcher at a prompt. */
export const prompt: Subcommand = async (_args, tools) => {
  const { terminal } = tools
  const store = await tools.openStore(null)
  try {
    terminal.out(welcome)
    terminal.out('> ')
    for await (const line of terminal.lines()) {
      if (line.trim() === '') break
      const at = terminal.now()
      const ports: Ports = { store, weather: await tools.weather(null, at, store), sheets: tools.sheets(null), ...tools.defaults }
      const reply = await respond(
        { text: line, at, workspace: 'local', site: null, channel: null, user: 'prompt', role: 'supervisor', via: 'prompt', lang: null, units: null, log: true, claim: null },
        ports
      )
      terminal.out(`${reply.text}\n\n> `)
    }
    return 0
  } finally {
    await store.close()
  }
}
