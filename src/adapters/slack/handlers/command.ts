import type { Message } from '../../../bot/talk/talk.js'
import { deliveryOf } from '../delivery.js'
import { type Loose, textAt } from '../loose.js'
import { replyOf } from '../out.js'
import { bringPhotos } from '../photos.js'
import { commandText } from '../text.js'
import { within } from '../work.js'
import type { Ack, Context } from './context.js'
import { refreshHome } from './home.js'
import { answerLate } from './late.js'
import { openForm } from './press.js'

/** A slash command: committed, then answered in the reply itself; when that takes too long the answer follows. */
export async function onCommand(context: Context, body: Loose, ack: Ack): Promise<void> {
  const { talk, origin, seen } = context
  const delivery = deliveryOf(origin, body)
  const first = seen.first(delivery.claim)
  const said: Promise<Message> = talk.say(delivery, commandText(textAt(body, 'command') ?? '', textAt(body, 'text') ?? ''))
  const soon = await within(said, context.answerMs)
  if (soon !== 'late') {
    const { form, ...message } = soon.value
    // Where the form says all that a message to the asker would, it alone is shown.
    const alone = form !== undefined && message.to === 'asker'
    // The trigger of a form lives 3 s: it is spent before anything else is waited for.
    const [problem] = await Promise.all([
      form !== undefined && first ? openForm(context, delivery, body, form) : null,
      alone ? ack() : ack(replyOf(message))
    ])
    if (problem !== null && alone) await context.out.answer(delivery, body, message)
    if (first) {
      await context.out.share(delivery, body, message)
      await bringPhotos(context, delivery, message)
    }
  } else {
    await ack(replyOf({ ...talk.working(delivery), to: 'asker' }))
    await answerLate(context, delivery, body, said, first)
  }
  refreshHome(context, delivery)
}
