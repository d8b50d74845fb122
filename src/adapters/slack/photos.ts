import { createHash } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import type { FetchedPhoto } from '../../bot/photos/fetched.js'
import type { Delivery, Message } from '../../bot/talk/talk.js'
import { photoMaxBytes } from '../../core/photo.js'
import { boundedFetch, callMs } from './clients.js'
import type { Context } from './handlers/context.js'
import { describe, serviceCode } from './problem.js'
import type { Member } from './workspaces.js'

/** Milliseconds between looks at a file that the service is still working on. */
const looks = [500, 1000, 2000] as const

/**
 * After an answer has left: fetches the photos that it named, one by one, has each kept beside what it shows, and says so where the
 * answer went. Nothing here throws, and nothing that was said depends on it.
 */
export async function bringPhotos(context: Context, delivery: Delivery, { photos }: Message, channel = delivery.channel): Promise<void> {
  for (const wanted of photos ?? []) {
    const fetched = await fetchPhoto(context, delivery.workspace, wanted.file)
    const said = await context.talk.photo(delivery, wanted, fetched)
    await context.out.say({ workspace: delivery.workspace, channel, user: delivery.user, thread: null }, said)
  }
}

async function fetchPhoto({ workspaces, log, fetch, apiUrl }: Context, workspace: string, file: string): Promise<FetchedPhoto> {
  try {
    const member = await workspaces.of(workspace)
    if (member === null) return { kind: 'failed', why: 'away' }
    const found = await addressOf(member, file)
    if (found.size > photoMaxBytes) return { kind: 'failed', why: 'too-large' }
    if (!ofService(found.url, apiUrl)) {
      log.error({ kind: 'photo' }, 'a file at an address that is not the service’s')
      return { kind: 'failed', why: 'not-found' }
    }
    return await download(boundedFetch(fetch, callMs), found.url, member.botToken)
  } catch (error) {
    log.warn(describe(error), 'photo not fetched')
    const code = serviceCode(error)
    return { kind: 'failed', why: code !== null && gone.has(code) ? 'not-found' : 'away' }
  }
}

const gone: ReadonlySet<string> = new Set(['file_not_found', 'file_deleted', 'not_visible', 'access_denied'])

/** Where the bytes of a file are; asked again while the service is still working on it. */
async function addressOf({ clients }: Member, file: string): Promise<{ readonly url: string; readonly size: number }> {
  for (const wait of [0, ...looks]) {
    if (wait > 0) await pause(wait)
    const answer = await clients.posts.files.info({ file })
    const url = answer.file?.url_private_download ?? answer.file?.url_private
    if (url !== undefined && url !== '') return { url, size: answer.file?.size ?? 0 }
  }
  throw new Error('the service names no address of the file')
}

/** The token goes to the service's own hosts and to nobody else: over https, or to the very place that the API is at. */
export function ofService(address: string, apiUrl: string): boolean {
  if (!URL.canParse(address)) return false
  const { origin, protocol, hostname, username, port } = new URL(address)
  if (username !== '') return false
  if (origin === new URL(apiUrl).origin) return true
  return protocol === 'https:' && port === '' && /(^|\.)slack(-gov)?\.com$/.test(hostname)
}

/** A sign-in page comes by a redirect where the token is not good enough: it is no photo. */
async function download(fetch: typeof globalThis.fetch, url: string, token: string): Promise<FetchedPhoto> {
  const answer = await fetch(url, { headers: { authorization: `Bearer ${token}` }, redirect: 'manual' })
  if (!answer.ok || answer.body === null) {
    await answer.body?.cancel()
    return { kind: 'failed', why: answer.status >= 500 || answer.status === 429 ? 'away' : 'not-found' }
  }
  const parts: Uint8Array[] = []
  let length = 0
  for await (const part of answer.body) {
    length += part.length
    // Leaving the loop ends the download.
    if (length > photoMaxBytes) return { kind: 'failed', why: 'too-large' }
    parts.push(part)
  }
  const bytes = Buffer.concat(parts)
  return { kind: 'bytes', bytes, base64: bytes.toString('base64'), sha256: createHash('sha256').update(bytes).digest('hex') }
}
