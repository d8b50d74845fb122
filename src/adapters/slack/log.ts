import { LogLevel } from './bolt.js'
import type { Loose } from './loose.js'

/** Structured lines, as pino writes them. */
export interface SlackLog {
  debug(fields: Loose, message: string): void
  info(fields: Loose, message: string): void
  warn(fields: Loose, message: string): void
  error(fields: Loose, message: string): void
}

/** What the framework's own parts log through. */
export interface FrameworkLogger {
  debug(...parts: unknown[]): void
  info(...parts: unknown[]): void
  warn(...parts: unknown[]): void
  error(...parts: unknown[]): void
  setLevel(level: LogLevel): void
  getLevel(): LogLevel
  setName(name: string): void
}

const longest = 300

/** The framework's debug lines hold whole bodies, and with them tokens and reply addresses: they are never written. */
export function frameworkLogger(log: SlackLog): FrameworkLogger {
  return {
    debug: () => {},
    info: (...parts) => log.debug({ part: 'bolt' }, said(parts)),
    warn: (...parts) => log.warn({ part: 'bolt' }, said(parts)),
    error: (...parts) => log.error({ part: 'bolt' }, said(parts)),
    setLevel: () => {},
    getLevel: () => LogLevel.INFO,
    setName: () => {}
  }
}

function said(parts: readonly unknown[]): string {
  const words = parts.map((part) => (part instanceof Error ? part.message : typeof part === 'string' ? part : ''))
  return words
    .filter((word) => word !== '')
    .join(' ')
    .slice(0, longest)
}
