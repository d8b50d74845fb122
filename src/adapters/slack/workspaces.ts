import type { Instant } from '../../core/instant.js'
import { type ClientSettings, type Clients, createClients } from './clients.js'
import { serviceCode } from './problem.js'

/** A workspace that installed the app, and who the bot is there. */
export interface Installation {
  readonly workspace: string
  readonly botToken: string
  readonly botId: string
  readonly botUserId: string
}

/** Where installations are kept, their tokens sealed. */
export interface InstallationBook {
  /** As it is now: read for each delivery and each post, so that what another server took away is away here too. Null: not installed. */
  find(workspace: string): Promise<Installation | null>
  save(installation: Installation, at: Instant): Promise<void>
  /** Takes the token and what was still to be posted away, unless it was installed anew after `at`; whether it is gone. */
  remove(workspace: string, at: Instant): Promise<boolean>
}

/** What is needed to speak in one workspace. */
export interface Member {
  readonly clients: Clients
  readonly botToken: string
  readonly botId: string
  readonly botUserId: string
}

/** The workspaces that the bot speaks in. */
export interface Workspaces {
  /** The one of a bot with one workspace, whoever asks. */
  readonly only: Member | null
  /** Null: not installed there. */
  of(workspace: string): Promise<Member | null>
  /** The service took the token away at an instant. */
  revoked(workspace: string, at: Instant): Promise<void>
  /** Whether there is anybody left to speak to. */
  readonly open: () => boolean
}

/** The one workspace of a token. Every team that the service names comes to it: a shared channel has members of others. */
export function oneWorkspace(member: Member): Workspaces {
  let open = true
  return {
    only: member,
    of: async () => member,
    revoked: async () => {
      open = false
    },
    open: () => open
  }
}

/** Clients kept at the most: they hold nothing that is not in the book. */
const mostClients = 1000

/** Every workspace of the book. */
export function manyWorkspaces(book: InstallationBook, settings: ClientSettings): Workspaces {
  // By token, never by workspace alone: a new token gets new clients, and none is ever shared between two.
  const made = new Map<string, Clients>()
  const clientsOf = (token: string): Clients => {
    const clients = made.get(token) ?? createClients(token, settings)
    made.delete(token)
    made.set(token, clients)
    const [oldest] = made.keys()
    if (made.size > mostClients && oldest !== undefined) made.delete(oldest)
    return clients
  }
  return {
    only: null,
    of: async (workspace) => {
      const found = workspace === '' ? null : await book.find(workspace)
      return found === null ? null : { ...found, clients: clientsOf(found.botToken) }
    },
    revoked: async (workspace, at) => {
      const found = await book.find(workspace)
      if (found === null || (await book.remove(workspace, at))) return
      // Installed anew since, by our clock, which may differ from the service's: it is asked which of the two is so.
      if (await isRefused(clientsOf(found.botToken))) await book.remove(workspace, Number.MAX_SAFE_INTEGER)
    },
    open: () => true
  }
}

async function isRefused({ posts }: Clients): Promise<boolean> {
  return posts.auth.test().then(
    () => false,
    (error: unknown) => revokedCodes.has(serviceCode(error) ?? '')
  )
}

/** The service's own codes for a token that is no more. */
const revokedCodes: ReadonlySet<string> = new Set(['account_inactive', 'invalid_auth', 'token_revoked', 'token_expired', 'not_authed'])
