/** What is said of a kit that warms beyond when it is ready for certain. */
export interface WarmingWords {
  likely(at: string): string
  /** `pairs`: of readings. */
  learned(factor: string, pairs: number): string
}
