import { z } from 'zod'
import { type Field, limitKey, limitNames, type SectionName, type SystemName, sectionFields, substrateFields } from '../../core/limits/fields.js'
import { type LimitName, limitScales } from '../../core/limits/names.js'
import { rescale } from '../../core/limits/twin.js'

const basis = z.string().trim().min(1)

/** Bounds of one limit. A percentage, a speed or a length cannot be below nothing; a temperature, a margin or minutes can. */
function limitOf(name: LimitName) {
  const scale = limitScales[name]
  const signed = scale === 'temperature' || scale === 'difference' || scale === 'minutes'
  const number = signed
    ? z.number()
    : z
        .number()
        .min(0)
        .max(scale === 'percent' ? 100 : 1e6)
  const bound = number.nullable().optional()
  return z.strictObject({ min: bound, max: bound, cautionBelow: bound, cautionAbove: bound, basis }).optional()
}

function schemaOf(field: Field, system: SystemName): z.ZodType {
  if (field.kind === 'boolean') return z.boolean()
  if (field.kind === 'rows')
    return z
      .array(z.strictObject(shape(field.rows, system, false)))
      .min(1)
      .max(50)
  const { kind, low, high } = field
  if (kind === 'plain' || kind === 'whole') {
    const number = z.number().min(low).max(high)
    return kind === 'whole' ? number.int() : number
  }
  return z
    .number()
    .min(rescale(low, kind, 'metric', system))
    .max(rescale(high, kind, 'metric', system))
}

function shape(fields: readonly Field[], system: SystemName, partial: boolean): Record<string, z.ZodType> {
  return Object.fromEntries(fields.map((field) => [field[system], partial ? schemaOf(field, system).optional() : schemaOf(field, system)]))
}

/** A section: any of its fields may be left out, its basis may not. */
function section(fields: readonly Field[], system: SystemName) {
  return z.strictObject({ ...shape(fields, system, true), basis })
}

/** A sheet as written, in the keys of one system. What is left out comes from elsewhere; what is there must be whole and known. */
function writtenSheet(system: SystemName) {
  const limits = Object.fromEntries(limitNames.map((name) => [limitKey(name, system), limitOf(name)]))
  const sections = Object.fromEntries(
    (Object.keys(sectionFields) as SectionName[]).map((name) => [name, section(sectionFields[name], system).optional()])
  )
  return z.strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9-]+$/)
      .max(64),
    version: z.number().int().min(1),
    title: z.string().trim().min(1).max(200),
    units: z.enum(['metric', 'us']).optional(),
    extends: z.string().nullable().optional(),
    limits: z.strictObject(limits).optional(),
    substrates: z.record(z.string().regex(/^[a-z0-9-]+$/), section(substrateFields, system)).optional(),
    ...sections
  })
}

export const written = { metric: writtenSheet('metric'), us: writtenSheet('us') } as const
