/** What stands before an answer that would else be read as all go. */
export interface FirstWords {
  /** A test square failed on these. */
  glueNoMore(substrates: string): string
  /** The answer as it would be without what stands before it. */
  otherwise(headline: string): string
  /** No void is logged, and of these metres nobody said that they were probed. */
  noVoids(welded: string): string
  /** No void, and no weld either. */
  readonly noWelds: string
  /** Of a repair: nobody said how it was done. */
  readonly stepsUnsaid: string
  readonly passedWarm: string
  /** An entry that may be one logged twice, or that cannot be: by number of the void, count, side of the roof, time. */
  sameVoid(n: string): string
  noCourse(most: string): string
  beyondRoof(side: string): string
  sameLaid(at: string): string
  /** That no heat is logged does not say that there was none. */
  readonly noHeat: string
  /** What counts as heat, and how any other is said. */
  readonly heat: string
}
