import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import { type Alerts, isCurrent, standing } from '../../core/weather/alert.js'
import { iso } from '../json.js'

/** A span of time, and when it is asked about. */
export interface AlertSpan {
  readonly now: Instant
  readonly from: Instant
  readonly to: Instant
}

/** The alerts that touch a span, as `day`, `air` and the posts have them: all null where no service covers the place. */
export function alertNumbers(alerts: Alerts | null, { now, from, to }: AlertSpan): Readonly<Record<string, Json>> {
  if (alerts === null) return { alerts: null, alertsKnown: null, alertsAsOf: null }
  const rows = standing(alerts, now, Math.max(from, now), to).map(
    ({ from: begins, to: ends, id: _id, replaces: _replaces, expiresAt, ...alert }) => ({
      ...alert,
      source: alerts.source,
      from: iso(begins),
      to: iso(ends),
      expiresAt: iso(expiresAt)
    })
  )
  return { alerts: rows, alertsKnown: isCurrent(alerts, now), alertsAsOf: iso(alerts.asOf) }
}
