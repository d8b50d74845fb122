import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import { builtInSheets } from '../../bot/limits/index.js'
import { type Problem, parseSheet } from '../../bot/limits/schema.js'
import type { Sheets } from '../../bot/ports.js'
import { commonPractice, commonPracticeUs } from '../../core/limits/common-practice.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import { canonical } from '../../core/log/canonical.js'
import { sha256 } from '../../core/log/sha256.js'

/** Limits sheets that cannot be used: every problem with file and path, nothing half loaded. */
export class LimitsError extends Error {
  override readonly name = 'LimitsError'
}

/** The built-in sheets, and those of a folder of YAML files. Throws a LimitsError that names every problem. */
export function readSheets(folder: string | null): Sheets {
  const sheets = loadAll(folder === null ? [] : yamlFiles(folder))
  const taken = sheets.find(({ id }) => builtIn(id) !== null)
  if (taken !== undefined) throw new LimitsError(`a sheet of the folder may not have the id of a built-in one: ${taken.id}`)
  return sheetsOf([...builtInSheets(), ...sheets])
}

/** One sheet for everything: whatever a site has set. It may extend the built-in ones and those of the folder. */
export function onlySheet(path: string, folder: string | null): Sheets {
  const beside = folder === null ? [] : yamlFiles(folder)
  const sheet = loadAll([...beside.filter((file) => file !== path), path]).at(-1) as LimitsSheet
  return { ids: [sheet.id], byId: () => sheet }
}

/**
 * A sheet from what is kept of one; null when it is none. Its hash is that of what was kept: a section that sheets got since is
 * filled in and must not make it another sheet.
 */
export function resolveKept(raw: unknown): LimitsSheet | null {
  const parsed = parseSheet(raw, builtIn)
  return parsed.ok ? { ...parsed.sheet, sha256: sha256(canonical(raw)), resolved: raw } : null
}

function sheetsOf(list: readonly LimitsSheet[]): Sheets {
  const byId = new Map(list.map((sheet) => [sheet.id, sheet]))
  return { ids: [...byId.keys()], byId: (id) => byId.get(id) ?? null }
}

function builtIn(id: string): unknown {
  return [commonPractice, commonPracticeUs].find((sheet) => sheet.id === id) ?? null
}

function yamlFiles(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith('.yaml'))
      .sort()
      .map((name) => join(folder, name))
  } catch (error) {
    throw new LimitsError(`cannot read the folder of limits sheets ${folder}: ${(error as Error).message}`)
  }
}

function loadAll(paths: readonly string[]): LimitsSheet[] {
  const raws = new Map(paths.map((path) => [path, readYaml(path)]))
  const find = (id: string) => [...raws.values()].find((raw) => idOf(raw) === id) ?? builtIn(id)
  const problems: string[] = []
  const sheets: LimitsSheet[] = []
  const seen = new Set<string>()
  for (const [path, raw] of raws) {
    const parsed = parseSheet(raw, find)
    if (!parsed.ok) problems.push(...parsed.problems.map((problem) => sentence(path, problem)))
    else if (seen.has(parsed.sheet.id)) problems.push(`${basename(path)}: id ${parsed.sheet.id} is taken by another sheet`)
    else sheets.push(parsed.sheet)
    if (parsed.ok) seen.add(parsed.sheet.id)
  }
  if (problems.length > 0) throw new LimitsError(problems.join('\n'))
  return sheets
}

/** Loaded when there is a file: most servers have none, and it is seventy files to load at every start. */
function yaml(): Pick<typeof import('yaml'), 'isCollection' | 'parseDocument' | 'visit'> {
  return createRequire(import.meta.url)('yaml')
}

/** A sheet with everything in it takes 10 KiB. What nests deeper than a line or a file of these sizes lets it, the reader of YAML cannot bear. */
const mostBytes = 64 * 1024
const longestLine = 2000

function readYaml(path: string): unknown {
  try {
    return parsed(readFileSync(path))
  } catch (error) {
    throw new LimitsError(`${basename(path)}: cannot be read: ${(error as Error).message.split('\n')[0]}`)
  }
}

/** Keys that are lists or maps would be written out as text, one in the other, which takes for ever: no sheet has any. */
function parsed(bytes: Buffer): unknown {
  if (bytes.length > mostBytes) throw new Error(`larger than ${mostBytes / 1024} KiB`)
  const text = bytes.toString('utf8')
  if (text.split('\n').some((line) => line.length > longestLine)) throw new Error(`a line longer than ${longestLine} characters`)
  const { isCollection, parseDocument, visit } = yaml()
  const read = parseDocument(text, { logLevel: 'error' })
  const [wrong] = read.errors
  if (wrong !== undefined) throw wrong
  visit(read, {
    Pair: (_, { key }) => {
      if (isCollection(key)) throw new Error('a key that is a list or a map')
    }
  })
  return read.toJS()
}

function idOf(raw: unknown): unknown {
  return typeof raw === 'object' && raw !== null && 'id' in raw ? raw.id : null
}

function sentence(path: string, { path: at, message }: Problem): string {
  return `${basename(path)}: ${at === '' ? '' : `${at}: `}${message}`
}
