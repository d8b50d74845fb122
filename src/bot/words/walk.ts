import type { Instant } from '../../core/instant.js'
import type { Lang, Understood } from '../answer.js'
import type { Fields } from './fields.js'
import type { Words } from './forms.js'
import { Refused } from './refused.js'
import type { Reader, Said } from './said.js'

/** A reader's way through a message: where it stands and what it has understood. The one thing here that changes. */
export interface Walk {
  readonly text: string
  pos: number
  readonly reader: Reader
  readonly fields: Fields
  readonly understood: Understood[]
  at: Instant | null
  lexicon: Lexicon
  /** Items read so far. */
  items: number
  /** The label whose number was read last, while nothing followed it. */
  numbered: Heard | null
}

/** A word as it was typed, and the English label of what it means. */
export interface Heard {
  readonly raw: string
  readonly label: string
}

/** What a meaning is called in three languages and what reading it does. */
export interface Meaning {
  readonly words: Words
  readonly read: (walk: Walk, heard: Heard) => void
  /** After `no`, `sin`, `sans`; a meaning without it cannot be negated. */
  readonly negated?: (walk: Walk, heard: Heard) => void
}

/** Meanings by English label. */
export type Vocabulary = Readonly<Record<string, Meaning>>

export interface Lexicon {
  /** By folded word or words; each has one meaning. */
  readonly index: ReadonlyMap<string, { readonly label: string; readonly meaning: Meaning }>
  /** First words of the phrases in it. */
  readonly heads: ReadonlySet<string>
  /** Single words as written and folded, and whose they are, for the nearest one. */
  readonly spelled: readonly { readonly written: string; readonly folded: string; readonly langs: ReadonlySet<Lang> }[]
  /** Reads what is no word of the vocabulary (a bare number, a name); false when it is none of these either. */
  readonly other: (walk: Walk) => boolean
}

/** How the words of one command are read. */
export interface Grammar {
  readonly command: string
  /** Its words; some commands have two forms. */
  readonly lexicon: (walk: Walk) => Lexicon
  readonly build: (walk: Walk) => Said
  /** Reads a form that is not made of items (free text); null when the message is not of that form. */
  readonly whole?: (walk: Walk) => Said | null
}

type Value<Key extends keyof Fields> = Exclude<Fields[Key], undefined>

/** Sets a field; the same value again is fine, another one is refused by the code given. */
export function put<Key extends keyof Fields>(
  walk: Walk,
  heard: Heard,
  key: Key,
  value: Value<Key>,
  clash: 'duplicate' | 'inconsistent' = 'duplicate'
): void {
  const before = walk.fields[key]
  if (before !== undefined && JSON.stringify(before) !== JSON.stringify(value)) throw new Refused(clash, heard.raw, { label: heard.label })
  walk.fields[key] = value as Fields[Key]
}

/** Notes what was understood, for the refusal of a later word. */
export function note(walk: Walk, label: string, value: Understood['value'], unit: string | null = null): void {
  if (walk.understood.some((one) => one.label === label && one.value === value)) return
  walk.understood.push({ label, value, unit })
}
