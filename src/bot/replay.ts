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
  /** Null: the sheet it was decided by is not kept, or no sheet any more. */
  readonly outcome: Outcome | null
  readonly engine: string
  readonly recordedEngine: string
  /** Which findings came out otherwise, by rule and activity; `limits` where the kept sheet is not the one that was used. */
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

/** Takes a recorded decision's own inputs and limits through this engine; null when there is no such decision. */
export async function replay(store: Store, workspace: string, id: string, resolve: (raw: unknown) => LimitsSheet | null): Promise<Replayed | null> {
  const place = parseEntryId(id)
  const view = place === null ? null : await store.view({ workspace, site: place.site })
  const kept = place === null || view === null ? null : await view.entry(place.seq)
  if (kept === null || kept.entry.type !== 'decision') return null
  const recorded = kept.entry.data as unknown as Recorded
  const body = await store.keepsake(workspace, recorded.limits.sha256)
  const sheet = body === null ? null : sheetOf(body.body, resolve)
  const engines = { engine: engineVersion, recordedEngine: recorded.engine }
  if (sheet === null) return { id, same: false, outcome: null, ...engines, differs: ['limits'] }
  const decision = decide(recorded.activity, instants(recorded.inputs) as unknown as Facts, sheet)
  const now = decision.findings.map(({ ease: _ease, because: _because, ...finding }) => toJson(finding))
  const found = differences(recorded.findings, now as unknown as Recorded['findings'])
  const differs = sheet.sha256 === recorded.limits.sha256 ? found : ['limits', ...found]
  const same = decision.outcome === recorded.outcome && differs.length === 0
  return { id, same, outcome: decision.outcome, ...engines, differs }
}

/** The sheet as it was kept; null for what is no longer one. */
function sheetOf(body: string, resolve: (raw: unknown) => LimitsSheet | null): LimitsSheet | null {
  try {
    return resolve(JSON.parse(body))
  } catch {
    return null
  }
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
