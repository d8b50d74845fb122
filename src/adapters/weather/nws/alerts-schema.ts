import { z } from 'zod'
import { type Alert, type Severity, severities } from '../../../core/weather/alert.js'
import { instantField } from '../fields.js'

// US NWS `/alerts/active`: GeoJSON features with the fields of CAP 1.2. Only what is used.
// Source: US NWS API, OpenAPI 3.8.1, components Alert and AlertCollectionGeoJson; OASIS CAP 1.2.

const longest = { id: 200, event: 120, headline: 300, instruction: 1000, word: 20 } as const
const mostAlerts = 50
const mostReplaced = 100

/** One line of at most so many characters. */
function line(most: number) {
  return z.string().transform((text) => [...text.replace(/\s+/g, ' ').trim()].slice(0, most).join(''))
}

const word = line(longest.word)
  .transform((text) => text.toLowerCase())
  .catch('unknown')

const severity = word.transform((text): Severity => ((severities as readonly string[]).includes(text) ? (text as Severity) : 'unknown'))

const properties = z.object({
  id: z.string().min(1).max(longest.id),
  references: z.array(z.object({ identifier: z.string().max(longest.id) })).catch([]),
  event: line(longest.event).refine((text) => text !== '', 'no event'),
  status: word,
  messageType: word,
  severity,
  urgency: word,
  certainty: word,
  sent: instantField.nullish(),
  effective: instantField.nullish(),
  onset: instantField.nullish(),
  expires: instantField,
  ends: instantField.nullish(),
  headline: line(longest.headline).nullish(),
  instruction: line(longest.instruction).nullish()
})

type Told = z.infer<typeof properties>

/** Drills, tests and drafts warn of nothing. */
const unreal: ReadonlySet<string> = new Set(['exercise', 'system', 'test', 'draft'])
/** Messages that are about others. */
const notAlerts: ReadonlySet<string> = new Set(['cancel', 'ack', 'error'])

/** An answer of the alerts in force → alerts: without those that it says are cancelled or replaced itself. */
export const nwsAlertsAnswer = z.object({ features: z.array(z.object({ properties })) }).transform(({ features }): readonly Alert[] => {
  const real = features.map((feature) => feature.properties).filter(({ status }) => !unreal.has(status))
  const over = new Set(real.flatMap(({ messageType, references }) => (messageType === 'ack' || messageType === 'error' ? [] : idsOf(references))))
  const byId = new Map(real.filter(({ id, messageType }) => !notAlerts.has(messageType) && !over.has(id)).map((told) => [told.id, alertOf(told)]))
  return [...byId.values()].slice(0, mostAlerts)
})

function alertOf(told: Told): Alert {
  const { id, references, event, severity: bad, urgency, certainty, sent, effective, onset, expires, ends, headline, instruction } = told
  return {
    id,
    replaces: idsOf(references).slice(-mostReplaced),
    event,
    severity: bad,
    urgency,
    certainty,
    from: onset ?? effective ?? sent ?? 0,
    to: ends ?? expires,
    expiresAt: expires,
    headline: headline || null,
    instruction: instruction || null
  }
}

function idsOf(references: Told['references']): readonly string[] {
  return references.map(({ identifier }) => identifier)
}
