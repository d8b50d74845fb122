import { findChannel } from './channels.js'
import type { Refused } from './check/index.js'
import { jsonOf } from './deliver.js'
import { tellOfChange, tellOfMessage } from './events.js'
import { botMessage, isRefused, notice } from './post.js'
import type { HookTarget } from './tickets.js'
import type { Loose } from './types.js'
import { roomSays } from './words/index.js'
import { roomLang, type World } from './world.js'

/** The body of a command's reply: an object, or bare text. Nothing for an empty one. */
export function replyBody(body: string): Loose | null {
  if (body.trim() === '') return null
  return jsonOf(body) ?? { text: body }
}

/** Does what an answer (in the reply, or through its address) says: post to one or to all, replace, delete. */
export async function applyAnswer(world: World, target: HookTarget, body: Loose): Promise<Refused | null> {
  const { messages } = world
  const original = target.original === null ? null : messages.get(target.channel, target.original)
  const channel = findChannel(await world.channels(), target.channel)
  if (body.delete_original === true) {
    if (original === null) return null
    messages.remove(target.channel, original.ts)
    if (channel !== null && original.onlyFor === null) tellOfChange(world, channel, original, null)
    return null
  }
  const open = body.response_type === 'in_channel'
  const threadTs = typeof body.thread_ts === 'string' ? body.thread_ts : target.threadTs
  const message = botMessage(world, { channel: target.channel, onlyFor: open ? null : target.user, threadTs }, body)
  if (isRefused(message)) return message
  if (body.replace_original === true && original !== null) {
    const changed = messages.put({ ...message, ts: original.ts, threadTs: original.threadTs, onlyFor: original.onlyFor, editedTs: message.ts })
    if (channel !== null && original.onlyFor === null) tellOfChange(world, channel, original, changed)
    return null
  }
  if (open) showTyped(world, target)
  messages.put(message)
  if (open && channel !== null) tellOfMessage(world, channel, message, null)
  return null
}

/** A command stands for all to see once its answer does. */
function showTyped(world: World, target: HookTarget): void {
  const typed = target.typed === null ? null : world.messages.get(target.channel, target.typed)
  if (typed !== null && typed.onlyFor !== null) world.messages.put({ ...typed, onlyFor: null })
}

export function tellRefused(world: World, target: HookTarget, refused: Refused): void {
  world.settings.log('an answer was refused', { error: refused.error, messages: refused.messages })
  notice(
    world,
    target.channel,
    target.user,
    roomSays(roomLang(world, null, target.user), 'refused', { why: [refused.error, ...refused.messages].join(' ') })
  )
}
