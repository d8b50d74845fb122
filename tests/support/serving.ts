import { subcommands } from '../../src/adapters/terminal/index.js'
import type { Terminal } from '../../src/adapters/terminal/io.js'
import { readConfig } from '../../src/config.js'
import { serve } from '../../src/wiring/serve.js'
import { wire } from '../../src/wiring/tools.js'

export interface Serving {
  readonly base: string
  /** Told to stop, as by SIGTERM; its exit code. */
  stop(): Promise<number>
}

function terminalInto(lines: string[]): Terminal {
  return {
    out: (text) => void lines.push(text),
    err: (text) => void lines.push(text),
    lines: async function* () {},
    now: () => Math.floor(Date.now() / 1000)
  }
}

/** The whole bot as `npm start` runs it, in this process, on a free port. */
export async function startServing(folder: string, env: Readonly<Record<string, string>> = {}): Promise<Serving> {
  const config = readConfig({ PORT: '0', SEAMHAND_DATA: folder, LOG_LEVEL: 'silent', ...env })
  let stop: () => void = () => {}
  const stopped = new Promise<void>((resolve) => {
    stop = resolve
  })
  const printed: string[] = []
  const exit = serve(config, wire(config, terminalInto(printed), true), stopped)
  await Promise.race([exit, until(() => printed.some((line) => line.startsWith('ready ')))])
  const ready = printed.find((line) => line.startsWith('ready '))
  if (ready === undefined) throw new Error(`never ready: ${printed.join('')}`)
  return {
    base: ready.slice('ready '.length).trim(),
    stop: () => {
      stop()
      return exit
    }
  }
}

/** A subcommand on the same folder, beside the server; what it printed and its exit code. */
export async function runBeside(folder: string, name: keyof typeof subcommands, args: readonly string[]): Promise<{ code: number; out: string }> {
  const config = readConfig({ SEAMHAND_DATA: folder, LOG_LEVEL: 'silent' })
  const printed: string[] = []
  const code = await subcommands[name](args, wire(config, terminalInto(printed), false))
  return { code, out: printed.join('') }
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 1500 && !holds(); tries += 1) await new Promise((resolve) => setTimeout(resolve, 20))
}
