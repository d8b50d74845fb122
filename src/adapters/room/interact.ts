import type { RoomChannel } from './channels.js'
import { checkView, withIds } from './check/index.js'
import { type Delivered, failureOf, jsonOf } from './deliver.js'
import { shownView, type View } from './modals.js'
import { type RoomPerson, roomIds } from './people.js'
import { fileReady } from './post.js'
import { shownMessage } from './shown.js'
import type { Aside, Loose, RoomMessage } from './types.js'
import { type RoomLang, roomSays } from './words/index.js'
import { roomLang, type World } from './world.js'

/** Who acts, from which open page. */
export interface Actor {
  readonly person: RoomPerson
  readonly tab: string
  readonly aside: Aside
}

/** Null when all went well; else what the person is told. */
type Problem = string | null

export async function press(
  world: World,
  actor: Actor,
  on: { message: RoomMessage; channel: RoomChannel } | View,
  action: Loose,
  values: Loose
): Promise<Problem> {
  const actions = [{ ...action, action_ts: world.messages.nextTs() }]
  const place = 'message' in on ? onMessage(world, actor, on) : { container: { type: 'view', view_id: on.id }, view: shownView(on, values) }
  return interact(world, { ...common(world, actor, 'block_actions'), ...place, actions, state: { values } })
}

function onMessage(world: World, actor: Actor, on: { message: RoomMessage; channel: RoomChannel }): Loose {
  const { message, channel } = on
  const oneOnly = message.onlyFor !== null
  return {
    container: { type: 'message', message_ts: message.ts, channel_id: channel.id, is_ephemeral: oneOnly },
    channel: { id: channel.id, name: channel.name },
    ...(oneOnly ? {} : { message: shownMessage(world, message, false) }),
    response_url: hookFor(world, actor, message)
  }
}

function hookFor(world: World, actor: Actor, message: RoomMessage): string {
  const id = world.hooks.make({ channel: message.channel, user: actor.person.id, original: message.ts, typed: null, threadTs: message.threadTs })
  return `${world.settings.base()}/room/hook/${id}`
}

/** A message shortcut: an action of the app that a person picks on any message. */
export function shortcut(world: World, actor: Actor, on: { message: RoomMessage; channel: RoomChannel }, callbackId: string): Promise<Problem> {
  return interact(world, {
    ...common(world, actor, 'message_action'),
    callback_id: callbackId,
    message_ts: on.message.ts,
    action_ts: world.messages.nextTs(),
    channel: { id: on.channel.id, name: on.channel.name },
    message: shownMessage(world, on.message, false),
    response_url: hookFor(world, actor, on.message)
  })
}

interface Submitted {
  readonly problem: Problem
  /** By block id. */
  readonly errors: Loose
}

export async function submit(world: World, actor: Actor, view: View, values: Loose): Promise<Submitted> {
  const payload = { ...common(world, actor, 'view_submission'), view: shownView(view, values), response_urls: [] }
  const delivered = await deliverPayload(world, payload)
  const lang = roomLang(world, actor.aside)
  const failure = failureOf(delivered, world.settings.timing.deadlineMs, lang)
  if (failure !== null || delivered.kind !== 'answer') return { problem: roomSays(lang, 'nothingSent', { why: failure ?? '' }), errors: {} }
  return afterSubmit(world, view, jsonOf(delivered.body), lang)
}

function afterSubmit(world: World, view: View, answer: Loose | null, lang: RoomLang): Submitted {
  const refuse = (why: string): Submitted => ({ problem: roomSays(lang, 'refused', { why }), errors: {} })
  const { modals } = world
  const action = answer?.response_action
  if (action === 'errors') return { problem: null, errors: (answer?.errors as Loose | undefined) ?? {} }
  if (action === 'clear') modals.close(view.owner, true)
  else if (action === undefined) modals.close(view.owner, false)
  else if (action === 'update' || action === 'push') {
    const refused = checkView(answer?.view, 'modal', (id) => fileReady(world, id))
    if (refused !== null) return refuse([refused.error, ...refused.messages].join(' '))
    const next = answer?.view as Loose
    const body = { ...next, blocks: withIds(next.blocks) }
    if (action === 'update') modals.update(view, body)
    else if (modals.push(view.owner, body) === 'push_limit_reached') return refuse('push_limit_reached')
  } else return refuse(`response_action ${String(action)}`)
  return { problem: null, errors: {} }
}

/** A form was closed without sending; the app hears of it where it asked to. */
export async function closeView(world: World, actor: Actor, view: View, all: boolean): Promise<Problem> {
  world.modals.close(view.owner, all)
  if (view.body.notify_on_close !== true) return null
  return interact(world, { ...common(world, actor, 'view_closed'), view: shownView(view), is_cleared: all })
}

function common(world: World, actor: Actor, type: string): Loose {
  const { person, tab, aside } = actor
  return {
    type,
    token: '',
    api_app_id: roomIds.app,
    team: { id: roomIds.team, domain: 'local-room' },
    enterprise: null,
    is_enterprise_install: false,
    user: { id: person.id, username: person.role, name: person.role, team_id: roomIds.team },
    trigger_id: world.triggers.make({ user: person.id, tab }),
    room: aside
  }
}

async function interact(world: World, payload: Loose): Promise<Problem> {
  const lang = roomLang(world, (payload.room as Aside | undefined) ?? null)
  const failure = failureOf(await deliverPayload(world, payload), world.settings.timing.deadlineMs, lang)
  return failure === null ? null : roomSays(lang, 'notReached', { why: failure })
}

function deliverPayload(world: World, payload: Loose): Promise<Delivered> {
  return world.deliver('form', new URLSearchParams({ payload: JSON.stringify(payload) }).toString())
}
