import type { ServerResponse } from 'node:http'
import { HttpError, send, sendJson } from '../http.js'
import { laterThan } from '../messages.js'
import type { World } from '../world.js'
import { channelOf, direct, mayRead, personOf, tabOf } from './read.js'
import { pageMessage, pageView } from './show.js'
import type { Route } from './write.js'

/** How long a question for news is held open, and how many messages a channel shows at first. */
const holdMs = 20_000
const firstShown = 500

/** Messages of a site after a ts; without a user only what all see. */
export const getMessages: Route = async (world, _req, res, url) => {
  const { searchParams: query } = url
  const user = query.get('user')
  const person = user === null || user === '' ? null : personOf(user)
  const channel = await channelOf(world, query.get('site'), person ?? personOf('crew'))
  const after = query.get('after')
  const all = world.messages.of(channel.id).filter((message) => mayRead(message, person))
  const wanted = after === null || after === '' ? all.slice(-firstShown) : all.filter((message) => laterThan(message.ts, after))
  sendJson(
    res,
    200,
    wanted.map((message) => pageMessage(world, message))
  )
}

/** Everything new in one answer: messages changed or gone since a number, the open form, the home, the sites. Waits for something. */
export const getChanges: Route = async (world, req, res, url) => {
  const { searchParams: query } = url
  const person = personOf(query.get('user'))
  const since = Number(query.get('since')) || 0
  const channel = await channelOf(world, query.get('site'), person)
  await gone(res, world.changes.wait(since, holdMs))
  if (req.destroyed && res.destroyed) return
  const seq = world.changes.seq()
  const changed = world.messages.changedSince(channel.id, since)
  const visible = changed.filter((message) => mayRead(message, person)).slice(since === 0 ? -firstShown : 0)
  const stack = world.modals.stack({ user: person.id, tab: tabOf(query.get('tab')) })
  const sites = (await world.settings.sites()).map(({ name, title, invented, closed, zone }) => ({ name, title, invented, closed, zone }))
  sendJson(res, 200, {
    seq,
    sites,
    direct,
    messages: visible.map((message) => pageMessage(world, message)),
    removed: world.messages.removedSince(channel.id, since),
    form: pageView(stack.at(-1) ?? null),
    depth: stack.length,
    home: pageView(world.modals.home(person.id))
  })
}

/** Whichever is first: the wait is over, or nobody is there any more. */
function gone(res: ServerResponse, wait: Promise<void>): Promise<void> {
  return Promise.race([wait, new Promise<void>((resolve) => res.once('close', resolve))])
}

/** Names to choose from, open sites first. */
export const getSites: Route = async (world, _req, res) => {
  const sites = await world.settings.sites()
  sendJson(res, 200, {
    sites: [...sites]
      .sort((a, b) => Number(a.closed) - Number(b.closed))
      .map((site) => site.name)
      .concat(direct)
  })
}

export const getHome: Route = async (world, _req, res, url) => {
  sendJson(res, 200, pageView(world.modals.home(personOf(url.searchParams.get('user')).id)))
}

export const getViews: Route = async (world, _req, res, url) => {
  const presser = { user: personOf(url.searchParams.get('user')).id, tab: tabOf(url.searchParams.get('tab')) }
  sendJson(res, 200, world.modals.stack(presser).map(pageView))
}

/** A file by its id, which nobody can guess. Only a picture is shown; all else is downloaded. */
export function sendFile(world: World, res: ServerResponse, id: string, download: boolean): void {
  const file = world.files.get(id)
  const bytes = file === null ? null : world.files.bytes(id)
  if (file === null || bytes === null) throw new HttpError(404, 'no-file')
  const picture = file.mimetype.startsWith('image/') && !download
  const name = `${picture ? 'inline' : 'attachment'}; filename*=UTF-8''${encodeURIComponent(file.name)}`
  send(res, 200, file.mimetype, bytes, { 'content-disposition': name, 'content-security-policy': "default-src 'none'; sandbox" })
}
