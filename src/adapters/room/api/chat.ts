import { findChannel, type RoomChannel } from '../channels.js'
import { tellOfChange, tellOfMessage } from '../events.js'
import { personById, roomIds } from '../people.js'
import { botMessage, isRefused } from '../post.js'
import { shownMessage } from '../shown.js'
import type { Loose, RoomMessage } from '../types.js'
import type { World } from '../world.js'
import { fail, failRefused, type Method, ok } from './answers.js'

/** The channel of a call that the bot may write in, or the service's error. */
export async function channelFor(world: World, id: unknown): Promise<RoomChannel | Loose> {
  const channel = findChannel(await world.channels(), id)
  if (channel === null) return fail('channel_not_found')
  return channel.member ? channel : fail('not_in_channel')
}

export function isChannel(value: RoomChannel | Loose): value is RoomChannel {
  return !('ok' in value)
}

function threadOf(args: Loose): string | null {
  return typeof args.thread_ts === 'string' ? args.thread_ts : null
}

const postMessage: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const wait = world.rate(channel.id)
  if (wait !== null) return { ...fail('ratelimited'), retryAfterS: wait }
  const message = botMessage(world, { channel: channel.id, onlyFor: null, threadTs: threadOf(args) }, args)
  if (isRefused(message)) return failRefused(message)
  world.messages.put(message)
  tellOfMessage(world, channel, message, null)
  return ok({ channel: channel.id, ts: message.ts, message: shownMessage(world, message, true) })
}

const postEphemeral: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const person = personById(args.user)
  if (person === null) return fail('user_not_in_channel')
  const message = botMessage(world, { channel: channel.id, onlyFor: person.id, threadTs: threadOf(args) }, args)
  if (isRefused(message)) return failRefused(message)
  world.messages.put(message)
  return ok({ message_ts: message.ts })
}

/** A message of the bot that the service would let it change. */
function own(world: World, channel: RoomChannel, ts: unknown, error: string): RoomMessage | Loose {
  const message = world.messages.get(channel.id, String(ts))
  if (message === null || message.onlyFor !== null || message.typed) return fail('message_not_found')
  return message.user === roomIds.botUser ? message : fail(error)
}

const update: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const before = own(world, channel, args.ts, 'cant_update_message')
  if ('ok' in before) return before
  const kept = before as RoomMessage
  const made = botMessage(world, { channel: channel.id, onlyFor: null, threadTs: kept.threadTs }, args)
  if (isRefused(made)) return failRefused(made)
  const after = { ...made, ts: kept.ts, editedTs: made.ts, files: kept.files, metadata: made.metadata ?? kept.metadata }
  world.messages.put(after)
  tellOfChange(world, channel, kept, after)
  return ok({ channel: channel.id, ts: after.ts, text: after.text, message: shownMessage(world, after, true) })
}

const remove: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const message = own(world, channel, args.ts, 'cant_delete_message')
  if ('ok' in message) return message
  world.messages.remove(channel.id, (message as RoomMessage).ts)
  tellOfChange(world, channel, message as RoomMessage, null)
  return ok({ channel: channel.id, ts: args.ts })
}

export const chat: Readonly<Record<string, Method>> = {
  'chat.postMessage': postMessage,
  'chat.postEphemeral': postEphemeral,
  'chat.update': update,
  'chat.delete': remove
}
