import type { HomeView, KnownBlock, ModalView } from '@slack/types'
import type { Instant } from '../../core/instant.js'
import type { Via } from '../../core/log/entry.js'
import type { Lang, Units } from '../answer.js'
import type { DrawnFile } from '../papers/paper.js'
import type { FetchedPhoto } from '../photos/fetched.js'
import type { WantedPhoto } from '../photos/wanted.js'

/** Who sent what, from where: what a transport makes of a payload, before anybody has thought about it. */
export interface Delivery {
  readonly workspace: string
  readonly user: string
  /** Where it was said; null: nowhere in particular (home, a form without a channel). */
  readonly channel: string | null
  /** Thread it was said or pressed in; null or absent: at the top of the channel. */
  readonly thread?: string | null
  readonly via: Via
  readonly at: Instant
  /** Unique per delivery: a second one gets the first one's reply and has no second effect. Null: harmless to repeat. */
  readonly claim: string | null
  /** Files that came with the message, by their ids at the chat service. */
  readonly files?: readonly string[]
  /** Chosen for this message only (the page of the local room); null: the person's, else the site's. */
  readonly lang: Lang | null
  readonly units: Units | null
}

/** A message for people: answers about a site go to its channel, help and mistakes to the asker alone. */
export interface Message {
  readonly text: string
  readonly blocks: readonly KnownBlock[]
  readonly to: 'channel' | 'asker'
  /** Files that follow the message to where it went. */
  readonly files: readonly DrawnFile[]
  /** Photos that it named: fetched once it has left, then `Talk.photo`. */
  readonly photos?: readonly WantedPhoto[]
  /** For the thread of the message whose button was pressed, so that its channel stays readable. */
  readonly thread?: true
  /** Opened at once where that can be: then it says all that a message to the asker would. */
  readonly form?: ModalView
}

/** What a button does. */
export type Pressed =
  | { readonly kind: 'message'; readonly message: Message }
  /** Opens a form at once: nothing but reading stands before it. */
  | { readonly kind: 'form'; readonly view: ModalView }

/** What a sent form does: errors stay at their fields, the form stays open. Keys are block ids. */
export type Submitted =
  | { readonly kind: 'message'; readonly message: Message; readonly channel: string | null; readonly thread?: string | null }
  /** `words`: what was typed, as words to send again. */
  | { readonly kind: 'errors'; readonly errors: Readonly<Record<string, string>>; readonly words?: string }

/** Values of a form by block id: text, chosen value, or all ticked values. */
export type FormValues = Readonly<Record<string, string | readonly string[] | null>>

/**
 * The bot as a transport sees it: Slack and the local room call these and know no rule. None of them throws: a failing
 * store is said so, a bug is logged and its reference id said.
 */
export interface Talk {
  say(delivery: Delivery, text: string): Promise<Message>
  press(delivery: Delivery, actionId: string, value: string): Promise<Pressed>
  /** A shortcut picked on a message, whose files are the delivery's. */
  shortcut(delivery: Delivery, callbackId: string): Promise<Pressed>
  /** Keeps a photo that was fetched, or says why not. */
  photo(delivery: Delivery, wanted: WantedPhoto, fetched: FetchedPhoto): Promise<Message>
  submit(delivery: Delivery, callbackId: string, metadata: string, values: FormValues): Promise<Submitted>
  home(delivery: Delivery): Promise<HomeView>
  /** The message for a delivery that failed before anything could answer it. */
  failed(delivery: Delivery, error: unknown): Message
  /** What is said when an answer takes longer than the deadline. */
  working(delivery: Delivery): Message
}
