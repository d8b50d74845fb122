import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import * as loaded from '../../../src/adapters/store/kysely.js'
import * as postgres from '../../../src/adapters/store/kysely-postgres.js'

const src = join(import.meta.dirname, '../../../src')

it('is the package in its form for require', () => {
  const whole = createRequire(import.meta.url)('kysely') as Readonly<Record<string, unknown>>
  for (const [name, value] of Object.entries({ ...loaded, ...postgres })) expect(value, name).toBe(whole[name])
})

it('and the chat framework are loaded by one file each: a second form of them would be loaded beside the first', () => {
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))
  const loading = files.filter((name) => /^import (?!type )[^\n]* from '(kysely|@slack\/bolt)'/m.test(readFileSync(join(src, name), 'utf8')))
  expect(loading).toEqual([])
})
