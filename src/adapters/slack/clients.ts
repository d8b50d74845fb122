import { webApi } from './bolt.js'
import { frameworkLogger, type SlackLog } from './log.js'

type Fetch = typeof globalThis.fetch
type Client = InstanceType<typeof webApi.WebClient>
type ClientOptions = NonNullable<ConstructorParameters<typeof webApi.WebClient>[1]>

/** Milliseconds after which a call to the service is given up. */
export const callMs = 10_000

export interface ClientSettings {
  readonly apiUrl: string
  readonly log: SlackLog
  readonly fetch: Fetch
}

/**
 * A fetch that ends: the reply address of the framework has no timeout of its own. A 429 without a readable Retry-After, which the
 * web client would turn into a nameless error, gets one of 30 s.
 */
export function boundedFetch(inner: Fetch, ms: number): Fetch {
  return async (input, init) => {
    const end = AbortSignal.timeout(ms)
    const signal = init?.signal ? AbortSignal.any([init.signal, end]) : end
    const answer = await inner(input, { ...init, signal })
    if (answer.status !== 429 || /^\d+$/.test(answer.headers.get('retry-after') ?? '')) return answer
    await answer.body?.cancel()
    return new Response(null, { status: 429, headers: { 'retry-after': '30' } })
  }
}

/**
 * Options of one client, made anew each time: the framework writes into what it is given. No retries, since a retry after a lost
 * answer posts twice; a 429 is an error at once, since waiting for it would hold every other call. Never `headers`: the web client
 * writes the token into them.
 */
export function clientOptions({ apiUrl, log, fetch }: ClientSettings, retries = 0): ClientOptions {
  return {
    slackApiUrl: apiUrl,
    logger: frameworkLogger(log),
    retryConfig: { retries, minTimeout: 300, factor: 2 },
    rejectRateLimitedCalls: true,
    timeout: callMs,
    fetch: boundedFetch(fetch, callMs)
  }
}

export interface Clients {
  /** Messages, history, home. */
  readonly posts: Client
  /** Calls with a trigger, which lives 3 s: nothing else may stand in their way. */
  readonly triggers: Client
}

export function createClients(botToken: string, settings: ClientSettings): Clients {
  return { posts: new webApi.WebClient(botToken, clientOptions(settings)), triggers: new webApi.WebClient(botToken, clientOptions(settings)) }
}

/** Who the token belongs to. Safe to repeat, so it alone is tried three times. */
export async function whoAmI(botToken: string, settings: ClientSettings): Promise<{ readonly botId: string; readonly botUserId: string }> {
  const answer = await new webApi.WebClient(botToken, clientOptions(settings, 2)).auth.test()
  if (answer.user_id === undefined) throw new Error('auth.test named no user')
  return { botId: answer.bot_id ?? answer.user_id, botUserId: answer.user_id }
}
