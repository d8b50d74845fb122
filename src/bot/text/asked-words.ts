/** What a plain question asks of the deck, the rain and the thunder of a day. */
export interface AskedWords {
  readonly deck: {
    /** Somebody said so, and that still holds. */
    readonly dry: string
    /** By the model alone: nobody stated it. */
    readonly likelyDry: string
    readonly wet: string
    /** Of a day to come. */
    readonly wetEarly: string
    readonly unknown: string
    driesAt(at: string): string
    /** Of a day to come. */
    readonly startsDry: string
  }
  readonly rain: {
    readonly falling: string
    readonly none: string
    from(at: string): string
    readonly unknown: string
  }
  readonly noThunder: string
  /** To the first line where thunder was spoken of and nothing of it is known here. */
  readonly byForecast: string
}
