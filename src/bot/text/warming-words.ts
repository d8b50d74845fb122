/** What is said of a kit that warms beyond when it is ready for certain. */
export interface WarmingWords {
  /** Likely ready by the mean, and surely by the slow bound. */
  likely(at: string, surelyBy: string): string
  /** `pairs`: of readings. */
  learned(factor: string, pairs: number): string
}
