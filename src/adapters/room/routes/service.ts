import { applyAnswer } from '../answer.js'
import { HttpError, readBody, readForm, readJson, send, sendJson } from '../http.js'
import type { Route } from './write.js'

const hookBytes = 256 * 1024
const fileBytes = 20 * 1024 * 1024

/** A reply address: five answers in half an hour, then none. Who holds the address needs no key. */
export const postHook: Route = async (world, req, res, url) => {
  const body = await readJson(req, hookBytes)
  const target = world.hooks.use(url.pathname.slice('/room/hook/'.length))
  if (target === null) return sendJson(res, 404, { ok: false, error: 'expired_url' })
  const refused = await applyAnswer(world, target, body)
  if (refused === null) return send(res, 200, 'text/plain; charset=utf-8', 'ok')
  sendJson(res, 400, { ok: false, error: refused.error, response_metadata: { messages: refused.messages } })
}

/** The bytes of an upload, raw or as the first file of a form. */
export const postTicket: Route = async (world, req, res, url) => {
  const id = url.pathname.slice('/room/ticket/'.length)
  const ticket = world.uploads.get(id)
  if (ticket === undefined || ticket.bytes !== null) throw new HttpError(404, 'no-ticket')
  const type = req.headers['content-type'] ?? ''
  const body = await readBody(req, fileBytes)
  ticket.bytes = type.startsWith('multipart/form-data') ? await firstFile(type, body) : body
  send(res, 200, 'text/plain; charset=utf-8', `OK - ${ticket.bytes.length}`)
}

async function firstFile(type: string, body: Buffer): Promise<Buffer> {
  const form = await readForm(type, body).catch(() => null)
  for (const value of form?.values() ?? []) if (typeof value !== 'string') return Buffer.from(await value.arrayBuffer())
  throw new HttpError(400, 'no-file')
}
