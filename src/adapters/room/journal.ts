import { closeSync, existsSync, mkdirSync, openSync, readFileSync, truncateSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import type { Loose, RoomFile, RoomMessage } from './types.js'

type Line =
  | { readonly op: 'message'; readonly message: RoomMessage }
  | { readonly op: 'remove'; readonly channel: string; readonly ts: string }
  | { readonly op: 'file'; readonly file: RoomFile }

/** The room's own memory: one line a change, only ever added to; the bytes of files beside it. */
export interface Journal {
  readonly lines: readonly Line[]
  readonly add: (line: Line) => void
  readonly keep: (id: string, bytes: Buffer) => void
  readonly bytes: (id: string) => Buffer | null
  readonly close: () => void
}

export function memoryJournal(): Journal {
  const kept = new Map<string, Buffer>()
  return { lines: [], add: () => {}, keep: (id, bytes) => void kept.set(id, bytes), bytes: (id) => kept.get(id) ?? null, close: () => {} }
}

/** A line is written before the call that made it is answered. A last line that a crash cut short is taken off. */
export function fileJournal(folder: string, log: (message: string, fields: Loose) => void): Journal {
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  const path = join(folder, 'messages.jsonl')
  const lines = readLines(path, log)
  const handle = openSync(path, 'a', 0o600)
  return {
    lines,
    add: (line) => void writeSync(handle, `${JSON.stringify(line)}\n`),
    keep: (id, bytes) => writeFileSync(join(folder, id), bytes, { mode: 0o600 }),
    bytes: (id) => (/^F[0-9A-F]{20}$/.test(id) && existsSync(join(folder, id)) ? readFileSync(join(folder, id)) : null),
    close: () => closeSync(handle)
  }
}

function readLines(path: string, log: (message: string, fields: Loose) => void): readonly Line[] {
  if (!existsSync(path)) return []
  const bytes = readFileSync(path)
  const whole = bytes.lastIndexOf(10) + 1
  if (whole < bytes.length) {
    log('the last line of the room was cut short and is taken off', { bytes: bytes.length - whole })
    truncateSync(path, whole)
  }
  const lines: Line[] = []
  for (const [i, text] of bytes.subarray(0, whole).toString('utf8').split('\n').entries()) {
    if (text === '') continue
    try {
      lines.push(JSON.parse(text) as Line)
    } catch {
      log('a line of the room cannot be read and is left out', { line: i + 1 })
    }
  }
  return lines
}
