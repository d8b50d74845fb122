/** What a plain question asks of by name, in the order it is answered: what takes people off the roof first. */
export const topics = ['thunder', 'rain', 'dry', 'wind', 'heat', 'cold'] as const
export type Topic = (typeof topics)[number]

/** What a plain question wants to know; an answer says it before everything else. */
export interface Asks {
  readonly topics: readonly Topic[]
  /** Thunder was spoken of beside some work: it may be there, though nothing was logged of it. */
  readonly worried: boolean
}
