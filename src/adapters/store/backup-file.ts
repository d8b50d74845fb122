import { createHash, type Hash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { type FileHandle, open, rename, rm, stat } from 'node:fs/promises'
import { pipeline } from 'node:stream/promises'
import { createGunzip, createGzip } from 'node:zlib'
import { z } from 'zod'
import { StoreError } from '../../bot/ports.js'
import { atOneMoment, fill } from './copy.js'
import { migrations } from './migrations/index.js'
import type { Database } from './schema.js'
import { allRows, type Rows, type TableName, tableNames } from './tables.js'

/** Lines of JSON, gzipped: the head, then the rows of each table, then the end with the SHA-256 of all lines before it. */
const head = z.strictObject({ seamhand: z.literal('backup'), v: z.literal(1), migrations: z.number().int().min(1) })
const some = z.strictObject({
  table: z.enum(tableNames as [TableName, ...TableName[]]),
  rows: z.array(z.record(z.string(), z.union([z.string(), z.number().int(), z.null()]))).min(1)
})
const end = z.strictObject({ rows: z.number().int().min(0), sha256: z.string() })

/**
 * Writes a store, as it is at one moment, into a new file that only its owner reads; the same for both databases. How many rows it
 * was. A file that could not be written whole is not left behind. Throws StoreError.
 */
export async function writeBackup(db: Database, path: string): Promise<number> {
  if (await there(path)) throw new StoreError(`${path} is there already: a backup goes into a new file`)
  const part = `${path}.part`
  try {
    const count = await atOneMoment(db, async (trx) => writeWhole(part, db.migrated.after, allRows(trx)))
    await rename(part, path)
    return count
  } catch (error) {
    await rm(part, { force: true }).catch(() => undefined)
    throw error instanceof StoreError ? error : new StoreError(`the backup ${path} failed: ${(error as Error).message}`, { cause: error })
  }
}

/** Fills an empty store from a file. Nothing stays of one that is damaged, cut short or of a newer Seamhand. Throws StoreError. */
export async function readBackup(db: Database, path: string): Promise<number> {
  if (!(await there(path))) throw new StoreError(`no such file: ${path}`)
  return fill(db, rowsOf(path))
}

async function writeWhole(path: string, migrated: number, rows: AsyncIterable<Rows>): Promise<number> {
  const file = await open(path, 'wx', 0o600)
  try {
    const counted = { rows: 0 }
    await pipeline(linesOf(migrated, rows, counted), createGzip(), chunksInto(file))
    await file.sync()
    return counted.rows
  } finally {
    await file.close()
  }
}

function chunksInto(file: FileHandle) {
  return async (chunks: AsyncIterable<Buffer>): Promise<void> => {
    for await (const chunk of chunks) await file.writeFile(chunk)
  }
}

async function* linesOf(migrated: number, rows: AsyncIterable<Rows>, counted: { rows: number }): AsyncGenerator<string> {
  const hash = createHash('sha256')
  yield hashed(hash, { seamhand: 'backup', v: 1, migrations: migrated })
  for await (const each of rows) {
    counted.rows += each.rows.length
    yield hashed(hash, each)
  }
  yield `${JSON.stringify({ rows: counted.rows, sha256: hash.digest('hex') })}\n`
}

function hashed(hash: Hash, value: object): string {
  const line = `${JSON.stringify(value)}\n`
  hash.update(line)
  return line
}

async function* rowsOf(path: string): AsyncGenerator<Rows> {
  const hash = createHash('sha256')
  const lines = unzipped(path)
  const first = (await lines.next()).value ?? ''
  headOf(first)
  hash.update(`${first}\n`)
  let count = 0
  let before: string | null = null
  // Each line is read when the next has come: the last one is the end.
  for await (const line of lines) {
    if (before !== null) {
      const rows = part(some, before) as Rows
      hash.update(`${before}\n`)
      count += rows.rows.length
      yield rows
    }
    before = line
  }
  const { rows, sha256 } = part(end, before ?? '')
  if (rows !== count || sha256 !== hash.digest('hex')) throw damaged()
}

function headOf(line: string): void {
  const read = head.safeParse(parsed(line))
  if (!read.success) throw new StoreError('the file is no backup of Seamhand')
  const { migrations: made } = read.data
  if (made > migrations.length)
    throw new StoreError(`the backup is of a newer Seamhand (migration ${made}, this one knows ${migrations.length}): update the program`)
}

function part<T extends z.ZodType>(schema: T, line: string): z.output<T> {
  const read = schema.safeParse(parsed(line))
  if (!read.success) throw damaged()
  return read.data
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}

/** Not by `readline`: its lines just end where the file is damaged. */
async function* unzipped(path: string): AsyncGenerator<string, undefined> {
  const unzip = createGunzip()
  const reading = pipeline(createReadStream(path), unzip)
  reading.catch(() => undefined)
  let rest = ''
  try {
    for await (const text of unzip.setEncoding('utf8')) {
      const lines = `${rest}${text as string}`.split('\n')
      rest = lines.pop() ?? ''
      yield* lines
    }
    await reading
  } catch (error) {
    throw damaged(error)
  }
  if (rest !== '') throw damaged()
}

function damaged(cause?: unknown): StoreError {
  return new StoreError('the backup is damaged or cut short: nothing was restored', { cause })
}

async function there(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false
  )
}
