import { randomBytes } from 'node:crypto'
import type { Journal } from './journal.js'
import { roomIds } from './people.js'
import type { Loose, RoomFile } from './types.js'

export interface Files {
  readonly newId: () => string
  readonly put: (file: RoomFile, bytes: Buffer | null) => RoomFile
  readonly get: (id: unknown) => RoomFile | null
  readonly bytes: (id: string) => Buffer | null
  /** Processed by the service: usable in blocks, and its shares are known. */
  readonly ready: (file: RoomFile) => boolean
  /** As the service describes it: little at first. */
  readonly shown: (file: RoomFile, base: string) => Loose
}

export function createFiles(journal: Journal, now: () => number, readyMs: number): Files {
  const files = new Map<string, RoomFile>()
  for (const line of journal.lines) if (line.op === 'file') files.set(line.file.id, line.file)
  const ready = (file: RoomFile) => now() - file.createdMs >= readyMs
  return {
    newId: () => `F${randomBytes(10).toString('hex').toUpperCase()}`,
    put: (file, bytes) => {
      if (bytes !== null) journal.keep(file.id, bytes)
      journal.add({ op: 'file', file })
      files.set(file.id, file)
      return file
    },
    get: (id) => files.get(String(id)) ?? null,
    bytes: journal.bytes,
    ready,
    shown: (file, base) => ({ ...known(file, base), ...(ready(file) ? later(file) : { mimetype: '', shares: {}, channels: [] }) })
  }
}

function known(file: RoomFile, base: string): Loose {
  const url = `${base}/room/files/${file.id}`
  return {
    id: file.id,
    name: file.name,
    title: file.title,
    created: Math.floor(file.createdMs / 1000),
    user: file.owner,
    user_team: roomIds.team,
    mode: 'hosted',
    size: file.size,
    is_external: false,
    is_public: false,
    file_access: 'visible',
    url_private: url,
    url_private_download: `${url}?download=1`
  }
}

function later(file: RoomFile): Loose {
  const shares = file.channel === null || file.ts === null ? {} : { public: { [file.channel]: [{ ts: file.ts }] } }
  return { mimetype: file.mimetype, filetype: file.mimetype.split('/')[1] ?? 'binary', shares, channels: file.channel === null ? [] : [file.channel] }
}

const kinds = [
  ['image/png', [0x89, 0x50, 0x4e, 0x47]],
  ['image/jpeg', [0xff, 0xd8, 0xff]],
  ['image/gif', [0x47, 0x49, 0x46, 0x38]],
  ['application/pdf', [0x25, 0x50, 0x44, 0x46]]
] as const

/** By its first bytes, never by its name; anything else is only ever downloaded. */
export function mimeOf(bytes: Buffer): string {
  return kinds.find(([, head]) => head.every((byte, i) => bytes[i] === byte))?.[0] ?? 'application/octet-stream'
}
