/** A sentence for the operator: a token that is not taken, a service that does not answer. */
export class SlackError extends Error {
  override readonly name = 'SlackError'
}
