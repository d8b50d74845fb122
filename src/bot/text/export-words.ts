/** What is said of a file that was written at the terminal: what it holds, how much, where. */
export interface ExportWords {
  /** The log as it was hashed; date null: all days. Entries counted, with their noun. */
  log(site: string, date: string | null, entries: string): string
  /** Days counted, with their noun. */
  packet(site: string, days: string): string
  /** A sentence of what it holds, and where it is. */
  file(said: string, path: string): string
}
