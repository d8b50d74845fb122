import { decide } from '../core/decide.js'
import { engineVersion } from '../core/engine.js'
import type { Facts } from '../core/facts.js'
import type { Activity } from '../core/finding.js'
import { fromIso, type Instant } from '../core/instant.js'
import type { LimitsSheet } from '../core/limits/sheet.js'
import { canonical } from '../core/log/canonical.js'
import { type Json, parseEntryId } from '../core/log/entry.js'
import type { Outcome } from '../core/outcome.js'
import { toJson } from './json.js'
import type { Store } from './ports.js'

export interface Replayed {
  readonly id: string
  readonly same: boolean
  readonly outcome: Outcome
  readonly engine: string
  readonly recordedEngine: string
  /** Which findings came out otherwise, by rule and activity. */
  readonly differs: readonly string[]
}

/** The parts of a decision entry that a replay reads. */
interface Recorded {
  readonly activity: Activity
  readonly outcome: Outcome
  readonly findings: readonly { readonly rule: string; readonly activity: string }[]
  readonly inputs: Json
  readonly limits: { readonly sha256: string }
  readonly engine: string
}

/** Takes a recorded decision's own inputs and limits through this engine; null when there is no such decision or sheet. */
export async function replay(store: Store, workspace: string, id: string, resolve: (raw: unknown) => LimitsSheet | null): Promise<Replayed | null> {
  const place = parseEntryId(id)
  const view = place === null ? null : await store.view({ workspace, site: place.site })
  const kept = place === null || view === null ? null : await view.entry(place.seq)
  if (kept === null || kept.entry.type !== 'decision') return null
  const recorded = kept.entry.data as unknown as Recorded
  const body = await store.keepsake(workspace, recorded.limits.sha256)
  const sheet = body === null ? null : resolve(JSON.parse(body.body))
  if (sheet === null) return null
  const decision = decide(recorded.activity, instants(recorded.inputs) as unknown as Facts, sheet)
  const now = decision.findings.map(({ ease: _ease, ...finding }) => toJson(finding))
  const differs = differences(recorded.findings, now as unknown as Recorded['findings'])
  const same = decision.outcome === recorded.outcome && differs.length === 0
  return { id, same, outcome: decision.outcome, engine: engineVersion, recordedEngine: recorded.engine, differs }
}

function differences(recorded: Recorded['findings'], now: Recorded['findings']): string[] {
  const name = ({ rule, activity }: Recorded['findings'][number]) => `${rule}/${activity}`
  const before = new Map(recorded.map((finding) => [name(finding), canonical(finding)]))
  const after = new Map(now.map((finding) => [name(finding), canonical(finding)]))
  return [...new Set([...before.keys(), ...after.keys()])].filter((key) => before.get(key) !== after.get(key)).sort()
}

/** Instants back from ISO text: under `at` and `…At`, as they were written. */
function instants(value: Json, key = ''): Json | Instant {
  if (typeof value === 'string') return /^at$|At$/.test(key) ? (fromIso(value) ?? value) : value
  if (value === null || typeof value !== 'object') return value
  if (Array.isArray(value)) return value.map((each) => instants(each))
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, instants(each, name)]))
}
