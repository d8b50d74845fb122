import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import * as index from '@slack/bolt'
import { expect, it } from 'vitest'
import * as parts from '../../../src/adapters/slack/bolt.js'

const root = join(import.meta.dirname, '../../..')

it('holds the very things that the index of the framework holds', () => {
  const { App, HTTPReceiver, SocketModeReceiver, AuthorizationError, RespondError, LogLevel } = index
  expect(parts).toMatchObject({ App, HTTPReceiver, SocketModeReceiver, AuthorizationError, RespondError, LogLevel })
  expect(parts.webApi.WebClient).toBe(index.webApi.WebClient)
  expect(parts.webApi.WebAPIRateLimitedError).toBe(index.webApi.WebAPIRateLimitedError)
  expect(parts.HTTPModuleFunctions.getHeader).toBe(index.HTTPModuleFunctions.getHeader)
})

/** In a process of its own: here other tests have loaded everything. */
function loadedBy(script: string): readonly string[] {
  const print = `process.stdout.write(JSON.stringify(Object.keys(createRequire(import.meta.url).cache)))`
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', `import { createRequire } from 'node:module'\n${script}\n${print}`], {
    cwd: root,
    encoding: 'utf8'
  })
  expect(run.stderr).toBe('')
  return (JSON.parse(run.stdout) as string[]).map((file) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? file)
}

it('loads what Socket Mode and many workspaces need when they are used, and Express never', () => {
  const bolt = `const { SocketModeReceiver } = await import('./dist/adapters/slack/bolt.js')`
  const atStart = loadedBy(bolt)
  expect(atStart).toContain('@slack/web-api')
  for (const name of ['express', 'undici', 'jsonwebtoken']) expect(atStart).not.toContain(name)

  const once = loadedBy(`${bolt}\nnew SocketModeReceiver({ appToken: 'xapp-1' })`)
  expect(once).toContain('undici')
  expect(once).not.toContain('express')
})
