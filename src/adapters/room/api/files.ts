import { findChannel, type RoomChannel } from '../channels.js'
import { tellOfMessage } from '../events.js'
import { mimeOf } from '../files.js'
import { roomIds } from '../people.js'
import { botMessage, isRefused } from '../post.js'
import type { Loose, RoomFile } from '../types.js'
import { later, type World } from '../world.js'
import { fail, failRefused, type Method, ok } from './answers.js'

/** First of three steps: a place to send the bytes to. */
const getUrl: Method = async (world, args) => {
  const name = String(args.filename ?? '')
  const length = Number(args.length)
  if (name === '' || !(Number.isInteger(length) && length > 0)) return fail('invalid_arguments')
  const id = world.files.newId()
  world.uploads.set(id, { name, alt: typeof args.alt_txt === 'string' ? args.alt_txt : null, bytes: null })
  return ok({ upload_url: `${world.settings.base()}/room/ticket/${id}`, file_id: id })
}

/** Last step: the files become known at once; their message and shares come a moment later. */
const complete: Method = async (world, args) => {
  const asked = Array.isArray(args.files) ? (args.files as readonly Loose[]) : []
  const tickets = asked.map((file) => ({ id: String(file.id), title: file.title, ticket: world.uploads.get(String(file.id)) }))
  if (tickets.length === 0) return fail('invalid_arguments')
  if (tickets.some(({ ticket }) => ticket?.bytes == null)) return fail('file_not_found')
  const wanted = args.channel_id ?? args.channels
  const channel = wanted === undefined ? null : findChannel(await world.channels(), wanted)
  if (wanted !== undefined && channel === null) return fail('channel_not_found')
  if (channel !== null && !channel.member) return fail('not_in_channel')
  const files = tickets.map(({ id, title, ticket }) => {
    world.uploads.delete(id)
    const bytes = ticket?.bytes ?? Buffer.alloc(0)
    const name = ticket?.name ?? id
    const shown = typeof title === 'string' ? title : name
    return world.files.put(
      newFile(world, { id, name, title: shown, alt: ticket?.alt ?? null, owner: roomIds.botUser, channel: channel?.id ?? null }, bytes),
      bytes
    )
  })
  if (channel !== null) {
    const refused = shareLater(world, channel, files, args)
    if (refused !== null) return refused
  }
  return ok({ files: files.map((file) => ({ id: file.id, title: file.title })) })
}

export function newFile(world: World, part: Pick<RoomFile, 'id' | 'name' | 'title' | 'alt' | 'owner' | 'channel'>, bytes: Buffer): RoomFile {
  return { ...part, mimetype: mimeOf(bytes), size: bytes.length, createdMs: world.settings.now(), ts: null }
}

/** With a comment the blocks are left out, as the service does. */
function shareLater(world: World, channel: RoomChannel, files: readonly RoomFile[], args: Loose): Loose | null {
  const comment = typeof args.initial_comment === 'string' ? args.initial_comment : null
  const body = {
    text: comment ?? files.map((file) => file.title).join(', '),
    ...(comment === null && args.blocks !== undefined ? { blocks: args.blocks } : {})
  }
  const threadTs = typeof args.thread_ts === 'string' ? args.thread_ts : null
  const made = botMessage(world, { channel: channel.id, onlyFor: null, threadTs }, body)
  if (isRefused(made)) return failRefused(made)
  later(world, world.settings.timing.fileMs, () => {
    const message = world.messages.put({ ...made, ts: world.messages.nextTs(), files: files.map((file) => file.id) })
    for (const file of files) world.files.put({ ...file, ts: message.ts }, null)
    tellOfMessage(world, channel, message, null)
  })
  return null
}

const info: Method = async (world, args) => {
  const file = world.files.get(args.file)
  return file === null
    ? fail('file_not_found')
    : ok({ file: world.files.shown(file, world.settings.base()), comments: [], response_metadata: { next_cursor: '' } })
}

export const files: Readonly<Record<string, Method>> = {
  'files.getUploadURLExternal': getUrl,
  'files.completeUploadExternal': complete,
  'files.info': info
}
