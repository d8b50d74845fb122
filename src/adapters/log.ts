import { createHash } from 'node:crypto'
import { type Logger, pino } from 'pino'

/** Structured lines on standard error: what is printed on standard output is an answer and nothing else. */
export function createLog(level: string): Logger {
  return pino({ level, base: null, timestamp: pino.stdTimeFunctions.isoTime }, pino.destination({ dest: 2, sync: true }))
}

/**
 * Logs a bug and gives its reference id, which the person sees too: the same bug at the same place has the same id,
 * so that an answer does not differ from run to run.
 */
export function reportBug(log: Logger, error: unknown, context: Readonly<Record<string, string>>): string {
  const stack = error instanceof Error ? (error.stack ?? error.message) : String(error)
  const ref = createHash('sha256').update(stack.split('\n').slice(0, 3).join('\n')).digest('hex').slice(0, 8)
  log.error({ ref, ...context, err: error }, 'bug')
  return ref
}
