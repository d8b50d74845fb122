import { type OutlineFileProblem, type ReadOutline, shortWord, unreadable } from '../../core/sheets/outline-file.js'

/** What a person's numbers are in where a file does not say. */
export type FileUnit = 'm' | 'ft'

const mostBytes = 2 * 1024 * 1024

export const mmPer = { mm: 1, cm: 10, m: 1000, ft: 304.8, in: 25.4 } as const

/** UTF-8, at most 2 MiB. */
export function textOf(bytes: Uint8Array): { readonly text: string } | { readonly refused: ReadOutline } {
  if (bytes.length > mostBytes) return { refused: unreadable('too-large', `${Math.ceil(bytes.length / 1024)} KiB`) }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    return { refused: unreadable('not-text', '') }
  }
}

/** Stops reading at the first thing wrong. */
export class NotAnOutline extends Error {
  readonly problem: OutlineFileProblem

  constructor(what: OutlineFileProblem['what'], word: string) {
    super(`${what} ${word}`.trim())
    this.name = 'NotAnOutline'
    this.problem = { what, word: shortWord(word) }
  }
}
