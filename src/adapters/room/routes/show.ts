import { shownView, type View } from '../modals.js'
import { wordFor } from '../people.js'
import type { Loose, RoomMessage } from '../types.js'
import type { World } from '../world.js'

/** A message in the page's data. */
export function pageMessage(world: World, message: RoomMessage): Loose {
  const files = message.files.flatMap((id) => world.files.get(id) ?? [])
  return {
    ts: message.ts,
    user: wordFor(message.user),
    text: message.text,
    blocks: message.blocks,
    edited: message.editedTs !== null,
    thread: message.threadTs === message.ts ? null : message.threadTs,
    onlyFor: message.onlyFor === null ? null : wordFor(message.onlyFor),
    typed: message.typed,
    files: files.map((file) => ({ id: file.id, title: file.title, mimetype: file.mimetype, alt: file.alt ?? file.title, size: file.size }))
  }
}

export function pageView(view: View | null): Loose | null {
  return view === null ? null : shownView(view)
}
