import type { Alert } from '../../src/core/weather/alert.js'
import { iso } from './instant.js'

/** An invented warning of a thunderstorm, from 12:00 to 14:00 UTC on 4 May 2026 unless told otherwise. */
export function alertOf(change: Partial<Alert> = {}): Alert {
  return {
    id: 'a',
    replaces: [],
    event: 'Severe Thunderstorm Warning',
    severity: 'severe',
    urgency: 'immediate',
    certainty: 'observed',
    from: iso('2026-05-04T12:00:00Z'),
    to: iso('2026-05-04T14:00:00Z'),
    expiresAt: iso('2026-05-04T14:00:00Z'),
    headline: null,
    instruction: null,
    ...change
  }
}
