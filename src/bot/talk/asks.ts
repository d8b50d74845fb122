import type { Ask, Role } from '../ask.js'
import type { Ports } from '../context.js'
import type { Delivery } from './talk.js'

/** Where the sites of channels are known: the store, and in the local room every site has a channel of its own. */
export interface Places {
  siteOfChannel(workspace: string, channel: string): Promise<string | null>
}

/**
 * Who asks: a person's role is the one they were given; while a workspace has no supervisor, whoever speaks first is one.
 * An inspector reads: nothing that an inspector says is logged.
 */
export async function askFor(delivery: Delivery, text: string, site: string | null, ports: Ports): Promise<Ask> {
  const { workspace, user, channel, via, at, claim, lang, units } = delivery
  const person = await ports.store.person(workspace, user)
  const role = person.role ?? (await firstRole(workspace, user, ports))
  return {
    text,
    at,
    workspace,
    site,
    channel,
    user,
    via,
    lang,
    units,
    claim,
    role: role === 'supervisor' ? 'supervisor' : 'crew',
    log: role !== 'inspector',
    person
  }
}

async function firstRole(workspace: string, user: string, { store }: Ports): Promise<Role> {
  if (await store.hasSupervisor(workspace)) return 'crew'
  return (await store.claimSupervisor(workspace, user)) ? 'supervisor' : 'crew'
}
