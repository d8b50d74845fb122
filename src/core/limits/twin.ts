import { convert } from '../units.js'
import { type Field, limitKey, limitNames, type SystemName, sectionFields, substrateFields } from './fields.js'
import { limitScales, type ScaleName, scales } from './names.js'
import type { RawLimit, RawSection, RawSheet, RawValue } from './raw.js'

/** Significant digits of a converted number: conversion noise goes, and a metric value that went to US units and back is the same again. */
const digits = { us: 15, metric: 12 } as const

/** A number of a scale from one system's unit to the other's. */
export function rescale(value: number, scale: ScaleName, from: SystemName, to: SystemName): number {
  if (from === to) return value
  const converted = convert(value, scales[scale][from].unit, scales[scale][to].unit)
  if (converted === null) throw new Error(`the units of ${scale} do not match`)
  return Number(converted.toPrecision(digits[to]))
}

/** A section with keys and values of another system. Fields that it lacks stay away; `basis` is kept. */
export function sectionIn(section: RawSection, fields: readonly Field[], from: SystemName, to: SystemName): RawSection {
  const result: Record<string, RawValue> = {}
  for (const each of fields) {
    const value = section[each[from]]
    if (value !== undefined) result[each[to]] = valueIn(value, each, from, to)
  }
  return section.basis === undefined ? result : { ...result, basis: section.basis }
}

function valueIn(value: RawValue, field: Field, from: SystemName, to: SystemName): RawValue {
  if (field.kind === 'rows') return (value as readonly RawSection[]).map((row) => sectionIn(row, field.rows, from, to))
  if (typeof value !== 'number' || field.kind === 'plain' || field.kind === 'whole' || field.kind === 'boolean') return value
  return rescale(value, field.kind, from, to)
}

/** The same sheet in US units under another id: every number converted exactly, so that both decide alike. */
export function usTwin(metric: RawSheet, id: string, title: string): RawSheet {
  const limits: Record<string, RawLimit> = {}
  for (const name of limitNames) {
    const limit = metric.limits[limitKey(name, 'metric')]
    if (limit !== undefined) limits[limitKey(name, 'us')] = limitInUs(limit, limitScales[name])
  }
  const section = (name: keyof typeof sectionFields) => sectionIn(metric[name], sectionFields[name], 'metric', 'us')
  return {
    id,
    version: metric.version,
    title,
    units: 'us',
    extends: null,
    limits,
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
    substrates: Object.fromEntries(Object.entries(metric.substrates).map(([name, each]) => [name, sectionIn(each, substrateFields, 'metric', 'us')]))
  }
}

function limitInUs(limit: RawLimit, scale: ScaleName): RawLimit {
  const bound = (value: number | null | undefined) => (typeof value === 'number' ? rescale(value, scale, 'metric', 'us') : null)
  const bounds = { min: bound(limit.min), max: bound(limit.max), cautionBelow: bound(limit.cautionBelow), cautionAbove: bound(limit.cautionAbove) }
  const written = Object.entries(bounds).filter(([, value]) => value !== null)
  return { ...Object.fromEntries(written), basis: limit.basis }
}
