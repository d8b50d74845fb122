import { StoreError } from '../../bot/ports.js'

/** What the drivers put on their errors: `errcode` SQLite (extended), `code` PostgreSQL's SQLSTATE or the system's name. */
interface DriverError {
  readonly message: string
  readonly code?: unknown
  readonly errcode?: unknown
}

/** SQLSTATE of PostgreSQL, appendix A of its manual, and the system's names of a connection that is none any more. */
const away: ReadonlySet<string> = new Set(['57P01', '57P02', '57P03', '25P03', 'ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT', 'EHOSTUNREACH'])
/** Said without a code by the driver. */
const cut = /^Connection terminated|^timeout exceeded when trying to connect|^Client has encountered a connection error/

interface Failing {
  /** SQLite primary result code and its text, https://sqlite.org/rescode.html; the npm drop-in leaves the code out of some errors. */
  readonly code: number
  readonly text: string
  readonly sentence: string
}

const busy: Failing = { code: 5, text: 'database is locked', sentence: 'the store is locked by another process' }
const failings: readonly Failing[] = [
  busy,
  { code: 6, text: 'database table is locked', sentence: 'the store is locked by another process' },
  { code: 8, text: 'attempt to write a readonly database', sentence: 'the store cannot be written' },
  { code: 10, text: 'disk I/O error', sentence: 'the disk of the store fails' },
  { code: 11, text: 'database disk image is malformed', sentence: 'the store is damaged' },
  { code: 13, text: 'database or disk is full', sentence: 'the disk of the store is full' },
  { code: 14, text: 'unable to open database file', sentence: 'the store cannot be opened' },
  { code: 26, text: 'file is not a database', sentence: 'the store is damaged or not a database' }
]

/** Runs something of the driver's; what it throws comes out as a StoreError. */
export async function outside<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run()
  } catch (error) {
    throw asStoreError(error)
  }
}

/** The same around something of the caller's: what that throws passes unchanged, also when the rollback after it fails. */
export async function around<In, Out, T>(inner: (value: In) => Promise<Out>, run: (watched: (value: In) => Promise<Out>) => Promise<T>): Promise<T> {
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

/** Whether the database went away, as when another takes over: nothing is known of what was under way. */
export function isAway(error: unknown): boolean {
  const driver = driverError(error instanceof StoreError ? error.cause : error)
  if (driver === null) return false
  const { code, message } = driver
  return (typeof code === 'string' && (away.has(code) || code.startsWith('08'))) || cut.test(message)
}

/** Whether SQLite gave up because another connection holds the file. */
export function isBusy(error: unknown): boolean {
  const driver = driverError(error)
  return driver !== null && is(busy, driver)
}

function sentence(error: unknown): string {
  const driver = driverError(error)
  if (driver === null) return `the store failed: ${String(error)}`
  const known = failings.find((failing) => is(failing, driver))
  if (known) return `${known.sentence}: ${driver.message}`
  if (driver.code === '55P03') return `the store is locked by another process: ${driver.message}`
  if (driver.code === '53100') return `the disk of the store is full: ${driver.message}`
  return `the store failed: ${driver.message || String(driver.code)}`
}

function is({ code, text }: Failing, { errcode, message }: DriverError): boolean {
  return typeof errcode === 'number' ? (errcode & 0xff) === code : message === text
}

function driverError(error: unknown): DriverError | null {
  return error instanceof Error ? error : null
}
