import { fromIso, type Instant } from '../../src/core/instant.js'

/** An instant from ISO text; a wrong text is a mistake of the test. */
export function iso(text: string): Instant {
  const at = fromIso(text)
  if (at === null) throw new Error(`not an instant: ${text}`)
  return at
}
