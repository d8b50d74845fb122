import type { WhatIf, WhatIfAsked } from '../../bot/talk/what-if.js'
import type { RoomLang } from './words/index.js'

export type Loose = Readonly<Record<string, unknown>>

export interface RoomSite {
  readonly name: string
  readonly title: string
  /** Channel id, null where the site has none yet: the room then gives it one by its name (`channelIdOf`). */
  readonly channel: string | null
  readonly invented: boolean
  readonly closed: boolean
  /** IANA. */
  readonly zone: string
  readonly lang: string | null
  readonly units: string | null
}

/** Spans of the chat service (milliseconds) and its rate for posts; tests shorten them. */
export interface Timing {
  readonly deadlineMs: number
  readonly triggerMs: number
  readonly hookMs: number
  readonly hookUses: number
  /** Pauses before the first, second and third retry of an event. */
  readonly retryMs: readonly number[]
  /** A file is known at once and usable only after this. */
  readonly fileMs: number
  readonly postsPerS: number
  readonly postBurst: number
}

export interface RoomOptions {
  /** Where the room keeps its own messages and files; null: in memory. */
  readonly folder: string | null
  readonly signingSecret: string
  readonly botToken: string
  /** Address of the server that this room is part of, such as http://127.0.0.1:3000. */
  readonly base: () => string
  /** Present time, ms since 1970. */
  readonly now: () => number
  readonly sites: () => Promise<readonly RoomSite[]>
  readonly log: (message: string, fields: Loose) => void
  /** Events that the app has subscribed to. */
  readonly events?: readonly string[]
  /** Message shortcuts of the app. */
  readonly shortcuts?: readonly Shortcut[]
  /** Language of the page where it names none. */
  readonly lang?: RoomLang
  /** What would be said at an instant; null where there is no supposing. Left out: the page does not offer it. */
  readonly whatIf?: ((asked: Omit<WhatIfAsked, 'workspace'>) => Promise<WhatIf | null>) | null
  readonly timing?: Partial<Timing>
}

export interface Shortcut {
  readonly callbackId: string
  readonly name: string
}

/** What the page adds to each delivery: settings of the page, which no real workspace has. */
export interface Aside {
  readonly lang: string | null
  readonly units: string | null
  readonly at: string | null
}

export interface RoomMessage {
  readonly channel: string
  readonly ts: string
  /** Id of the author. */
  readonly user: string
  readonly bot: boolean
  readonly text: string
  readonly blocks: readonly Loose[]
  readonly editedTs: string | null
  readonly threadTs: string | null
  /** Id of the one person who sees it; it is not kept. */
  readonly onlyFor: string | null
  readonly metadata: Loose | null
  readonly files: readonly string[]
  /** A slash command as it was typed: shown, and no message to the service. */
  readonly typed: boolean
}

export interface RoomFile {
  readonly id: string
  readonly name: string
  readonly title: string
  readonly mimetype: string
  readonly size: number
  readonly owner: string
  readonly createdMs: number
  readonly channel: string | null
  /** The message it was shared in. */
  readonly ts: string | null
  readonly alt: string | null
}
