import { roomIds } from './people.js'
import type { Loose, RoomMessage } from './types.js'
import type { World } from './world.js'

/** A message as the service hands it out; its metadata only when asked for. */
export function shownMessage(world: World, message: RoomMessage, metadata: boolean): Loose {
  const { ts, user, text, blocks, editedTs, threadTs } = message
  const files = message.files.flatMap((id) => world.files.get(id) ?? [])
  return {
    type: 'message',
    user,
    text,
    ts,
    team: roomIds.team,
    ...(message.bot ? { bot_id: roomIds.bot, app_id: roomIds.app } : {}),
    ...(files.length > 0 ? { subtype: 'file_share', files: files.map((file) => world.files.shown(file, world.settings.base())) } : {}),
    ...(blocks.length > 0 ? { blocks } : {}),
    ...(editedTs === null ? {} : { edited: { user, ts: editedTs } }),
    ...(threadTs === null ? {} : { thread_ts: threadTs }),
    ...(metadata && message.metadata !== null ? { metadata: message.metadata } : {})
  }
}
