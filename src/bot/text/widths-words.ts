/** Words on the picture of a welder's coupons, short enough to be read on it, and those of its alt text. */
export interface WidthsWords {
  /** "robot: coupon widths". */
  title(welder: string): string
  readonly mean: string
  /** The control limits. */
  readonly high: string
  readonly low: string
  readonly least: string
  newest(width: string): string
  readonly none: string
  readonly passed: string
  readonly failed: string
  coupons(count: number): string
  /** One coupon in the alt text. */
  one(time: string, width: string, said: string): string
}
