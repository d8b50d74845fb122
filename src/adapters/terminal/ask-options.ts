import { z } from 'zod'
import { fromIso } from '../../core/instant.js'

/** What `ask` takes, from the command line or as a line of JSON; the same words in both. */
const instant = z.string().transform((text, context) => {
  const at = fromIso(text)
  if (at === null) context.addIssue('needs an ISO 8601 instant with Z or an offset')
  return at ?? 0
})

export const question = z.strictObject({
  text: z.string(),
  at: instant.optional(),
  weather: z.string().min(1).optional(),
  site: z.string().min(1).optional(),
  as: z.string().min(1).max(200).optional(),
  role: z.enum(['crew', 'supervisor']).optional(),
  lang: z.enum(['en', 'es', 'fr']).optional(),
  units: z.enum(['metric', 'us']).optional(),
  log: z.boolean().optional()
})
export type Question = z.infer<typeof question>

export const issuedOption = instant

/** Problems of a question as one sentence. */
export function problems(error: z.ZodError): string {
  return error.issues.map(({ path, message }) => (path.length === 0 ? message : `${path.join('.')}: ${message}`)).join('; ')
}
