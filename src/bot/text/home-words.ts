/** What home says beside what answers and posts say. */
export interface HomeWords {
  windowNow(window: string): string
  windowNext(window: string): string
  readonly noWindow: string
  readonly kitReady: string
  nextPost(kind: string, at: string): string
  readonly noChannel: string
  readonly askSite: string
  /** Buttons about one thing of several: which, and what is said of it. */
  readonly numbered: Readonly<Record<'fixed' | 'passed' | 'punchDone', (number: number) => string>>
}
