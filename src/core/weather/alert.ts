import type { Instant } from '../instant.js'

/** By CAP 1.2, worst first; `unknown` also where the service gave none that can be read. */
export const severities = ['extreme', 'severe', 'unknown', 'moderate', 'minor'] as const
export type Severity = (typeof severities)[number]

/** A warning of a weather service for a place. Texts are the service's own, in its own language. */
export interface Alert {
  /** Of this message; an update has another. */
  readonly id: string
  /** Ids of the messages that it takes the place of. */
  readonly replaces: readonly string[]
  readonly event: string
  readonly severity: Severity
  /** `immediate`, `expected` …; CAP 1.2. */
  readonly urgency: string
  /** `observed`, `likely` …; CAP 1.2. */
  readonly certainty: string
  /** When what it warns of begins and ends. */
  readonly from: Instant
  readonly to: Instant
  /** When the message itself is out of date: often long before the end, sometimes before the beginning. */
  readonly expiresAt: Instant
  readonly headline: string | null
  readonly instruction: string | null
}

/** What is known of the alerts of a place that a service covers. */
export interface Alerts {
  /** `nws`. */
  readonly source: string
  /** When the service last said so; null: it never answered. */
  readonly asOf: Instant | null
  readonly all: readonly Alert[]
}

/** A service that has not answered for so long may have had something to say, s. Source: common practice, no source. */
const currentS = 1800

/** True while what the service last said still counts as all there is. */
export function isCurrent({ asOf }: Alerts, now: Instant): boolean {
  return asOf !== null && now - asOf <= currentS
}

/**
 * Alerts that stand as of `now` and touch a span of time, worst first, then in order of time. One whose message is out of date
 * stands only where the service lately still had it among those in force.
 */
export function standing(alerts: Alerts | null, now: Instant, from: Instant, to: Instant): readonly Alert[] {
  if (alerts === null) return []
  const current = isCurrent(alerts, now)
  const stand = alerts.all.filter((alert) => now < alert.to && (current || now < alert.expiresAt) && alert.from < to && alert.to > from)
  return stand.sort((a, b) => order(a) - order(b) || a.from - b.from || (a.id < b.id ? -1 : 1))
}

/** Bad enough to be told when it comes: of one that does not say how bad it is nobody knows that it is not. */
export function isSevere({ severity }: Pick<Alert, 'severity'>): boolean {
  return severity === 'extreme' || severity === 'severe' || severity === 'unknown'
}

function order({ severity }: Alert): number {
  return severities.indexOf(severity)
}

/** What is kept of an alert that people were told of. */
export interface ToldAlert {
  readonly id: string
  readonly severity: Severity
  readonly event: string
  /** True when it is said to be over. */
  readonly over: boolean
}

export function toldOf({ id, severity, event }: Alert): ToldAlert {
  return { id, severity, event, over: false }
}

/** An alert is the one that was told, or takes its place. */
export function isSame({ id, replaces }: Alert, told: Pick<ToldAlert, 'id'>): boolean {
  return id === told.id || replaces.includes(told.id)
}

/** True where an alert is worse than when it was told. */
export function isWorse(alert: Pick<Alert, 'severity'>, told: Pick<ToldAlert, 'severity'>): boolean {
  return severities.indexOf(alert.severity) < severities.indexOf(told.severity)
}
