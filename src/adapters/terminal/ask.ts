import type { z } from 'zod'
import type { Ask } from '../../bot/ask.js'
import type { Ports } from '../../bot/context.js'
import { builtInSheets } from '../../bot/limits/index.js'
import { type Sheets, StoreError } from '../../bot/ports.js'
import type { Reply } from '../../bot/reply.js'
import { failed, respond } from '../../bot/respond.js'
import { withoutEntities } from '../../bot/views/escape.js'
import { issuedOption, problems, type Question, question } from './ask-options.js'
import { Stop, type Terminal } from './io.js'
import { readOptions } from './options.js'
import type { OpenStore, Subcommand, Tools } from './tools.js'

const workspace = 'local'
const refusedByOutside: ReadonlySet<string> = new Set(['config', 'store', 'weather-file', 'internal'])

const options = {
  json: { type: 'boolean' },
  lines: { type: 'boolean' },
  at: { type: 'string' },
  weather: { type: 'string' },
  issued: { type: 'string' },
  site: { type: 'string' },
  as: { type: 'string' },
  role: { type: 'string' },
  lang: { type: 'string' },
  units: { type: 'string' },
  limits: { type: 'string' },
  data: { type: 'string' },
  outline: { type: 'string' },
  'no-log': { type: 'boolean' }
} as const

interface Run {
  readonly tools: Tools
  readonly store: OpenStore
  readonly sheets: Sheets
  readonly base: Question
  readonly issuedAt: number | null
  /** File of one outline; null: none. */
  readonly outline: string | null
}

/** `seamhand ask`: one question, or a line of JSON a question. Exit 0 answered, 2 refused, 1 failed. */
export const ask: Subcommand = async (args, tools) => {
  const json = args.includes('--json')
  let base: Question = { text: '' }
  try {
    const { values, positionals } = readOptions(args, options)
    base = parsed(question, { ...chosen(values), text: positionals.join(' '), ...(values['no-log'] ? { log: false } : {}) })
    const issuedAt = values.issued === undefined ? null : parsed(issuedOption, values.issued)
    const store = await tools.openStore(values.data ?? null)
    try {
      const run: Run = { tools, store, sheets: tools.sheets(values.limits ?? null), base, issuedAt, outline: values.outline ?? null }
      return values.lines ? await askLines(run) : print(await answer(run, base), json, tools)
    } finally {
      await store.close()
    }
  } catch (error) {
    return print(broken(error, base, tools), json, tools)
  }
}

/** The options that a question and the command line share. */
function chosen({ at, weather, site, as, role, lang, units }: Readonly<Record<string, string | boolean | undefined>>) {
  const all = { at, weather, site, as, role, lang, units }
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined))
}

function parsed<T extends z.ZodType>(schema: T, value: unknown): z.output<T> {
  const read = schema.safeParse(value)
  if (read.success) return read.data
  throw new Stop(problems(read.error), 2, 'bad-option')
}

async function askLines(run: Run): Promise<number> {
  const { terminal } = run.tools
  for await (const line of terminal.lines()) {
    if (line.trim() === '') continue
    terminal.out(`${JSON.stringify(await answerLine(run, line))}\n`)
  }
  return 0
}

async function answerLine(run: Run, line: string): Promise<Reply> {
  try {
    const said = parsed(question, jsonOf(line))
    return await answer(run, { ...run.base, ...said })
  } catch (error) {
    return broken(error, run.base, run.tools)
  }
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    throw new Stop('not a line of JSON', 2, 'bad-option')
  }
}

async function answer({ tools, store, sheets, issuedAt, outline }: Run, asked: Question): Promise<Reply> {
  const roof = outline === null ? {} : { outline: await tools.outline(outline, asked.units ?? tools.defaults.units) }
  const one = { ...askOf(asked, tools.terminal.now()), ...roof }
  try {
    const weather = await tools.weather(asked.weather ?? null, issuedAt ?? one.at, store)
    const ports: Ports = { store, weather, sheets, ...tools.defaults }
    return (await respond(one, ports)).reply
  } catch (error) {
    if (error instanceof Stop) return failed(one, tools.defaults, sheets.byId('common-practice'), error.errorCode as never, error.message, null)
    throw error
  }
}

function askOf(asked: Question, now: number): Ask {
  return {
    text: asked.text,
    at: asked.at ?? now,
    workspace,
    site: asked.site ?? null,
    channel: null,
    user: asked.as ?? 'ask',
    role: asked.role ?? 'supervisor',
    via: 'ask',
    lang: asked.lang ?? null,
    units: asked.units ?? null,
    log: asked.log ?? true,
    claim: null
  }
}

/** What could not even be asked, as an answer. */
function broken(error: unknown, asked: Question, tools: Tools): Reply {
  const none = askOf(asked, tools.terminal.now())
  const sheet = tools.sheets(null).byId('common-practice')
  if (error instanceof Stop) return failed(none, tools.defaults, sheet, error.errorCode as never, error.message, null)
  if (error instanceof StoreError) return failed(none, tools.defaults, sheet, 'store', error.message, null)
  return failed(none, tools.defaults, sheet, 'internal', null, tools.defaults.report(error, { command: 'ask' }))
}

function print(reply: Reply, json: boolean, { terminal }: Tools): number {
  terminal.out(json ? `${JSON.stringify(reply)}\n` : `${withoutEntities(reply.text)}\n`)
  if (reply.ok) return 0
  return refusedByOutside.has(reply.error?.code ?? '') ? 1 : 2
}

/** `ask --json` where the settings themselves are wrong: nothing could be opened, and still it is an answer. Exit 1. */
export function answerUnset(terminal: Terminal, reason: string): number {
  const [sheet = null] = builtInSheets()
  const reply = failed(askOf({ text: '' }, terminal.now()), { lang: 'en', units: 'metric' }, sheet, 'config', reason, null)
  terminal.out(`${JSON.stringify(reply)}\n`)
  return 1
}
