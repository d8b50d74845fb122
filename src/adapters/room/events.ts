import { randomBytes } from 'node:crypto'
import type { RoomChannel } from './channels.js'
import { failureOf } from './deliver.js'
import { roomIds } from './people.js'
import { shownMessage } from './shown.js'
import type { Aside, Loose, RoomMessage } from './types.js'
import type { RoomLang } from './words/index.js'
import { later, roomLang, track, type World } from './world.js'

/** Sends an event, if the app subscribed to it; says by the second argument what went wrong at the first try. */
export function sendEvent(world: World, subscription: string, event: Loose, aside: Aside | null, failed: (why: string) => void = () => {}): void {
  if (!world.settings.events.includes(subscription)) return
  const body = JSON.stringify({
    token: '',
    team_id: roomIds.team,
    api_app_id: roomIds.app,
    event,
    type: 'event_callback',
    event_id: `Ev${randomBytes(8).toString('hex').toUpperCase()}`,
    event_time: Math.floor(world.settings.now() / 1000),
    is_ext_shared_channel: false,
    authorizations: [{ enterprise_id: null, team_id: roomIds.team, user_id: roomIds.botUser, is_bot: true, is_enterprise_install: false }],
    ...(aside === null ? {} : { room: aside })
  })
  track(world, attempt(world, roomLang(world, aside), body, 0, null, failed))
}

/** The same body again and again, up to three retries, each with the service's two headers. */
async function attempt(
  world: World,
  lang: RoomLang,
  body: string,
  retry: number,
  reason: string | null,
  failed: (why: string) => void
): Promise<void> {
  const { deadlineMs, retryMs } = world.settings.timing
  const headers: Record<string, string> = reason === null ? {} : { 'x-slack-retry-num': String(retry), 'x-slack-retry-reason': reason }
  const delivered = await world.deliver('json', body, headers)
  const failure = failureOf(delivered, deadlineMs, lang)
  if (failure === null) return
  world.settings.log('an event was not taken', { retry, failure })
  if (retry === 0) failed(failure)
  const stopped = delivered.kind === 'answer' && delivered.noRetry
  const pause = retryMs[retry]
  if (stopped || pause === undefined) return
  const next = delivered.kind === 'silence' ? 'http_timeout' : delivered.kind === 'broken' ? 'connection_failed' : 'http_error'
  later(world, pause, () => track(world, attempt(world, lang, body, retry + 1, next, failed)))
}

/** A message, or what became of one, as the app hears of it in a conversation it listens to. */
export function tellOfMessage(world: World, channel: RoomChannel, message: RoomMessage, aside: Aside | null, failed?: (why: string) => void): void {
  const event = {
    ...shownMessage(world, message, false),
    channel: channel.id,
    channel_type: kindOf(channel),
    event_ts: message.ts,
    team: roomIds.team
  }
  sendEvent(world, subscriptionOf(channel), event, aside, failed)
}

export function tellOfChange(world: World, channel: RoomChannel, before: RoomMessage, after: RoomMessage | null): void {
  const ts = world.messages.nextTs()
  const common = {
    type: 'message',
    hidden: true,
    channel: channel.id,
    channel_type: kindOf(channel),
    ts,
    event_ts: ts,
    previous_message: shownMessage(world, before, false)
  }
  const event =
    after === null
      ? { ...common, subtype: 'message_deleted', deleted_ts: before.ts }
      : { ...common, subtype: 'message_changed', message: shownMessage(world, after, false) }
  sendEvent(world, subscriptionOf(channel), event, null)
}

function subscriptionOf(channel: RoomChannel): string {
  return channel.with === null ? 'message.channels' : 'message.im'
}

function kindOf(channel: RoomChannel): string {
  return channel.with === null ? 'channel' : 'im'
}
