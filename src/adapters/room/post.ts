import { checkMessage, type Refused, withIds } from './check/index.js'
import { roomIds } from './people.js'
import type { Loose, RoomMessage } from './types.js'
import type { World } from './world.js'

const none = { blocks: [], editedTs: null, threadTs: null, onlyFor: null, metadata: null, files: [], typed: false, bot: false } as const

/** A message of the bot that has passed the limits, before it is put; or why it may not pass. */
export function botMessage(
  world: World,
  to: { channel: string; onlyFor: string | null; threadTs: string | null },
  body: Loose
): RoomMessage | Refused {
  const text = typeof body.text === 'string' ? body.text : ''
  const blocks = Array.isArray(body.blocks) && body.blocks.length === 0 ? undefined : body.blocks
  if (blocks === undefined && text.trim() === '') return { error: 'no_text', messages: [] }
  if (blocks !== undefined) {
    const refused = checkMessage(blocks, (id) => fileReady(world, id))
    if (refused !== null) return refused
  }
  const metadata = typeof body.metadata === 'object' && body.metadata !== null ? (body.metadata as Loose) : null
  if (metadata !== null && !(typeof metadata.event_type === 'string' && typeof metadata.event_payload === 'object')) {
    return { error: 'invalid_metadata_format', messages: [] }
  }
  return {
    ...none,
    ...to,
    ts: world.messages.nextTs(),
    user: roomIds.botUser,
    bot: true,
    text: text.slice(0, 40_000),
    blocks: withIds(blocks),
    metadata
  }
}

export function isRefused(value: RoomMessage | Refused): value is Refused {
  return 'error' in value
}

export function fileReady(world: World, id: unknown): boolean {
  const file = world.files.get(id)
  return file?.mimetype.startsWith('image/') === true && world.files.ready(file)
}

/** What a person typed. */
export function personMessage(world: World, part: Pick<RoomMessage, 'channel' | 'user' | 'text'> & Partial<RoomMessage>): RoomMessage {
  return world.messages.put({ ...none, ts: world.messages.nextTs(), ...part })
}

/** A word of the room itself to one person: no answer, no such command. */
export function notice(world: World, channel: string, user: string, text: string): void {
  world.messages.put({ ...none, channel, ts: world.messages.nextTs(), user: roomIds.room, text, onlyFor: user })
}
