import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { LimitsError, readSheets } from '../../../src/adapters/limits/files.js'
import { commonPractice, commonPracticeUs } from '../../../src/core/limits/common-practice.js'
import { type Change, type Cut, changes, cuts, cutText, mutated, polluted } from './mutate.js'

export interface SheetFile {
  readonly base: 'metric' | 'us' | 'small'
  readonly changes: readonly Change[]
  readonly cuts: readonly Cut[]
  readonly head: string
}

const small = {
  id: 'mine',
  version: 1,
  title: 'Mine',
  units: 'metric',
  extends: 'common-practice',
  limits: { airSprayC: { min: 6, basis: 'site' } }
}

/** Bombs and tricks that a YAML file may hold. */
export const heads: readonly string[] = [
  '',
  '',
  '',
  '',
  '# nothing\n',
  '--- !!js/function "x"\n',
  '%YAML 1.1\n---\n',
  'a: &a [x, x, x, x, x, x, x, x, x]\nb: &b [*a, *a, *a, *a, *a, *a, *a, *a, *a]\nc: &c [*b, *b, *b, *b, *b, *b, *b, *b, *b]\nd: [*c, *c, *c, *c, *c, *c, *c, *c, *c]\n',
  'me: &me {me: *me}\n',
  '<<: {id: stolen}\n',
  '__proto__: {polluted: true}\n',
  'constructor: {prototype: {polluted: true}}\n',
  `${'['.repeat(3000)}\n`,
  `${'- '.repeat(3000)}\n`,
  `${'? '.repeat(1000)}\n`,
  '"\\ud800": 1\n'
]

export const sheetFiles: fc.Arbitrary<SheetFile> = fc.record({
  base: fc.constantFrom('metric', 'us', 'small'),
  changes: fc.oneof(changes, fc.constant([])),
  cuts,
  head: fc.constantFrom(...heads)
})

function sheetText({ base, changes: made, cuts: cut, head }: SheetFile): string {
  const whole = { ...(base === 'metric' ? commonPractice : commonPracticeUs), id: 'mine', extends: null }
  const sheet = mutated(base === 'small' ? small : whole, made, { many: 60, deep: 80, chars: 100_000 })
  // JSON over several lines is YAML too.
  return head + cutText(JSON.stringify(sheet, null, 1) ?? '', cut)
}

/** What is wrong with how a folder with such a file was read; null: nothing. Problems by name are right, so is a sheet of numbers. */
export function sheetFault(file: SheetFile): string | null {
  return textFault(sheetText(file))
}

export function textFault(text: string): string | null {
  const folder = mkdtempSync(join(tmpdir(), 'seamhand-fuzz-'))
  try {
    writeFileSync(join(folder, 'mine.yaml'), text)
    const sheets = readSheets(folder)
    for (const id of sheets.ids) {
      const wild = wildNumber(sheets.byId(id))
      if (wild !== null) return `${id}: ${wild}`
    }
    return polluted() ? 'a prototype was changed' : null
  } catch (error) {
    if (!(error instanceof LimitsError)) return `threw ${error instanceof Error ? error.stack : String(error)}`
    if (polluted()) return 'a prototype was changed'
    return error.message.startsWith('mine.yaml: ') || error.message.startsWith('a sheet of the folder')
      ? null
      : `a problem without its file: ${error.message}`
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function wildNumber(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} is ${value}`
  if (typeof value !== 'object' || value === null) return null
  for (const [key, one] of Object.entries(value)) {
    const wild = wildNumber(one, `${path}.${key}`)
    if (wild !== null) return wild
  }
  return null
}
