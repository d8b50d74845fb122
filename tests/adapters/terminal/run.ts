import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterAll } from 'vitest'
import { subcommands } from '../../../src/adapters/terminal/index.js'
import { Stop, type Terminal } from '../../../src/adapters/terminal/io.js'
import type { Reply } from '../../../src/bot/reply.js'
import { readConfig } from '../../../src/config.js'
import { wire } from '../../../src/wiring/tools.js'

const main = new URL('../../../dist/main.js', import.meta.url).pathname

/** What a run of the program left: what it wrote and how it ended. */
interface Ran {
  readonly out: string
  readonly err: string
  readonly code: number | null
}

interface RunOptions {
  readonly input?: string
  readonly env?: Readonly<Record<string, string>>
}

/** Runs a subcommand in this process, wired as the program wires it, with no settings but those given. */
export async function seamhand([name = '', ...rest]: readonly string[], { input = '', env = {} }: RunOptions = {}): Promise<Ran> {
  let out = ''
  let err = ''
  const terminal: Terminal = {
    out: (text) => {
      out += text
    },
    err: (text) => {
      err += text
    },
    lines: () => Readable.from(input === '' ? [] : input.split(/\r?\n/)),
    now: () => Math.floor(Date.now() / 1000)
  }
  try {
    const run = subcommands[name as keyof typeof subcommands]
    const code = await run(rest, wire(readConfig({ LOG_LEVEL: 'silent', ...env }), terminal, false))
    return { out, err, code }
  } catch (error) {
    if (error instanceof Stop) return { out, err: error.message, code: error.code }
    throw error
  }
}

/** Runs the built program as a process of its own. */
export function program(args: readonly string[], { input = '', env = {} }: RunOptions = {}): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [main, ...args], { env: { PATH: process.env.PATH ?? '', TZ: 'UTC', ...env }, stdio: 'pipe' })
    let out = ''
    let err = ''
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text
    })
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      err += text
    })
    child.on('error', reject)
    child.on('close', (code) => resolve({ out, err, code }))
    child.stdin.on('error', () => undefined)
    child.stdin.end(input)
  })
}

/** `seamhand ask --json …`: the one object it prints. */
export async function askJson(
  args: readonly string[],
  options?: RunOptions
): Promise<{ readonly reply: Reply; readonly code: number | null; readonly err: string }> {
  const { out, err, code } = await seamhand(['ask', '--json', ...args], options)
  return { reply: JSON.parse(out) as Reply, code, err }
}

/** Objects of a line each. */
export function linesOf<T>(out: string): readonly T[] {
  return out
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as T)
}

/** Makes folders that are gone after the file. */
export function folders(): () => string {
  const made: string[] = []
  afterAll(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true })
  })
  return () => {
    const folder = mkdtempSync(join(tmpdir(), 'seamhand-ask-'))
    made.push(folder)
    return folder
  }
}

/** The weather answers of the services, as files. */
export function weatherFile(name: string): string {
  return new URL(`../../fixtures/weather/${name}`, import.meta.url).pathname
}
