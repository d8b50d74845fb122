import type { Json, JsonObject } from '../../../core/log/entry.js'
import type { CodeName, RecordWords } from '../../text/record-words.js'
import type { Text } from '../../text/text.js'
import { amount, unitOfName } from '../../views/amount.js'
import type { How } from '../../views/how.js'

/** Text of a person or of a service as it stands in a document: one line, nothing that does not show. */
export function plainText(text: string): string {
  return text
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu, '')
    .trim()
}

const deepest = 4

/** The data of an entry in words, member by member, in a person's units: "air: 20 °C · fleece dry: yes". */
export function dataWords(data: JsonObject, how: How, words: RecordWords, depth = 0): string {
  const said = Object.entries(data).flatMap(([name, value]) => {
    const shown = valueWords(name, value, how, words, depth)
    return shown === null ? [] : [`${memberWords(name, words)}: ${shown}`]
  })
  return said.join(' · ')
}

/** The same of an entry: a repair that says nothing of its steps says so. */
export function entryWords(type: string, data: JsonObject, how: How, { record, first }: Pick<Text, 'record' | 'first'>): string {
  const words = dataWords(data, how, record)
  if (type !== 'repair' || data.steps !== undefined || data.patched === true) return words
  return words === '' ? first.stepsUnsaid : `${words} · ${first.stepsUnsaid}`
}

function memberWords(name: string, { members }: RecordWords): string {
  return Object.hasOwn(members, name) ? members[name as keyof typeof members] : plainText(name)
}

function valueWords(name: string, value: Json, how: How, words: RecordWords, depth: number): string | null {
  if (value === null || depth > deepest || (Array.isArray(value) && value.length === 0)) return null
  if (typeof value === 'boolean') return value ? words.yes : words.no
  if (typeof value === 'number') return amount(value, unitOf(name), how)
  if (typeof value === 'string') return isCode(name, value, words) ? words.codes[value] : plainText(value)
  if (name === 'estimated' && Array.isArray(value)) return value.map((one) => memberWords(String(one), words)).join(', ')
  if (Array.isArray(value)) return value.flatMap((one) => valueWords(name, one, how, words, depth + 1) ?? []).join(', ')
  return `(${dataWords(value as JsonObject, how, words, depth + 1)})`
}

/** What people wrote themselves stays as they wrote it, though it may read like a code: a lot called soft, a colour that is dark. */
const free: ReadonlySet<string> = new Set(['lot', 'colour', 'by', 'text', 'reason', 'file', 'files', 'decision'])

function isCode(name: string, value: string, { codes }: RecordWords): value is CodeName {
  return !free.has(name) && Object.hasOwn(codes, value)
}

/** Numbers that are no amounts: counts, places in a list. */
const bare: ReadonlySet<string> = new Set(['lat', 'lon', 'sheets', 'course', 'target'])

function unitOf(name: string): string | null {
  if (bare.has(name)) return null
  if (name === 'widthsMm') return 'mm'
  if (name === 'areaMm2') return 'mm2'
  if (name === 'volts' || name === 'toolV') return 'V'
  if (name === 'watts') return 'W'
  if (name.endsWith('N')) return 'N'
  return unitOfName(name)
}
