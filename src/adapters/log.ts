import { createHash } from 'node:crypto'
import { type Logger, pino } from 'pino'
import { scrubbed } from './log-scrub.js'

/**
 * Structured lines on standard error: what is printed on standard output is an answer and nothing else. Whatever is handed to it,
 * no secret and no person comes out.
 */
export function createLog(level: string, to: { write(line: string): void } = pino.destination({ dest: 2, sync: true })): Logger {
  const options = {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    // Errors are fields by the time they come to a serializer.
    serializers: { err: (fields: unknown) => fields },
    formatters: { log: scrubbed },
    hooks: {
      logMethod(this: Logger, args: unknown[], method: (...args: unknown[]) => void) {
        method.apply(
          this,
          args.map((arg) => (typeof arg === 'string' ? scrubbed({ arg }).arg : arg))
        )
      }
    }
  }
  return pino(options as pino.LoggerOptions, to)
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
