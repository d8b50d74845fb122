import type { Delivery, Message } from '../../../bot/talk/talk.js'
import type { Loose } from '../loose.js'
import { bringPhotos } from '../photos.js'
import type { Context } from './context.js'

/** Brings an answer after the service's wait has ended; a failure is answered too. A delivery that came before is not answered again. */
export async function answerLate(context: Context, delivery: Delivery, body: Loose, coming: Promise<Message>, first: boolean): Promise<void> {
  const message = await coming.catch((error: unknown) => context.talk.failed(delivery, error))
  if (!first) return
  if (!(await context.out.answer(delivery, body, message))) context.seen.forget(delivery.claim)
  else await bringPhotos(context, delivery, message)
}
