import type { App } from '@slack/bolt'
import { onCommand } from './handlers/command.js'
import type { Ack, Context } from './handlers/context.js'
import { handledEvents, onEvent } from './handlers/event.js'
import { onPress, onShortcut } from './handlers/press.js'
import { onSubmit } from './handlers/submit.js'
import type { Loose } from './loose.js'

type Handler = (context: Context, body: Loose, ack: Ack) => Promise<void>
type Args = { readonly body: unknown; readonly ack: unknown }

const events = new RegExp(`^(${handledEvents.join('|')})$`)

/**
 * One listener for each kind of payload, handing on to a handler: the chain of every listener runs for every request, and of two
 * that match the second acknowledgement throws. What a command, an action or a form means is decided behind `Talk`.
 */
export function register(app: App, context: Context): void {
  const on = (handler: Handler) => (args: Args) => handler(context, args.body as Loose, args.ack as Ack)
  app.use(({ next }) => context.work.track(next()))
  app.command(/^\//, on(onCommand))
  app.action(/^/, on(onPress))
  app.view({ callback_id: /^/, type: 'view_submission' }, on(onSubmit))
  app.view(
    { callback_id: /^/, type: 'view_closed' },
    on((_context, _body, ack) => ack())
  )
  app.shortcut({ type: 'message_action' }, on(onShortcut))
  app.event(events, ({ body }) => onEvent(context, body as unknown as Loose))
  // Swallowed here, an error before the acknowledgement would be 3 s of silence: the receiver's handler answers it.
  app.error(async (error) => {
    throw error
  })
}
