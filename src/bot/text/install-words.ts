/** What the pages say by which a workspace gets the bot. */
export interface InstallWords {
  readonly title: string
  readonly add: string
  readonly done: string
  readonly failed: string
}
