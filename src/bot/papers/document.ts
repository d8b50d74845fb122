import type { Lang } from '../answer.js'

/** A document in words, ready to be set: nothing in it is decided by who sets it. `File`: what a picture inside is drawn from. */
export interface DocumentData<File> {
  readonly lang: Lang
  readonly title: string
  readonly subtitle: string
  /** What must not be overlooked, in a frame under the title: invented site, invented weather. */
  readonly labels: readonly string[]
  readonly parts: readonly DocumentPart<File>[]
  /** At the foot of every page, beside its number. */
  readonly foot: string
  /** What goes before and between the page numbers: "page 1 of 4". */
  readonly pageWords: readonly [string, string]
  /** ISO; the document says no other time of making. */
  readonly madeAt: string
}

export type DocumentPart<File> =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'facts'; readonly rows: readonly (readonly [name: string, value: string])[] }
  | {
      readonly kind: 'table'
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
      /** Shares of the width, one for each column. */
      readonly shares: readonly number[]
    }
  | { readonly kind: 'picture'; readonly title: string | null; readonly words: string | null; readonly paper: File }
  | { readonly kind: 'photo'; readonly mime: string; readonly base64: string; readonly caption: string }

/** A table for a spreadsheet. */
export interface TableData {
  readonly head: readonly string[]
  readonly rows: readonly (readonly (string | number | boolean | null)[])[]
}

/** Several files in one. */
export interface PacketData<File> {
  /** ISO; the packet says no other time of making. */
  readonly madeAt: string
  readonly papers: readonly File[]
  /** What is put in as it is: the log as it was hashed, photos. Absent: nothing. */
  readonly raw?: readonly RawFile[]
}

/** A file whose bytes nobody draws: its text, or its bytes as base64. */
export type RawFile = { readonly name: string } & ({ readonly text: string } | { readonly base64: string })
