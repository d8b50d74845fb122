import type { Button, KnownBlock } from '@slack/types'
import type { Replied } from '../papers/drawn.js'
import { wantedIn } from '../photos/wanted.js'
import { buttonsUnder, detailsButton } from './buttons.js'
import { shortened } from './shorten.js'
import type { Message } from './talk.js'

/** Commands whose answer is for the asker alone. */
const forAsker: ReadonlySet<string | null> = new Set(['help', 'me', 'role', null])

/**
 * An answer as a message. `acting`: the person's words are logged; one who only reads gets no buttons that log. `claim`: under which the whole
 * answer is kept, so that a channel can be shown the short of it; null: it is kept nowhere.
 */
export function messageOf({ reply, files }: Replied, acting: boolean, claim: string | null): Message {
  const buttons = acting ? buttonsUnder(reply) : null
  const to = reply.ok && !forAsker.has(reply.command) ? 'channel' : 'asker'
  const kept = to === 'channel' && acting && claim !== null && reply.site !== null && reply.command !== null && !unkept.has(reply.command)
  const { blocks, rest } = kept ? shortened(reply.blocks, reply.lang) : { blocks: reply.blocks, rest: null }
  const message = { text: reply.text, blocks, to, files, photos: acting ? wantedIn(reply) : [] } as const
  const more = rest === null || claim === null ? [] : [detailsButton(claim, reply.lang)]
  return withButtons(message, [...((buttons?.elements ?? []) as Button[]), ...more])
}

/** Commands beside the sites: their answers are kept under no claim. */
const unkept: ReadonlySet<string> = new Set(['strip', 'sheets', 'start'])

/** One sentence to the asker alone. */
export function plainMessage(text: string): Message {
  const block: KnownBlock = { type: 'section', text: { type: 'plain_text', text, emoji: false } }
  return { text, blocks: [block], to: 'asker', files: [] }
}

export function withButtons(message: Message, elements: readonly Button[]): Message {
  return elements.length === 0 ? message : { ...message, blocks: [...message.blocks, { type: 'actions', elements: [...elements] }] }
}
