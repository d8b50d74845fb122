/** What still stands open at the end of a day. */
export interface StillWords {
  punch(numbers: string): string
  sealOpen(edge: string): string
  readonly sealUnstated: string
  readonly drainsShut: string
  readonly drainsUnstated: string
  readonly sheetsLoose: string
  readonly sheetsUnstated: string
  readonly bond: Readonly<Record<'unstated' | 'failed' | 'unjudged', (substrate: string) => string>>
  readonly details: Readonly<Record<'bad' | 'unchecked', (kinds: string) => string>>
  fireUntil(at: string): string
  readonly fireUnsigned: string
}
