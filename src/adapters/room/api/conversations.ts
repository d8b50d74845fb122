import { directIdOf, findChannel, type RoomChannel } from '../channels.js'
import { laterThan } from '../messages.js'
import { personById, roomIds } from '../people.js'
import { shownMessage } from '../shown.js'
import type { Loose, RoomMessage } from '../types.js'
import type { World } from '../world.js'
import { fail, type Method, ok } from './answers.js'
import { channelFor, isChannel } from './chat.js'

/** What the service counts as a message: nothing for one person alone, no command as typed. */
function kept(world: World, channel: RoomChannel): readonly RoomMessage[] {
  return world.messages.of(channel.id).filter((message) => message.onlyFor === null && !message.typed)
}

/** One page of messages within `oldest` and `latest`, in the order given, as the service pages. */
function page(world: World, messages: readonly RoomMessage[], args: Loose): Loose {
  const { oldest, latest } = args
  const both = isYes(args.inclusive)
  const after = (ts: string) => oldest === undefined || laterThan(ts, String(oldest)) || (both && ts === oldest)
  const before = (ts: string) => latest === undefined || laterThan(String(latest), ts) || (both && ts === latest)
  const inside = messages.filter((message) => after(message.ts) && before(message.ts))
  const limit = Math.min(999, Math.max(1, Number(args.limit) || 100))
  const from = Math.max(0, Number(args.cursor) || 0)
  const more = inside.length > from + limit
  return ok({
    messages: inside.slice(from, from + limit).map((message) => shownMessage(world, message, isYes(args.include_all_metadata))),
    has_more: more,
    pin_count: 0,
    response_metadata: { next_cursor: more ? String(from + limit) : '' }
  })
}

function isYes(value: unknown): boolean {
  return value === true || value === 'true' || value === '1' || value === 1
}

const history: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const top = kept(world, channel).filter((message) => message.threadTs === null || message.threadTs === message.ts)
  return page(world, top.toReversed(), args)
}

const replies: Method = async (world, args) => {
  const channel = await channelFor(world, args.channel)
  if (!isChannel(channel)) return channel
  const thread = kept(world, channel).filter((message) => message.ts === args.ts || message.threadTs === args.ts)
  return thread.length === 0 ? fail('thread_not_found') : page(world, thread, args)
}

function shown(channel: RoomChannel): Loose {
  if (channel.with !== null) return { id: channel.id, is_im: true, is_channel: false, user: channel.with, is_archived: false, is_org_shared: false }
  return {
    id: channel.id,
    name: channel.name,
    name_normalized: channel.name,
    is_channel: true,
    is_im: false,
    is_private: false,
    is_archived: false,
    is_general: false,
    is_member: channel.member,
    num_members: 4,
    topic: { value: channel.site?.title ?? '', creator: '', last_set: 0 },
    purpose: { value: '', creator: '', last_set: 0 }
  }
}

const info: Method = async (world, args) => {
  const channel = findChannel(await world.channels(), args.channel)
  return channel === null ? fail('channel_not_found') : ok({ channel: shown(channel) })
}

const list: Method = async (world, args) => {
  const types = String(args.types ?? 'public_channel').split(',')
  const wanted = (await world.channels()).filter((channel) => types.includes(channel.with === null ? 'public_channel' : 'im'))
  return ok({ channels: wanted.map(shown), response_metadata: { next_cursor: '' } })
}

const open: Method = async (_world, args) => {
  const people = Array.isArray(args.users) ? args.users : String(args.users ?? '').split(',')
  const person = personById(people[0])
  if (person === null || people.length !== 1) return fail('users_not_found')
  return ok({ no_op: true, already_open: true, channel: { id: directIdOf(person.id), is_im: true, user: person.id } })
}

const members: Method = async (world, args) => {
  const channel = findChannel(await world.channels(), args.channel)
  if (channel === null) return fail('channel_not_found')
  const people = channel.with === null ? ['U0CREW', 'U0SUPERVISOR', 'U0INSPECTOR'] : [channel.with]
  return ok({ members: channel.member ? [...people, roomIds.botUser] : people, response_metadata: { next_cursor: '' } })
}

export const conversations: Readonly<Record<string, Method>> = {
  'conversations.history': history,
  'conversations.replies': replies,
  'conversations.info': info,
  'conversations.list': list,
  'conversations.open': open,
  'conversations.members': members
}
