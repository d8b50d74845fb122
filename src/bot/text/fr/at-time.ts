/**
 * A time as `views/clock` writes it: "07:30", and of another day with its article, "le mer. 6 mai à 07:30". Words like `vers`, `dès` and
 * `avant` go before either.
 */
export function theTime(at: string): string {
  const [, day = '', time = at] = /^(.+) (\d{2}:\d{2})$/.exec(at) ?? []
  return day === '' ? time : `le ${day} à ${time}`
}

/** "jusqu’à 07:30", "jusqu’au mer. 6 mai à 07:30". */
export function untilTheTime(at: string): string {
  return `jusqu’à ${theTime(at)}`.replace('jusqu’à le ', 'jusqu’au ')
}

/** "de 07:30", "du mer. 6 mai à 07:30". */
export function ofTheTime(at: string): string {
  return `de ${theTime(at)}`.replace(/^de le /, 'du ')
}

/** When something was: "à 07:30", "le mer. 6 mai à 07:30". */
export function atTheTime(at: string): string {
  return `à ${theTime(at)}`.replace(/^à le /, 'le ')
}
