import type { Instant } from '../core/instant.js'
import type { Via } from '../core/log/entry.js'
import type { Lang, Units } from './answer.js'
import type { Person } from './ports.js'
import type { OutlineSaid } from './words/said.js'

export type Role = 'crew' | 'supervisor'

/** One question: who, words, when. Every way in (terminal, chat, page) makes one of these. */
export interface Ask {
  readonly text: string
  /** The clock of this question, for everything. */
  readonly at: Instant
  readonly workspace: string
  /** Name of the site; null: the only one. */
  readonly site: string | null
  /** Chat channel it was said in; null: none. A site made here belongs to it. */
  readonly channel: string | null
  readonly user: string
  readonly role: Role
  readonly via: Via
  readonly lang: Lang | null
  readonly units: Units | null
  /** False: decide, but log nothing. */
  readonly log: boolean
  /** Delivery id: a second delivery gets the reply of the first and has no second effect. */
  readonly claim: string | null
  /** The roof of a file that came with the words. */
  readonly outline?: OutlineSaid
  /** What is known of who asks, where it was looked up on the way here. */
  readonly person?: Person
}
