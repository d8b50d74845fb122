import type { Instant } from '../../core/instant.js'

/** Whose turn it is to ask for something: so that of several servers over one store one asks. */
export interface Turns {
  /** Takes a turn until an instant where nobody has it. Null: taken; else until when another has it. */
  take(what: string, now: Instant, until: Instant): Promise<Instant | null>
  /** Says anew when a turn that was taken ends. */
  end(what: string, until: Instant): Promise<void>
}
