import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http'
import type { InstallationStore } from '@slack/bolt'
import type { InstallWords } from '../../bot/text/install-words.js'
import type { Instant } from '../../core/instant.js'
import { HTTPReceiver } from './bolt.js'
import { type ClientSettings, clientOptions } from './clients.js'
import { frameworkLogger } from './log.js'
import { scopes } from './manifest.js'
import type { InstallationBook } from './workspaces.js'

export const installPaths: readonly string[] = ['/slack/install', '/slack/oauth_redirect']

/** Many workspaces, over HTTP. */
export interface InstallMode {
  readonly kind: 'many'
  readonly clientId: string
  readonly clientSecret: string
  readonly stateSecret: string
  readonly signingSecret: string
  readonly book: InstallationBook
  readonly words: InstallWords
  /** Told who installed it, once it is in the book. */
  readonly installedBy: (workspace: string, user: string) => Promise<unknown>
}

/**
 * `GET /slack/install` and `GET /slack/oauth_redirect`: the framework's own flow, with its state in a cookie of the browser that began
 * it, over the book of installations. A receiver of its own, so that deliveries are authorized by the same reading of the workspace as
 * everything else.
 */
export function installListener(mode: InstallMode, client: ClientSettings, now: () => Instant): RequestListener {
  const { words } = mode
  const receiver = new HTTPReceiver({
    clientId: mode.clientId,
    clientSecret: mode.clientSecret,
    stateSecret: mode.stateSecret,
    signingSecret: mode.signingSecret,
    logger: frameworkLogger(client.log),
    scopes: scopes.map(({ scope }) => scope),
    installationStore: installationStore(mode, now),
    installerOptions: {
      clientOptions: clientOptions(client),
      authorizationUrl: new URL('/oauth/v2/authorize', client.apiUrl).href,
      renderHtmlForInstallPath: (url) => page(words, `<p><a href="${escaped(url)}">${escaped(words.add)}</a></p>`),
      callbackOptions: {
        success: (_installation, _options, _req, res) => answer(res, 200, page(words, `<p>${escaped(words.done)}</p>`)),
        failure: (error, _options, _req, res) => answer(res, statusOf(error.code), page(words, `<p>${escaped(words.failed)}</p>`))
      }
    }
  })
  return (req: IncomingMessage, res: ServerResponse) => {
    // The pages hold a state: nobody keeps them, frames them or learns of it from a link.
    for (const [name, value] of pageHeaders) res.setHeader(name, value)
    receiver.requestListener(req, res)
  }
}

const pageHeaders: ReadonlyMap<string, string> = new Map([
  ['cache-control', 'no-store'],
  ['content-security-policy', "default-src 'none'; frame-ancestors 'none'"],
  ['referrer-policy', 'no-referrer'],
  ['x-content-type-options', 'nosniff']
])

function installationStore({ book, installedBy }: Pick<InstallMode, 'book' | 'installedBy'>, now: () => Instant): InstallationStore {
  return {
    storeInstallation: async ({ isEnterpriseInstall, team, bot, user }) => {
      if (isEnterpriseInstall || team === undefined) throw new Error('an installation for a whole organisation is not supported')
      if (bot === undefined) throw new Error('an installation without a bot')
      // It would be dead in hours, and two servers that renew it at once would lock each other out.
      if (bot.refreshToken !== undefined) throw new Error('token rotation is on: turn it off in the settings of the app')
      await book.save({ workspace: team.id, botToken: bot.token, botId: bot.id, botUserId: bot.userId }, now())
      await installedBy(team.id, user.id)
    },
    fetchInstallation: async () => {
      throw new Error('deliveries are authorized elsewhere')
    }
  }
}

/** What the visitor's browser did wrong is 400, what failed on the way is 500. */
function statusOf(code: string): number {
  const theirs = ['slack_oauth_missing_state', 'slack_oauth_invalid_state', 'slack_oauth_missing_code', 'slack_oauth_installer_authorization_error']
  return theirs.includes(code) ? 400 : 500
}

function answer(res: ServerResponse, status: number, html: string): void {
  res.writeHead(status, { 'content-type': 'text/html; charset=utf-8' })
  res.end(html)
}

function page({ title }: InstallWords, body: string): string {
  return `<!doctype html><html><head><meta charset="utf-8"><title>${escaped(title)}</title></head><body><h1>${escaped(title)}</h1>${body}</body></html>`
}

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)
}
