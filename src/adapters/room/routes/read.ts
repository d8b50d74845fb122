import type { RoomChannel } from '../channels.js'
import { HttpError } from '../http.js'
import type { Actor } from '../interact.js'
import { personById, personByRole, type RoomPerson } from '../people.js'
import type { Aside, Loose, RoomMessage } from '../types.js'
import type { World } from '../world.js'

/** The page's word for the conversation between a person and the bot. */
export const direct = '@seamhand'

export function personOf(role: unknown): RoomPerson {
  const person = personByRole(role) ?? personById(role)
  if (person === null) throw new HttpError(400, 'unknown-user')
  return person
}

/** By the site's name; by the channel's id too. */
export async function channelOf(world: World, site: unknown, person: RoomPerson): Promise<RoomChannel> {
  const channels = await world.channels()
  const channel = channels.find((one) =>
    site === direct ? one.with === person.id : one.site !== null && (one.site.name === site || one.id === site)
  )
  if (channel === undefined) throw new HttpError(404, 'no-site')
  return channel
}

function word(value: unknown, allowed: RegExp): string | null {
  return typeof value === 'string' && allowed.test(value) ? value : null
}

function asideOf(body: Loose): Aside {
  return {
    lang: word(body.lang, /^(en|es|fr)$/),
    units: word(body.units, /^(metric|us)$/),
    at: word(body.at, /^\d{4}-\d\d-\d\dT[\d:.]{4,12}(Z|[+-]\d\d:?\d\d)$/)
  }
}

/** Who acts; the page's language is from then on that person's. */
export function actorOf(world: World, body: Loose): Actor {
  const person = personOf(body.user)
  const aside = asideOf(body)
  world.asides.set(person.id, aside)
  return { person, tab: tabOf(body.tab), aside }
}

export function tabOf(value: unknown): string {
  return word(value, /^[\w-]{1,40}$/) ?? ''
}

export function mayRead(message: RoomMessage, person: RoomPerson | null): boolean {
  return message.onlyFor === null || message.onlyFor === person?.id
}

export function objectOf(value: unknown): Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Loose) : {}
}
