/** A formula was asked outside its range. `word` names the value. */
export class OutOfRange extends RangeError {
  readonly word: string

  constructor(word: string, message: string) {
    super(message)
    this.name = 'OutOfRange'
    this.word = word
  }
}

/**
 * Fails loudly outside `low`…`high` (ends included, NaN refused). What people and weather services say is checked where
 * it comes in; a formula asked beyond its range is a mistake in the program, and a believable number would hide it.
 */
export function within(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new OutOfRange(name, `${name} ${value} is outside ${low}…${high}`)
}

/** The same for a value that must be above `low`. */
export function above(name: string, value: number, low: number, high: number): void {
  if (!(value > low && value <= high)) throw new OutOfRange(name, `${name} ${value} is outside > ${low}…${high}`)
}
