import type { Problem } from './problem.js'

/** Bounds in the order in which they must stand on the scale. */
const order = ['min', 'cautionBelow', 'cautionAbove', 'max'] as const

/** Bounds of limits that stand in the wrong order, in a sheet that may be wrong in other ways too. */
export function crossedBounds(limits: unknown): Problem[] {
  return entriesOf(limits).flatMap(([name, limit]) => {
    const bounds = order.flatMap((bound) => {
      const value = isObject(limit) ? limit[bound] : null
      return typeof value === 'number' ? [{ bound, value }] : []
    })
    return bounds.flatMap((high, i) => {
      const low = bounds.slice(0, i).find(({ value }) => value > high.value)
      if (low === undefined) return []
      return [{ path: `limits.${name}.${low.bound}`, message: `crossed: ${low.bound} ${low.value} is above ${high.bound} ${high.value}` }]
    })
  })
}

/** Pairs elsewhere in a sheet that stand in the wrong order. */
export function crossedPairs(sheet: Readonly<Record<string, unknown>>): Problem[] {
  return [...pair(sheet, 'changed', 'cloudLowPct', 'cloudHighPct'), ...pair(sheet, 'sheet', 'relaxMin', 'relaxColdMin'), ...openTime(sheet)]
}

function pair(sheet: Readonly<Record<string, unknown>>, section: string, low: string, high: string): Problem[] {
  const values = sheet[section]
  if (!isObject(values)) return []
  const [a, b] = [values[low], values[high]]
  if (typeof a !== 'number' || typeof b !== 'number' || a <= b) return []
  return [{ path: `${section}.${low}`, message: `crossed: ${low} ${a} is above ${high} ${b}` }]
}

/** The points of the open time: at least two, warmer each time, and no slower for it. */
function openTime(sheet: Readonly<Record<string, unknown>>): Problem[] {
  const points = isObject(sheet.foam) ? sheet.foam.openTime : null
  if (!Array.isArray(points)) return []
  if (points.length < 2) return [{ path: 'foam.openTime', message: 'two points at least' }]
  return points.flatMap((point: unknown, i) => {
    const before: unknown = points[i - 1]
    if (!isObject(point) || !isObject(before)) return []
    const warmer = Number(point.c ?? point.f) > Number(before.c ?? before.f)
    const faster = Number(point.s) <= Number(before.s)
    return warmer && faster ? [] : [{ path: `foam.openTime.${i}`, message: 'crossed: points go from cold and slow to warm and fast' }]
  })
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function entriesOf(value: unknown): readonly (readonly [string, unknown])[] {
  return isObject(value) ? Object.entries(value) : []
}
