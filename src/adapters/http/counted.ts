/** Read when somebody looks; each answers soon, and null is not known now. */
export interface Readings {
  /** Posts that are not ended, by state. */
  readonly outbox: () => Promise<Readonly<Record<string, number>> | null>
  /** Seconds that the oldest of them is overdue; 0 for none. */
  readonly overdueS: () => Promise<number | null>
  /** The parts of readiness. */
  readonly ready: () => Promise<Readonly<Record<string, boolean>>>
}

/** What the parts of the server count. Labels are of fixed lists: no site, workspace or person is one. */
export interface Counted {
  /** An answer of the bot: what came (say, press, submit, home). */
  answered(what: string, seconds: number): void
  /** A bug was reported. */
  bug(): void
  /** An append: done, repeated, no-site or failed, with its entries. */
  appended(how: string, entries: number, seconds: number): void
  posted(how: string, count: number): void
  /** An answer of a weather source: fresh, unchanged or down. */
  weather(source: string, how: string): void
  ticked(ok: boolean, seconds: number): void
}
