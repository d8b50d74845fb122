import type { Decision } from '../../core/decide.js'
import { engineVersion } from '../../core/engine.js'
import type { Fact } from '../../core/fact.js'
import type { Facts } from '../../core/facts.js'
import type { Finding } from '../../core/finding.js'
import type { Json, JsonObject } from '../../core/log/entry.js'
import type { OnSite } from '../context.js'
import { iso, numberJson, toJson } from '../json.js'

/**
 * What a decision entry holds: enough to come to the same answer again. Members stand in order of name here, as an entry is hashed:
 * to put a hundred small objects in order for each answer takes longer than to make them.
 */
export function decisionData({ sheet, forecast }: Pick<OnSite, 'sheet' | 'forecast'>, decision: Decision, facts: Facts): JsonObject {
  const { activity, checklist, conditions, findings, outcome, people } = decision
  return {
    activity,
    checklist,
    conditions,
    engine: engineVersion,
    findings: findings.map(findingJson),
    inputs: inputJson(facts, ''),
    limits: { id: sheet.id, sha256: sheet.sha256, version: numberJson(sheet.version) },
    outcome,
    people,
    weather: forecast === null ? null : { issuedAt: iso(forecast.issuedAt), sha256: forecast.sha256, source: forecast.source }
  }
}

/** Without what follows from the inputs. */
function findingJson({ activity, at, fix, group, limit, margin, origin, outcome, rule, spread, stale, unit, value }: Finding): JsonObject {
  return {
    activity,
    at: iso(at),
    fix,
    group,
    limit: valueJson(limit),
    margin: valueJson(margin),
    origin,
    outcome,
    rule,
    spread: numberJson(spread),
    stale,
    unit,
    value: valueJson(value)
  }
}

function factJson({ at, origin, spread, stale, value }: Fact<string | number | boolean>): JsonObject {
  return { at: iso(at), origin, spread: numberJson(spread), stale, value: valueJson(value) }
}

function valueJson<T extends string | boolean>(value: T | number | null): T | number | null {
  return typeof value === 'number' ? numberJson(value) : value
}

function inputJson(value: unknown, key: string): Json {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return toJson(value, key)
  if ('origin' in value && 'stale' in value) return factJson(value as Fact)
  const result: Record<string, Json> = {}
  for (const name of Object.keys(value)) result[name] = inputJson((value as Readonly<Record<string, unknown>>)[name], name)
  return result
}
