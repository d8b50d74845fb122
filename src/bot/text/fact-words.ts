import type { FactId } from '../words/facts.js'

/** What is said to somebody who stated a fact in words that log nothing. */
export interface FactWords {
  /** Head of the reply: what was heard, and that it is not on the log. */
  notLogged(list: string): string
  /** Before the messages, of which one is so. */
  readonly write: string
  readonly topics: Readonly<Record<FactId, FactTopic>>
}

export interface FactTopic {
  readonly name: string
  /** What is so, and the very message that logs it. */
  readonly say: readonly FactMessage[]
}

export type FactMessage = readonly [so: string, message: string]
