export const entryTypes = [
  'reading',
  'statement',
  'kit',
  'coupon',
  'welder',
  'void',
  'repair',
  'probe',
  'laid',
  'bond',
  'seal',
  'decision',
  'override',
  'correction',
  'undo',
  'photo',
  'note',
  'setting'
] as const
export type EntryType = (typeof entryTypes)[number]

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }
export type JsonObject = { readonly [key: string]: Json }

/** Where an entry came in. */
export type Via = 'ask' | 'prompt' | 'slack' | 'room' | 'tick'

/** Exactly what is hashed: RFC 8785 canonical JSON of these members and no others. Instants are ISO 8601 UTC. */
export interface Entry {
  readonly v: 1
  readonly workspace: string
  readonly site: string
  /** 1, 2, 3 … per workspace and site, in order of arrival. */
  readonly seq: number
  readonly at: string
  readonly loggedAt: string
  /** An id; names stand in a table of their own. */
  readonly author: string
  readonly via: Via
  readonly type: EntryType
  /** `site`, `kit:K7`, `welder:robot`, `void:12`, `punch:3`, `day:2026-05-04`. */
  readonly subject: string
  readonly data: JsonObject
  /** Hash of the entry before; 64 zeros for the first. */
  readonly prev: string
}

/** An entry before it has its place in the chain. */
export type Draft = Pick<Entry, 'at' | 'author' | 'via' | 'type' | 'subject' | 'data'>

export const firstPrev = '0'.repeat(64)

/** `SITE-SEQ`. */
export function entryId(site: string, seq: number): string {
  return `${site}-${seq}`
}

/** Reads `SITE-SEQ`; null when it is not one. Site names may hold hyphens: the last one counts. */
export function parseEntryId(id: string): { site: string; seq: number } | null {
  const match = /^(.+)-([1-9]\d{0,8})$/.exec(id)
  return match ? { site: match[1] as string, seq: Number(match[2]) } : null
}
