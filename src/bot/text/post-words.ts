/** What the posts say besides what answers say. */
export interface PostWords {
  /** What the first line is about: what is judged, where, on which day. */
  about(activity: string, site: string, date: string): string
  /** Hours and outcome of a window. */
  window(hours: string, outcome: string): string
  /** The rule that ends a window. */
  ends(rule: string): string
  noWindow(least: string): string
  readonly noForecast: string
  binds(finding: string): string
  /** Follows a finding: when it is like that. */
  around(at: string): string
  range(name: string, low: string, high: string): string
  upTo(name: string, high: string): string
  /** Readings that the forecast cannot give. */
  beforeWork(readings: string): string
  kitCold(air: string, limit: string): string
  kitHot(air: string, limit: string): string
}
