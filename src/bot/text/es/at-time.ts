/**
 * A time as `views/clock` writes it, with its article: "las 07:30", and of another day "el mié 6 may a las 07:30". Words like `hasta` and
 * `hacia` go before either.
 */
export function theTime(at: string): string {
  const [, day = '', time = at] = /^(.+) (\d{2}:\d{2})$/.exec(at) ?? []
  const hour = `${/^01:/.test(time) ? 'la' : 'las'} ${time}`
  return day === '' ? hour : `el ${day} a ${hour}`
}

/** The same after `de`: "antes de las 07:30", "antes del mié 6 may a las 07:30". */
export function ofTheTime(at: string): string {
  return `de ${theTime(at)}`.replace(/^de el /, 'del ')
}

/** When something was: "a las 07:30", "el mié 6 may a las 07:30". */
export function atTheTime(at: string): string {
  return `a ${theTime(at)}`.replace(/^a el /, 'el ')
}
