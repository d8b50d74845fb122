import type { IncomingMessage, ServerResponse } from 'node:http'
import { newFile } from '../api/files.js'
import { sendEvent } from '../events.js'
import { HttpError, readBody, readJson, sendJson } from '../http.js'
import { closeView, press, shortcut, submit } from '../interact.js'
import { shownView, type View } from '../modals.js'
import { say } from '../say.js'
import type { Loose, RoomMessage } from '../types.js'
import { unanswered } from '../values.js'
import type { World } from '../world.js'
import { actorOf, channelOf, mayRead, objectOf, personOf } from './read.js'

export type Route = (world: World, req: IncomingMessage, res: ServerResponse, url: URL) => Promise<void>

const sayBytes = 64 * 1024
const formBytes = 256 * 1024
const fileBytes = 20 * 1024 * 1024

export const postSay: Route = async (world, req, res) => {
  const body = await readJson(req, sayBytes)
  const actor = actorOf(world, body)
  const channel = await channelOf(world, body.site, actor.person)
  const text = typeof body.text === 'string' ? body.text.trim() : ''
  const files = Array.isArray(body.files) ? body.files.map(String).filter((id) => world.files.get(id) !== null) : []
  if (text === '' && files.length === 0) throw new HttpError(400, 'empty')
  const thread = typeof body.thread === 'string' && world.messages.get(channel.id, body.thread) !== null ? body.thread : null
  const ts = say(world, { channel, ...actor, text, thread, files })
  sendJson(res, 202, { ts })
}

export const postPress: Route = async (world, req, res) => {
  const body = await readJson(req, formBytes)
  const actor = actorOf(world, body)
  const on = await pressed(world, body)
  if (typeof body.shortcut === 'string' && 'message' in on) return sendJson(res, 200, { problem: await shortcut(world, actor, on, body.shortcut) })
  sendJson(res, 200, { problem: await press(world, actor, on, objectOf(body.action), objectOf(body.values)) })
}

async function pressed(world: World, body: Loose): Promise<View | { message: RoomMessage; channel: Awaited<ReturnType<typeof channelOf>> }> {
  const person = personOf(body.user)
  if (typeof body.view === 'string') return ownView(world, body)
  const channel = await channelOf(world, body.site, person)
  const message = world.messages.get(channel.id, String(body.ts))
  if (message === null || !mayRead(message, person)) throw new HttpError(404, 'no-message')
  return { message, channel }
}

/** A view of that person's own. */
function ownView(world: World, body: Loose): View {
  const view = world.modals.find(String(body.view), undefined)
  if (view === null || view.owner.user !== personOf(body.user).id) throw new HttpError(404, 'no-view')
  return view
}

export const postSubmit: Route = async (world, req, res) => {
  const body = await readJson(req, formBytes)
  const actor = actorOf(world, body)
  const view = ownView(world, body)
  const values = objectOf(body.values)
  const errors = unanswered(world, view, values, actor.aside.lang)
  if (Object.keys(errors.errors).length > 0) return sendJson(res, 200, { problem: null, errors: errors.errors })
  sendJson(res, 200, await submit(world, actor, view, errors.values))
}

export const postClosed: Route = async (world, req, res) => {
  const body = await readJson(req, formBytes)
  sendJson(res, 200, { problem: await closeView(world, actorOf(world, body), ownView(world, body), body.all === true) })
}

/** The home was opened: the app draws it. */
export const postHome: Route = async (world, req, res) => {
  const actor = actorOf(world, await readJson(req, formBytes))
  const view = world.modals.home(actor.person.id)
  const event = {
    type: 'app_home_opened',
    user: actor.person.id,
    channel: `D0${actor.person.id.slice(2)}`,
    tab: 'home',
    event_ts: world.messages.nextTs(),
    ...(view === null ? {} : { view: shownView(view) })
  }
  sendEvent(world, 'app_home_opened', event, actor.aside)
  sendJson(res, 202, {})
}

/** Bytes of a file that a person picked. */
export const postUpload: Route = async (world, req, res, url) => {
  const person = personOf(url.searchParams.get('user'))
  const bytes = await readBody(req, fileBytes)
  if (bytes.length === 0) throw new HttpError(400, 'empty')
  const name = (url.searchParams.get('name') ?? 'file').replace(/[^\p{L}\p{N}. _-]/gu, '').slice(0, 100) || 'file'
  const file = world.files.put(
    newFile(world, { id: world.files.newId(), name, title: name, alt: null, owner: person.id, channel: null }, bytes),
    bytes
  )
  sendJson(res, 200, { id: file.id, name: file.name })
}
