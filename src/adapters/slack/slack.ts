import type { RequestListener } from 'node:http'
import type { Chat } from '../../bot/chat-ports.js'
import type { Talk } from '../../bot/talk/talk.js'
import type { Instant } from '../../core/instant.js'
import type { InstallMode } from './install.js'
import type { SlackLog } from './log.js'
import { describe, serviceCode } from './problem.js'
import { SlackError } from './slack-error.js'

export type SlackMode =
  | { readonly kind: 'http'; readonly signingSecret: string; readonly botToken: string }
  | { readonly kind: 'socket'; readonly botToken: string; readonly appToken: string }
  | InstallMode

export interface SlackOptions {
  readonly mode: SlackMode
  /** Base address of the Web API. */
  readonly apiUrl: string
  readonly talk: Talk
  readonly workspaceOf: (teamId: string) => string
  /** The local room: its page may choose language, units and time. Never true for a real workspace. */
  readonly room: boolean
  readonly now: () => Instant
  readonly log: SlackLog
  readonly fetch?: typeof globalThis.fetch
  /** Milliseconds after which the reply says that the answer will follow; 2,000. */
  readonly answerMs?: number
}

export interface Slack {
  /** `POST /slack/events`; with Socket Mode everything is 404. */
  readonly listener: RequestListener
  /** `GET /slack/install` and `/slack/oauth_redirect`; null with one workspace. */
  readonly install: RequestListener | null
  readonly chat: Chat
  start(): Promise<void>
  /** Waits for what was accepted, at most 10 s. */
  stop(): Promise<void>
  /** The service can reach the bot and the bot the service, as far as is known. */
  ready(): boolean
}

/** Why a token could not be used, as a sentence. */
export function startProblem(what: string, error: unknown): SlackError {
  const code = serviceCode(error)
  if (code !== null) return new SlackError(`the chat service refused the ${what}: ${code}`)
  const { kind, why, status } = describe(error)
  return new SlackError(
    `the chat service could not be reached to check the ${what} (${[kind, why, status].filter((part) => part !== undefined).join(' ')})`
  )
}
