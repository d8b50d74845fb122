import { randomBytes } from 'node:crypto'
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** The key that a page shows with each request: kept beside the room's messages, so that a page left open outlives a restart. */
export function pageKey(folder: string | null): string {
  if (folder === null) return newKey()
  const path = join(folder, 'page-key')
  const known = readKey(path)
  if (known !== null) return known
  const key = newKey()
  mkdirSync(folder, { recursive: true })
  writeFileSync(path, key, { mode: 0o600 })
  chmodSync(path, 0o600)
  return key
}

function readKey(path: string): string | null {
  try {
    const text = readFileSync(path, 'utf8').trim()
    return /^[0-9a-f]{48}$/.test(text) ? text : null
  } catch {
    return null
  }
}

function newKey(): string {
  return randomBytes(24).toString('hex')
}
