import { HTTPReceiver, SocketModeReceiver } from './bolt.js'
import { type ClientSettings, clientOptions } from './clients.js'
import { failedOverHttp, failedOverSocket, unhandledOverHttp } from './failure.js'
import type { Context } from './handlers/context.js'
import { type FrameworkLogger, frameworkLogger } from './log.js'
import { isLoose } from './loose.js'

const bodyLimit = 1024 * 1024
/** Just inside the service's 3 s. */
const unhandledMs = 2900

/** The framework's HTTP end, with a limit to what it reads and answers to what fails. */
export function httpReceiver(signingSecret: string, context: Context, logger: FrameworkLogger): HTTPReceiver {
  return new HTTPReceiver({
    signingSecret,
    logger,
    bodyLimit,
    unhandledRequestTimeoutMillis: unhandledMs,
    processEventErrorHandler: (args) => failedOverHttp(context, args),
    unhandledRequestHandler: (args) => unhandledOverHttp(context, args)
  })
}

/** Its client options are its own: it writes a retry rule of 100 tries into them, which must not reach a client that posts. */
export function socketReceiver(appToken: string, context: Context, settings: ClientSettings): SocketModeReceiver {
  const { retryConfig: _, ...own } = clientOptions(settings)
  return new SocketModeReceiver({
    appToken,
    logger: frameworkLogger(settings.log),
    installerOptions: { clientOptions: { ...own, rejectRateLimitedCalls: false } },
    processEventErrorHandler: async ({ error, event }) => {
      const ack = event.ack as (reply?: unknown) => Promise<void>
      await failedOverSocket(context, error, isLoose(event.body) ? event.body : {}, ack)
      return false
    }
  })
}
