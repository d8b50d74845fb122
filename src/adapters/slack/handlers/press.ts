import type { ModalView } from '@slack/types'
import type { Delivery, Pressed } from '../../../bot/talk/talk.js'
import { deliveryOf } from '../delivery.js'
import { at, type Loose, textAt } from '../loose.js'
import { bringPhotos } from '../photos.js'
import { describe } from '../problem.js'
import { pressedValue } from '../values.js'
import { within } from '../work.js'
import type { Ack, Context } from './context.js'
import { refreshHome } from './home.js'

/** A button or a choice. */
export function onPress(context: Context, body: Loose, ack: Ack): Promise<void> {
  const action = at(body, 'actions', 0)
  return press(context, body, ack, textAt(action, 'action_id') ?? '', pressedValue(action))
}

/** A message shortcut: the photos of the message go with it. */
export function onShortcut(context: Context, body: Loose, ack: Ack): Promise<void> {
  const delivery = deliveryOf(context.origin, body)
  return act(context, delivery, body, ack, () => context.talk.shortcut(delivery, textAt(body, 'callback_id') ?? ''))
}

function press(context: Context, body: Loose, ack: Ack, actionId: string, value: string): Promise<void> {
  const delivery = deliveryOf(context.origin, body)
  return act(context, delivery, body, ack, () => context.talk.press(delivery, actionId, value))
}

async function act(context: Context, delivery: Delivery, body: Loose, ack: Ack, run: () => Promise<Pressed>): Promise<void> {
  const { out, seen, talk } = context
  const first = seen.first(delivery.claim)
  const pressed = run()
  const soon = await within(pressed, context.answerMs)
  if (soon !== 'late') {
    // The trigger of a form lives 3 s: it is spent before anything else is waited for.
    await Promise.all([first ? finish(context, delivery, body, soon.value) : null, ack()])
  } else {
    await ack()
    await out.answer(delivery, body, { ...talk.working(delivery), to: 'asker' })
    const result: Pressed = await pressed.catch((error: unknown) => ({ kind: 'message' as const, message: talk.failed(delivery, error) }))
    if (first) await finish(context, delivery, body, result)
  }
  refreshHome(context, delivery)
}

async function finish(context: Context, delivery: Delivery, body: Loose, pressed: Pressed): Promise<void> {
  const { out, seen, talk } = context
  if (pressed.kind === 'message') {
    if (!(await out.answer(delivery, body, pressed.message))) return seen.forget(delivery.claim)
    return bringPhotos(context, delivery, pressed.message)
  }
  const problem = await openForm(context, delivery, body, pressed.view)
  if (problem !== null) await out.answer(delivery, body, talk.failed(delivery, problem))
}

/** Null when it is open. Over an open form the new one is laid on top. */
export async function openForm({ workspaces, log }: Context, { workspace }: Delivery, body: Loose, view: ModalView): Promise<unknown> {
  const trigger_id = textAt(body, 'trigger_id') ?? ''
  try {
    const member = await workspaces.of(workspace)
    if (member === null) return null
    const { views } = member.clients.triggers
    if (textAt(body, 'view', 'type') === 'modal') await views.push({ trigger_id, view })
    else await views.open({ trigger_id, view })
    return null
  } catch (error) {
    log.warn(describe(error), 'form not opened')
    return error
  }
}
