import type { RawLimit, RawSection, RawSheet } from './raw.js'

/** A sheet as written: any part may be left out, but never the basis of what is there. */
export type PartSheet = Pick<RawSheet, 'id' | 'version' | 'title'> & Partial<Omit<RawSheet, 'id' | 'version' | 'title'>>

/**
 * Lays a sheet over a complete one. Sections merge by member; lists are replaced whole. `inherits`: a limit keeps the bounds of
 * the base that it does not write (`extends`); otherwise a limit that is written stands alone. The result extends nothing.
 */
export function mergeSheets(base: RawSheet, over: PartSheet, inherits: boolean): RawSheet {
  return {
    id: over.id,
    version: over.version,
    title: over.title,
    units: over.units ?? base.units,
    extends: null,
    limits: mergeLimits(base.limits, over.limits ?? {}, inherits),
    maxAgeMin: mergeSection(base.maxAgeMin, over.maxAgeMin),
    changed: mergeSection(base.changed, over.changed),
    spread: mergeSection(base.spread, over.spread),
    sheet: mergeSection(base.sheet, over.sheet),
    strip: mergeSection(base.strip, over.strip),
    foam: mergeSection(base.foam, over.foam),
    kit: mergeSection(base.kit, over.kit),
    substrates: mergeSubstrates(base.substrates, over.substrates ?? {}),
    site: mergeSection(base.site, over.site),
    power: mergeSection(base.power, over.power),
    crew: mergeSection(base.crew, over.crew),
    takeoff: mergeSection(base.takeoff, over.takeoff)
  }
}

function mergeSection(base: RawSection, over: RawSection | undefined): RawSection {
  return { ...base, ...over }
}

function mergeSubstrates(base: RawSheet['substrates'], over: RawSheet['substrates']): RawSheet['substrates'] {
  const merged: Record<string, RawSection> = { ...base }
  for (const [name, section] of Object.entries(over)) merged[name] = { ...base[name], ...section }
  return merged
}

function mergeLimits(base: RawSheet['limits'], over: RawSheet['limits'], inherits: boolean): RawSheet['limits'] {
  const merged: Record<string, RawLimit> = { ...base }
  for (const [key, limit] of Object.entries(over)) {
    const under = base[key]
    merged[key] = inherits && under !== undefined ? mergeLimit(under, limit) : limit
  }
  return merged
}

/** An inherited caution that a new no-go bound has passed says nothing any more: it falls away instead of crossing. */
function mergeLimit(base: RawLimit, over: RawLimit): RawLimit {
  const merged = { ...base, ...over }
  const { min, max, cautionBelow, cautionAbove } = merged
  const passedLow = over.cautionBelow === undefined && !inOrder(min, cautionBelow)
  const passedHigh = over.cautionAbove === undefined && !inOrder(cautionAbove, max)
  return { ...merged, ...(passedLow ? { cautionBelow: null } : {}), ...(passedHigh ? { cautionAbove: null } : {}) }
}

function inOrder(low: number | null | undefined, high: number | null | undefined): boolean {
  return low === null || low === undefined || high === null || high === undefined || low <= high
}
