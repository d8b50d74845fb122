import type { ChildProcessByStdio } from 'node:child_process'
import { execFile, spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { Readable } from 'node:stream'
import { promisify } from 'node:util'
import { afterAll, beforeAll } from 'vitest'

export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Child processes that run the store as it is compiled, on any Node; compiled once for the tests of a file. */
export function storeChildren(): { start(...args: readonly string[]): Child } {
  let compiled = ''
  const children: Child[] = []
  beforeAll(async () => {
    compiled = await compile()
  }, 120_000)
  afterAll(() => {
    for (const child of children) child.process.kill('SIGKILL')
    rmSync(compiled, { recursive: true, force: true })
  })
  return {
    start(...args) {
      const child = startChild([join(import.meta.dirname, 'child.mjs'), compiled, ...args])
      children.push(child)
      return child
    }
  }
}

export interface Child {
  readonly process: ChildProcessByStdio<null, Readable, Readable>
  readonly ended: Promise<Ran>
  /** When it has printed this many lines, or has ended. */
  lines(count: number): Promise<void>
}

function startChild(args: readonly string[]): Child {
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] })
  let out = ''
  let err = ''
  child.stdout.on('data', (chunk) => {
    out += String(chunk)
  })
  child.stderr.on('data', (chunk) => {
    err += String(chunk)
  })
  let over = false
  const ended = new Promise<Ran>((done) =>
    child.on('close', (code) => {
      over = true
      done({ code, out, err })
    })
  )
  async function lines(count: number): Promise<void> {
    while (!over && out.split('\n').length <= count) await new Promise((wait) => setTimeout(wait, 5))
  }
  return { process: child, ended, lines }
}

/** Inside node_modules, so that the compiled code finds its packages. */
async function compile(): Promise<string> {
  const root = resolve(import.meta.dirname, '../../../..')
  mkdirSync(join(root, 'node_modules/.cache'), { recursive: true })
  const folder = mkdtempSync(join(root, 'node_modules/.cache/store-'))
  const options = {
    rootDir: join(root, 'src'),
    outDir: folder,
    incremental: false,
    types: ['node'],
    typeRoots: [join(root, 'node_modules/@types')]
  }
  const config = { extends: join(root, 'tsconfig.json'), compilerOptions: options, include: [join(root, 'src/adapters/store')] }
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config))
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}')
  await promisify(execFile)(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', join(folder, 'tsconfig.json')])
  return folder
}
