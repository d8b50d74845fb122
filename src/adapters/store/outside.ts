import { StoreError } from '../../bot/ports.js'

/** What the drivers put on their errors: `errcode` SQLite (extended), `code` PostgreSQL's SQLSTATE or the system's name. */
interface DriverError {
  readonly message: string
  readonly code?: unknown
  readonly errcode?: unknown
}

/** SQLite primary result codes, https://sqlite.org/rescode.html */
const sqliteSentences: Readonly<Record<number, string>> = {
  5: 'the store is locked by another process',
  6: 'the store is locked by another process',
  8: 'the store cannot be written',
  10: 'the disk of the store fails',
  11: 'the store is damaged',
  13: 'the disk of the store is full',
  14: 'the store cannot be opened',
  26: 'the store is damaged or not a database'
}

/** Runs something of the driver's; what it throws comes out as a StoreError. */
export async function outside<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run()
  } catch (error) {
    throw asStoreError(error)
  }
}

/** The same around something of the caller's: what that throws passes unchanged, also when the rollback after it fails. */
export async function around<In, Out, T>(
  inner: (value: In) => Promise<Out>,
  run: (watched: (value: In) => Promise<Out>) => Promise<T>
): Promise<T> {
  const thrown: unknown[] = []
  async function watched(value: In): Promise<Out> {
    try {
      return await inner(value)
    } catch (error) {
      thrown.push(error)
      throw error
    }
  }
  try {
    return await run(watched)
  } catch (error) {
    throw thrown.length > 0 ? thrown[0] : asStoreError(error)
  }
}

/** A driver's error as a StoreError with a sentence; a StoreError, and a mistake of ours (TypeError), as it is. */
export function asStoreError(error: unknown): unknown {
  if (error instanceof StoreError || error instanceof TypeError) return error
  return new StoreError(sentence(error), { cause: error })
}

/** Whether PostgreSQL asks for the transaction to be tried again: serialization failure or deadlock. */
export function mayRetry(error: unknown): boolean {
  const code = driverError(error instanceof StoreError ? error.cause : error)?.code
  return code === '40001' || code === '40P01'
}

function sentence(error: unknown): string {
  const driver = driverError(error)
  if (driver === null) return `the store failed: ${String(error)}`
  const known = typeof driver.errcode === 'number' ? sqliteSentences[driver.errcode & 0xff] : undefined
  if (known !== undefined) return `${known}: ${driver.message}`
  return `the store failed: ${driver.message || String(driver.code)}`
}

function driverError(error: unknown): DriverError | null {
  return error instanceof Error ? error : null
}
