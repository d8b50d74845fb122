import type { ErrorCode, Refusal } from '../answer.js'
import { short } from './fold.js'

/** Thrown while a message is read, caught in `readWords` only: the first thing that was not understood. */
export class Refused extends Error {
  override readonly name = 'Refused'
  readonly word: string | null

  constructor(
    readonly code: ErrorCode,
    word: string | null,
    readonly detail: Refusal['detail'] = {}
  ) {
    super(code)
    this.word = word === null ? null : short(word)
  }
}

/** Refusals that other words would mend. */
export const mendedByWords: ReadonlySet<ErrorCode> = new Set<ErrorCode>(['unknown-command', 'unknown-word', 'missing'])

/** A part that the command needs and the message lacks; named by its English label. */
export function missing(label: string): Refused {
  return new Refused('missing', label, { label })
}
