import type { IncomingMessage, ServerResponse } from 'node:http'
import { readBody, readForm, sendJson } from '../http.js'
import type { Loose } from '../types.js'
import type { World } from '../world.js'
import { fail, type Method } from './answers.js'
import { chat } from './chat.js'
import { conversations } from './conversations.js'
import { files } from './files.js'
import { people } from './people.js'
import { views } from './views.js'

const methods: Readonly<Record<string, Method>> = { ...chat, ...conversations, ...people, ...views, ...files }

/** Arguments that come as JSON text inside a form. */
const structured = new Set(['blocks', 'view', 'metadata', 'attachments', 'files'])

const mostBytes = 4 * 1024 * 1024

/** The service's Web API: always 200 with `ok`, but for a rate limit. */
export async function handleApi(world: World, req: IncomingMessage, res: ServerResponse, name: string): Promise<void> {
  const body = await readBody(req, mostBytes)
  const args = await argumentsOf(req.headers['content-type'] ?? '', body)
  const token = /^Bearer (.+)$/.exec(req.headers.authorization ?? '')?.[1] ?? args?.token
  if (token === undefined) return sendJson(res, 200, fail('not_authed'))
  if (token !== world.settings.botToken) return sendJson(res, 200, fail('invalid_auth'))
  if (args === null) return sendJson(res, 200, fail('invalid_json'))
  const method = Object.hasOwn(methods, name) ? methods[name] : undefined
  if (method === undefined) return sendJson(res, 200, { ...fail('unknown_method'), req_method: name })
  const { retryAfterS, ...answer } = await method(world, args)
  if (typeof retryAfterS === 'number') return sendJson(res, 429, answer, { 'retry-after': String(retryAfterS) })
  if (answer.ok === false)
    world.settings.log('the room refused a call', { method: name, error: answer.error, response_metadata: answer.response_metadata ?? null })
  sendJson(res, 200, answer)
}

async function argumentsOf(type: string, body: Buffer): Promise<Loose | null> {
  try {
    if (type.startsWith('application/json')) return body.length === 0 ? {} : (JSON.parse(body.toString('utf8')) as Loose)
    const form = await readForm(type, body)
    const entries = [...form].filter((entry): entry is [string, string] => typeof entry[1] === 'string')
    return Object.fromEntries(entries.map(([key, value]) => [key, structured.has(key) ? (JSON.parse(value) as unknown) : value]))
  } catch {
    return null
  }
}
