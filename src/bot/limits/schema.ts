import { commonPractice, commonPracticeUs } from '../../core/limits/common-practice.js'
import type { SystemName } from '../../core/limits/fields.js'
import { substrateFields } from '../../core/limits/fields.js'
import { mergeSheets, type PartSheet } from '../../core/limits/merge.js'
import type { RawSheet } from '../../core/limits/raw.js'
import { resolveSheet } from '../../core/limits/resolve.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { crossedBounds, crossedPairs } from './crossed.js'
import { type Problem, problemsOf } from './problem.js'

export type { Problem } from './problem.js'

import { written } from './written.js'

export type ParsedSheet = { readonly ok: true; readonly sheet: LimitsSheet } | { readonly ok: false; readonly problems: readonly Problem[] }

/** A sheet by its id as written, not yet checked; null when there is none. */
export type FindSheet = (id: string) => unknown

type Whole = { readonly ok: true; readonly raw: RawSheet } | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * Checks a limits sheet as read from YAML and follows what it extends. What neither it nor those above it say is common practice, in
 * the twin of its units. Every problem with its path; with one problem nothing is loaded.
 */
export function parseSheet(raw: unknown, find: FindSheet): ParsedSheet {
  const whole = wholeSheet(raw, find, [])
  return whole.ok ? { ok: true, sheet: resolveSheet(whole.raw) } : whole
}

const longestChain = 20

/** `below`: ids of the sheets that led here, so that a circle is seen. */
function wholeSheet(raw: unknown, find: FindSheet, below: readonly string[]): Whole {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return failed([{ path: '', message: 'not a limits sheet' }])
  const { id, extends: parent } = raw as { id?: unknown; extends?: unknown }
  const base = typeof parent === 'string' ? parentOf(parent, find, below.length === 0 ? [String(id)] : below) : null
  const system = systemOf(raw, base)
  const read = written[system].safeParse(raw)
  const own = read.success ? [] : problemsOf(read.error.issues, system)
  const problems = [...own, ...unitProblems(raw, base), ...(base === null || base.ok ? [] : base.problems)]
  if (problems.length > 0 || !read.success)
    return failed([...problems, ...crossedBounds((raw as { limits?: unknown }).limits), ...crossedPairs({ ...raw })])
  const under = base?.ok === true ? base.raw : system === 'us' ? commonPracticeUs : commonPractice
  const merged = mergeSheets(under, read.data as unknown as PartSheet, base !== null)
  const late = [...crossedBounds(merged.limits), ...crossedPairs({ ...merged }), ...unfinished(merged)]
  return late.length > 0 ? failed(late) : { ok: true, raw: merged }
}

function parentOf(id: string, find: FindSheet, below: readonly string[]): Whole {
  if (below.length > longestChain) return failed([{ path: 'extends', message: `more than ${longestChain} sheets, one on the other` }])
  if (below.includes(id)) return failed([{ path: 'extends', message: `a circle: ${[...below, id].join(' → ')}` }])
  const raw = find(id)
  if (raw === null || raw === undefined) return failed([{ path: 'extends', message: `there is no sheet ${id}` }])
  const parent = wholeSheet(raw, find, [...below, id])
  if (parent.ok) return parent
  return failed(
    parent.problems.map((each) => (each.path === 'extends' ? each : { path: 'extends', message: `${id}: ${each.path}: ${each.message}` }))
  )
}

/** The units of a sheet: its own, else those of the sheet it extends. */
function systemOf(raw: object, base: Whole | null): SystemName {
  const units = (raw as { units?: unknown }).units
  if (units === 'us' || units === 'metric') return units
  return base?.ok === true ? base.raw.units : 'metric'
}

function unitProblems(raw: object, base: Whole | null): Problem[] {
  const units = (raw as { units?: unknown }).units
  if (units === undefined) return base === null ? [{ path: 'units', message: 'missing: metric or us' }] : []
  if (base?.ok !== true || base.raw.units === units || (units !== 'us' && units !== 'metric')) return []
  return [{ path: 'units', message: `extends a sheet in ${base.raw.units} units` }]
}

/** Substrates that no sheet below completes. */
function unfinished(merged: RawSheet): Problem[] {
  return Object.entries(merged.substrates).flatMap(([name, section]) => {
    return substrateFields
      .filter((field) => field.otherwise === null && section[field[merged.units]] === undefined)
      .map((field) => ({ path: `substrates.${name}.${field[merged.units]}`, message: 'missing' }))
  })
}

function failed(problems: readonly Problem[]): Whole {
  return { ok: false, problems }
}
