#!/usr/bin/env node
import { createInterface } from 'node:readline'
import { ListenError } from './adapters/http/server.js'
import { SlackError } from './adapters/slack/slack-error.js'
import { Stop, type Terminal } from './adapters/terminal/io.js'
import { StoreError } from './bot/ports.js'
import { ConfigError, readConfig } from './config.js'

const terminal: Terminal = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  lines: () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
  now: () => Math.floor(Date.now() / 1000)
}

/** The server and the subcommands share little: each start loads its own. */
const parts = {
  serve: async () => (await import('./wiring/serve.js')).serve,
  subcommands: async () => (await import('./adapters/terminal/index.js')).subcommands,
  answerUnset: async () => (await import('./adapters/terminal/ask.js')).answerUnset,
  usages: async () => import('./adapters/terminal/usages.js'),
  wire: async () => (await import('./wiring/tools.js')).wire
}

async function main([name = 'serve', ...rest]: readonly string[]): Promise<number> {
  try {
    if (rest.some((arg) => arg === '--help' || arg === '-h') && (await parts.usages()).wantsUsage(rest)) return await usage(terminal, name)
    const config = readConfig(process.env)
    if (name === 'serve') {
      const [serve, wire] = await Promise.all([parts.serve(), parts.wire()])
      return leaving(await serve(config, wire(config, terminal, true), told()))
    }
    const subcommands = await parts.subcommands()
    if (name === 'help' || name === '--help') return list(terminal, Object.keys(subcommands))
    if (!Object.hasOwn(subcommands, name)) {
      throw new Stop(`no such command: ${name.slice(0, 60)}. Use serve, ${Object.keys(subcommands).join(', ')}`, 2, 'unknown-command')
    }
    return await subcommands[name as keyof typeof subcommands](rest, (await parts.wire())(config, terminal, false))
  } catch (error) {
    return await sentenceFor(error, name === 'ask' && rest.includes('--json'))
  }
}

/** What is the operator's to mend is a sentence, or an answer where JSON was asked for; anything else is a bug and shows itself. */
async function sentenceFor(error: unknown, json: boolean): Promise<number> {
  if (json && (error instanceof Stop || error instanceof ConfigError)) return (await parts.answerUnset())(terminal, error.message)
  if (error instanceof Stop) return say(error.message, error.code)
  const known = [ConfigError, StoreError, ListenError, SlackError].some((kind) => error instanceof kind)
  if (known) return say((error as Error).message, 1)
  throw error
}

function say(message: string, code: number): number {
  terminal.err(`${message}\n`)
  return code
}

/** How one of them is called. */
async function usage({ out }: Terminal, name: string): Promise<number> {
  const { terminalUsages } = await parts.usages()
  if (!Object.hasOwn(terminalUsages, name))
    throw new Stop(`no such command: ${name.slice(0, 60)}. Use ${Object.keys(terminalUsages).join(', ')}`, 2, 'unknown-command')
  out(`seamhand ${terminalUsages[name as keyof typeof terminalUsages].replaceAll('\nask ', '\nseamhand ask ')}\n`)
  return 0
}

/** What can be run, a line each. */
function list({ out }: Terminal, names: readonly string[]): number {
  out(`seamhand ${['serve', ...names].join('\nseamhand ')}\n`)
  return 0
}

/** What still hangs when all is done, such as a connection to a database that is away, does not keep the process. */
function leaving(code: number): number {
  setTimeout(() => process.exit(code), 200).unref()
  return code
}

/** Told to stop by the system or by the keyboard. */
function told(): Promise<unknown> {
  return new Promise((resolve) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, resolve)
  })
}

process.exitCode = await main(process.argv.slice(2))
