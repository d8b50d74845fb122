import nock from 'nock'
import { afterAll, afterEach, beforeEach, expect } from 'vitest'

/**
 * For every test of a file: no request leaves the machine, a request without a mock fails the test even where the code
 * under test swallows it, and so does a mock that was never asked for.
 */
export function guardHttp(): void {
  let unexpected: string[] = []
  const note = (request: { method?: string; url?: string; options?: { href?: string; method?: string } }) => {
    unexpected.push(`${request.method ?? request.options?.method} ${request.url ?? request.options?.href}`)
  }
  beforeEach(() => {
    unexpected = []
    if (!nock.isActive()) nock.activate()
    nock.disableNetConnect()
    nock.emitter.on('no match', note)
  })
  afterEach(() => {
    nock.emitter.off('no match', note)
    const pending = nock.pendingMocks()
    nock.abortPendingRequests()
    nock.cleanAll()
    expect(unexpected, 'requests without a mock').toEqual([])
    expect(pending, 'mocks never asked for').toEqual([])
  })
  afterAll(() => {
    nock.enableNetConnect()
    nock.restore()
  })
}
