import { SourceDown } from '../../src/adapters/weather/source-down.js'

/** The error of a request to a weather source that must fail. */
export async function downOf(request: Promise<unknown>): Promise<SourceDown> {
  const error = await request.then(
    () => null,
    (reason: unknown) => reason
  )
  if (!(error instanceof SourceDown)) throw new Error(`not down: ${error}`)
  return error
}
