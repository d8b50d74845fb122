import { timingSafeEqual } from 'node:crypto'
import type { IncomingMessage, ServerResponse } from 'node:http'
import { handleApi } from './api/index.js'
import { HttpError, isOwn, sendJson } from './http.js'
import { sendAsset, sendPage } from './page/index.js'
import { pageKey } from './page-key.js'
import { getChanges, getHome, getMessages, getSites, getViews, sendFile } from './routes/fetch.js'
import { postHook, postTicket } from './routes/service.js'
import { getWhatIf } from './routes/what-if.js'
import { postClosed, postHome, postPress, postSay, postSubmit, postUpload, type Route } from './routes/write.js'
import type { RoomOptions } from './types.js'
import { createWorld, type World } from './world.js'

export { channelIdOf } from './channels.js'
export { roomPeople } from './people.js'
export type { RoomOptions, RoomSite } from './types.js'

/** The local room: a small stand-in for the chat service, and the page that people use it through. */
export interface Room {
  /** True when the request was the room's; it is answered then. */
  readonly handle: (req: IncomingMessage, res: ServerResponse) => Promise<boolean>
  readonly close: () => Promise<void>
}

const routes: Readonly<Record<string, Route>> = {
  'POST /room/say': postSay,
  'GET /room/messages': getMessages,
  'GET /room/changes': getChanges,
  'GET /room/sites': getSites,
  'GET /room/home': getHome,
  'GET /room/views': getViews,
  'GET /room/what-if': getWhatIf,
  'POST /room/press': postPress,
  'POST /room/submit': postSubmit,
  'POST /room/closed': postClosed,
  'POST /room/home': postHome,
  'POST /room/upload': postUpload
}

export function createRoom(options: RoomOptions): Room {
  const world = createWorld(options)
  const key = pageKey(options.folder)
  let closing = false
  return {
    handle: async (req, res) => {
      const url = urlOf(req)
      if (url === null || !(url.pathname === '/' || url.pathname.startsWith('/room/') || url.pathname.startsWith('/api/'))) return false
      // The bot's own calls go on to the end: what was accepted is finished.
      if (closing && !/^\/(api|room\/(hook|ticket))\//.test(url.pathname)) sendJson(res, 503, { error: 'closing' }, { connection: 'close' })
      else await answer(world, key, req, res, url).catch((error: unknown) => wentWrong(world, res, error))
      return true
    },
    close: async () => {
      closing = true
      world.changes.close()
      await Promise.all(world.running)
      for (const timer of world.timers) clearTimeout(timer)
      world.journal.close()
    }
  }
}

function urlOf(req: IncomingMessage): URL | null {
  try {
    return new URL(`http://room.invalid${req.url ?? '/'}`)
  } catch {
    return null
  }
}

async function answer(world: World, key: string, req: IncomingMessage, res: ServerResponse, url: URL): Promise<void> {
  const { pathname: path } = url
  if (!isOwn(req, world.settings.base())) throw new HttpError(403, 'not-here')
  if (path.startsWith('/api/')) return onlyPost(req, () => handleApi(world, req, res, path.slice('/api/'.length)))
  if (path.startsWith('/room/hook/')) return onlyPost(req, () => postHook(world, req, res, url))
  if (path.startsWith('/room/ticket/')) return onlyPost(req, () => postTicket(world, req, res, url))
  if (req.method === 'GET' && path === '/') return sendPage(world, key, res, url.searchParams.get('lang'))
  if (req.method === 'GET' && path.startsWith('/room/assets/')) return sendAsset(res, path.slice('/room/assets/'.length))
  if (req.method === 'GET' && path.startsWith('/room/files/'))
    return sendFile(world, res, path.slice('/room/files/'.length), url.searchParams.has('download'))
  if (!sameKey(req.headers['x-room-key'], key)) throw new HttpError(403, 'no-key')
  const route = routes[`${req.method} ${path}`]
  if (route === undefined) throw new HttpError(404, 'not-found')
  await route(world, req, res, url)
}

async function onlyPost(req: IncomingMessage, run: () => Promise<void>): Promise<void> {
  if (req.method !== 'POST') throw new HttpError(405, 'post-only')
  await run()
}

function sameKey(given: string | readonly string[] | undefined, key: string): boolean {
  const sent = Buffer.from(typeof given === 'string' ? given : '')
  return sent.length === key.length && timingSafeEqual(sent, Buffer.from(key))
}

/** Every refusal is JSON; what nobody foresaw is logged and says no more than that. */
function wentWrong(world: World, res: ServerResponse, error: unknown): void {
  if (!(error instanceof HttpError))
    world.settings.log('the room failed', { error: error instanceof Error ? (error.stack ?? error.message) : String(error) })
  if (res.headersSent) return void res.destroy()
  const known = error instanceof HttpError
  const close: Readonly<Record<string, string>> = known && error.status === 413 ? { connection: 'close' } : {}
  sendJson(res, known ? error.status : 500, { error: known ? error.code : 'internal' }, close)
}
