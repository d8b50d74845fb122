import { z } from 'zod'
import { fromIso, type Instant } from '../../core/instant.js'

/** A field that holds an ISO 8601 instant with `Z` or an offset. */
export const instantField = z.string().transform((text, context): Instant => {
  const at = fromIso(text)
  if (at === null) context.addIssue(`not an instant: ${text.slice(0, 40)}`)
  return at ?? z.NEVER
})

/** The first few problems with their paths, in one line. Paths and messages repeat words of the answer, which may be as long as it is. */
export function firstProblems(error: z.ZodError): string {
  return error.issues
    .slice(0, 3)
    .map((issue) => (issue.path.length > 0 ? `${issue.path.join('.')}: ${issue.message}` : issue.message))
    .map(inShort)
    .join('; ')
}

/** One line of at most 160 characters: what a service says in its own words. */
export function inShort(text: string): string {
  return text.slice(0, 1000).replace(/\s+/g, ' ').slice(0, 160)
}
