import { createHash } from 'node:crypto'
import { personById, roomPeople } from './people.js'
import type { RoomSite } from './types.js'

export interface RoomChannel {
  readonly id: string
  readonly name: string
  readonly site: RoomSite | null
  /** The person of a direct conversation. */
  readonly with: string | null
  readonly member: boolean
}

/** Channel id of a site that has none of its own: the same for the same name. */
export function channelIdOf(site: string): string {
  const letters = site
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .slice(0, 12)
  return `C0${letters}${createHash('sha256').update(site).digest('hex').slice(0, 4).toUpperCase()}`
}

export function directIdOf(user: string): string {
  return `D0${user.slice(2)}`
}

/** A channel that the bot was never asked into, for `not_in_channel`; the page does not show it. */
const elsewhere: RoomChannel = { id: 'C0ELSEWHERE', name: 'elsewhere', site: null, with: null, member: false }

export function channelsOf(sites: readonly RoomSite[]): readonly RoomChannel[] {
  const own = sites.map((site) => ({ id: site.channel ?? channelIdOf(site.name), name: site.name, site, with: null, member: true }))
  return [...own, ...roomPeople.map((person) => directChannel(person.id)), elsewhere]
}

function directChannel(user: string): RoomChannel {
  return { id: directIdOf(user), name: 'directmessage', site: null, with: user, member: true }
}

/** By id; a person's id means the conversation with that person, as the service has it. */
export function findChannel(channels: readonly RoomChannel[], id: unknown): RoomChannel | null {
  const person = personById(id)
  return channels.find((channel) => channel.id === (person === null ? id : directIdOf(person.id))) ?? null
}
