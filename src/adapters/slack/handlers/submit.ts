import type { Delivery, Submitted } from '../../../bot/talk/talk.js'
import { clip, withEntities } from '../../../bot/views/escape.js'
import { deliveryOf } from '../delivery.js'
import { type Loose, textAt } from '../loose.js'
import { bringPhotos } from '../photos.js'
import { formValues } from '../values.js'
import { within } from '../work.js'
import type { Ack, Context } from './context.js'
import { refreshHome } from './home.js'

/** Of what was typed so many characters are said again. */
const mostWords = 1500

/** A sent form: mistakes stay at their fields, the form open; else it closes and the answer goes to the channel. */
export async function onSubmit(context: Context, body: Loose, ack: Ack): Promise<void> {
  const { origin, out, seen, talk } = context
  const delivery = deliveryOf(origin, body)
  const first = seen.first(delivery.claim)
  const [callback, metadata] = [textAt(body, 'view', 'callback_id') ?? '', textAt(body, 'view', 'private_metadata') ?? '']
  const submitted = talk.submit(delivery, callback, metadata, formValues(body.view))
  const soon = await within(submitted, context.answerMs)
  if (soon !== 'late' && soon.value.kind === 'errors') {
    seen.forget(delivery.claim)
    return ack({ response_action: 'errors', errors: soon.value.errors })
  }
  await ack({ response_action: 'clear' })
  if (soon === 'late') await out.answer(delivery, body, { ...talk.working(delivery), to: 'asker' })
  const result = await submitted.catch((error: unknown): Submitted => ({ kind: 'message', message: talk.failed(delivery, error), channel: null }))
  if (first) await finish(context, delivery, result)
  refreshHome(context, delivery)
}

async function finish(context: Context, delivery: Delivery, result: Submitted): Promise<void> {
  const { out, seen } = context
  const said =
    result.kind === 'errors'
      ? // The form is closed: what was wrong is said with what was typed, to be sent again, and nothing was logged.
        await out.say(
          { workspace: delivery.workspace, channel: delivery.channel, user: delivery.user, thread: null },
          {
            text: [...Object.values(result.errors), ...(result.words ? [withEntities(clip(result.words, mostWords))] : [])].join('\n'),
            blocks: [],
            to: 'asker',
            files: []
          }
        )
      : await out.say(
          { workspace: delivery.workspace, channel: result.channel ?? delivery.channel, user: delivery.user, thread: result.thread ?? null },
          result.message
        )
  if (!said) seen.forget(delivery.claim)
  else if (result.kind === 'message') await bringPhotos(context, delivery, result.message, result.channel ?? delivery.channel)
}
