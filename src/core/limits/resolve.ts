import { canonical } from '../log/canonical.js'
import { sha256 } from '../log/sha256.js'
import { type Field, limitKey, limitNames, type SystemName, sectionFields, substrateFields } from './fields.js'
import { type LimitName, limitScales, scales } from './names.js'
import type { RawSection, RawSheet } from './raw.js'
import type { Limit, LimitsSheet } from './sheet.js'
import { sectionIn } from './twin.js'

/**
 * A checked, complete sheet (`extends` already followed) as the rules use it: limits in the sheet's own units, everything else metric.
 * Throws when a part is missing: that is a bug of the caller, not of whoever wrote the sheet.
 */
export function resolveSheet(raw: RawSheet): LimitsSheet {
  const { units } = raw
  const resolved: RawSheet = { ...raw, extends: null }
  const section = <Name extends keyof typeof sectionFields>(name: Name) => {
    return metric(raw[name], sectionFields[name], units, name) as unknown as LimitsSheet[Name]
  }
  return {
    id: raw.id,
    version: raw.version,
    title: raw.title,
    units,
    sha256: sha256(canonical(resolved)),
    resolved,
    limits: Object.fromEntries(limitNames.map((name) => [name, limitOf(raw, name)])) as Record<LimitName, Limit>,
    maxAgeMin: section('maxAgeMin'),
    changed: section('changed'),
    spread: section('spread'),
    sheet: section('sheet'),
    strip: section('strip'),
    foam: section('foam'),
    kit: section('kit'),
    site: section('site'),
    power: section('power'),
    crew: section('crew'),
    takeoff: section('takeoff'),
    substrates: Object.fromEntries(
      Object.entries(raw.substrates).map(([name, each]) => [name, metric(each, substrateFields, units, name)])
    ) as unknown as LimitsSheet['substrates']
  }
}

/** A section in metric units and keys, without its basis, with what holds where nobody says otherwise. */
function metric(section: RawSection, fields: readonly Field[], from: SystemName, name: string): RawSection {
  const unsaid = fields.filter((field) => section[field[from]] === undefined)
  for (const { otherwise, ...field } of unsaid) if (otherwise === null) throw new Error(`a limits sheet without ${name}.${field[from]}`)
  const { basis: _, ...rest } = sectionIn(section, fields, from, 'metric')
  return { ...rest, ...Object.fromEntries(unsaid.map(({ metric: key, otherwise }) => [key, otherwise as number])) }
}

function limitOf(raw: RawSheet, name: LimitName): Limit {
  const limit = raw.limits[limitKey(name, raw.units)]
  if (limit === undefined) throw new Error(`a limits sheet without ${limitKey(name, raw.units)}`)
  const { min = null, max = null, cautionBelow = null, cautionAbove = null, basis } = limit
  return { unit: scales[limitScales[name]][raw.units].unit, min, max, cautionBelow, cautionAbove, basis }
}
