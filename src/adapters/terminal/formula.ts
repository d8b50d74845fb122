import { formulas, runFormula } from '../../core/formulas/index.js'
import { Stop } from './io.js'
import { readOptions } from './options.js'
import type { Subcommand, Tools } from './tools.js'

const options = { json: { type: 'boolean' }, lines: { type: 'boolean' } } as const

/** `seamhand formula`: the engine's own formulas, so that anyone can check a number by hand. Exit 2 outside a range. */
export const formula: Subcommand = async (args, tools) => {
  const { values, positionals } = readOptions(args, options)
  if (values.lines) return formulaLines(tools)
  const [name, ...pairs] = positionals
  if (name === undefined) return list(values.json === true, tools)
  const ran = runFormula(name, inputsOf(pairs))
  if (!ran.ok) return refused(ran, values.json === true, tools)
  const { ok: _ok, ...result } = ran
  tools.terminal.out(values.json ? `${JSON.stringify(result)}\n` : `${asText(result.result)}\n  ${result.source}\n`)
  return 0
}

function inputsOf(pairs: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    pairs.map((pair) => {
      const equals = pair.indexOf('=')
      if (equals < 1) throw new Stop(`not KEY=VALUE: ${pair.slice(0, 60)}`, 2, 'unknown-word')
      return [pair.slice(0, equals), pair.slice(equals + 1)]
    })
  )
}

function asText(result: object): string {
  return Object.entries(result)
    .map(([key, value]) => `${key} = ${value === null ? 'not defined' : shown(value)}`)
    .join('\n')
}

function shown(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value)
  return Object.entries(value)
    .map(([key, each]) => `${key} ${each}`)
    .join(', ')
}

function refused(ran: Extract<ReturnType<typeof runFormula>, { ok: false }>, json: boolean, { terminal }: Tools): number {
  terminal.out(json ? `${JSON.stringify(ran)}\n` : `${ran.message}\n`)
  return 2
}

function list(json: boolean, { terminal }: Tools): number {
  const all = Object.values(formulas).map(({ name, inputs, source, range }) => ({ name, inputs, source, range }))
  const line = ({ name, inputs }: (typeof all)[number]) => `${name}: ${Object.keys(inputs).join(' ')}`
  terminal.out(json ? `${JSON.stringify(all)}\n` : `${all.map(line).join('\n')}\n`)
  return 0
}

async function formulaLines({ terminal }: Tools): Promise<number> {
  let all = true
  for await (const line of terminal.lines()) {
    if (line.trim() === '') continue
    const ran = lineOf(line)
    all &&= ran.ok
    terminal.out(`${JSON.stringify(ran)}\n`)
  }
  return all ? 0 : 2
}

function lineOf(line: string) {
  try {
    const { name, inputs } = JSON.parse(line) as { name: string; inputs: Record<string, string> }
    return runFormula(String(name), inputs ?? {})
  } catch {
    return { ok: false as const, code: 'bad-option', word: null, message: 'not a line of JSON with name and inputs' }
  }
}
