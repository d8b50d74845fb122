import type { Instant } from '../../core/instant.js'

/** A source that cannot answer now: away, slow, refusing, or answering what cannot be read. */
export class SourceDown extends Error {
  override readonly name = 'SourceDown'
  /** HTTP status; null when there was no answer. */
  readonly status: number | null
  /** Not to be asked again before. */
  readonly retryAt: Instant

  constructor(message: string, status: number | null, retryAt: Instant, cause?: unknown) {
    super(message, { cause })
    this.status = status
    this.retryAt = retryAt
  }
}
