/** The terminal that a subcommand runs in; main wires it to the process, tests to arrays. */
export interface Terminal {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Lines of standard input. */
  readonly lines: () => AsyncIterable<string>
  readonly now: () => number
}

/** A sentence for the person at the terminal and the exit code: nothing was wrong with the program. */
export class Stop extends Error {
  override readonly name = 'Stop'
  constructor(
    message: string,
    readonly code: 1 | 2,
    readonly errorCode: string
  ) {
    super(message)
  }
}
