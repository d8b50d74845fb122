import type { BufferedIncomingMessage, ReceiverProcessEventErrorHandlerArgs, ReceiverUnhandledRequestHandlerArgs } from '@slack/bolt'
import type { Delivery, Message } from '../../bot/talk/talk.js'
import { AuthorizationError, HTTPModuleFunctions } from './bolt.js'
import { deliveryOf } from './delivery.js'
import type { Context } from './handlers/context.js'
import { at, isLoose, type Loose, textAt } from './loose.js'
import { replyOf } from './out.js'
import { describe, unwrapped } from './problem.js'

/**
 * Answers what failed before a handler did, at once and to the asker alone, with the reference id: without this the person would
 * see 3 s of nothing. A form keeps what was typed. True: the reply has been given.
 */
export async function failedOverHttp(context: Context, { error, request, response }: ReceiverProcessEventErrorHandlerArgs): Promise<boolean> {
  const body = bodyOf(request as BufferedIncomingMessage)
  if (response.headersSent) {
    await failedAfterAck(context, body, error)
    return false
  }
  if (error instanceof AuthorizationError) {
    response.writeHead(401).end()
    return true
  }
  const { reply, after } = failureReply(context, body, unwrapped(error))
  response.writeHead(200, reply === null ? {} : { 'content-type': 'application/json' }).end(reply === null ? '' : JSON.stringify(reply))
  await after()
  return true
}

/** Nobody answered in time, or nobody knows this kind of payload. */
export function unhandledOverHttp(context: Context, { request, response }: ReceiverUnhandledRequestHandlerArgs): void {
  const body = bodyOf(request as BufferedIncomingMessage)
  context.log.error({ kind: kindOf(body) }, 'a payload that nobody answered')
  if (response.headersSent) return
  if (body.command === undefined) return void response.writeHead(404).end()
  const { reply } = failureReply(context, body, new Error('not answered in time'))
  response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(reply))
}

/** In Socket Mode the same replies go back through the connection. */
export async function failedOverSocket(context: Context, error: unknown, body: Loose, ack: (reply?: Loose) => Promise<void>): Promise<void> {
  if (error instanceof AuthorizationError) return ack()
  const { reply, after } = failureReply(context, body, unwrapped(error))
  await ack(reply ?? undefined)
  await after()
}

function failureReply(context: Context, body: Loose, error: unknown): { readonly reply: Loose | null; readonly after: () => Promise<unknown> } {
  const delivery = safeDelivery(context, body)
  const message: Message = { ...context.talk.failed(delivery, error), to: 'asker' }
  const nothing = () => Promise.resolve()
  if (body.command !== undefined) return { reply: replyOf(message), after: nothing }
  const block = textAt(inputOf(body.view), 'block_id')
  if (body.type === 'view_submission' && block !== null)
    return { reply: { response_action: 'errors', errors: { [block]: message.text } }, after: nothing }
  return { reply: null, after: () => context.out.answer(delivery, body, message) }
}

/** The service's wait is over: a message to the person is what is left. Nobody waits for a home or for news of a token. */
async function failedAfterAck(context: Context, body: Loose, error: unknown): Promise<void> {
  context.log.error({ kind: kindOf(body), ...describe(unwrapped(error)) }, 'failed after the acknowledgement')
  const type = textAt(body, 'event', 'type')
  if (type !== null && type !== 'message' && type !== 'app_mention') return
  const delivery = safeDelivery(context, body)
  if (delivery.user !== '') await context.out.answer(delivery, body, { ...context.talk.failed(delivery, unwrapped(error)), to: 'asker' })
}

/** The delivery, even when it was the workspace that could not be found. */
function safeDelivery(context: Context, body: Loose): Delivery {
  try {
    return deliveryOf(context.origin, body)
  } catch {
    return deliveryOf({ ...context.origin, workspaceOf: () => '' }, body)
  }
}

function inputOf(view: unknown): unknown {
  const blocks = at(view, 'blocks')
  return Array.isArray(blocks) ? (blocks.find((block) => at(block, 'type') === 'input') ?? null) : null
}

function kindOf(body: Loose): string {
  return textAt(body, 'event', 'type') ?? textAt(body, 'command') ?? textAt(body, 'type') ?? 'unknown'
}

function bodyOf(request: BufferedIncomingMessage): Loose {
  try {
    const body: unknown = HTTPModuleFunctions.parseHTTPRequestBody(request)
    return isLoose(body) ? body : {}
  } catch {
    return {}
  }
}
