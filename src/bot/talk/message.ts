import type { Button, KnownBlock } from '@slack/types'
import type { Replied } from '../papers/drawn.js'
import { wantedIn } from '../photos/wanted.js'
import { buttonsUnder } from './buttons.js'
import type { Message } from './talk.js'

/** Commands whose answer is for the asker alone. */
const forAsker: ReadonlySet<string | null> = new Set(['help', 'me', 'role', null])

/** An answer as a message. `acting`: the person's words are logged; one who only reads gets no buttons that log. */
export function messageOf({ reply, files }: Replied, acting: boolean): Message {
  const buttons = acting ? buttonsUnder(reply) : null
  const to = reply.ok && !forAsker.has(reply.command) ? 'channel' : 'asker'
  return { text: reply.text, blocks: buttons === null ? reply.blocks : [...reply.blocks, buttons], to, files, photos: acting ? wantedIn(reply) : [] }
}

/** One sentence to the asker alone. */
export function plainMessage(text: string): Message {
  const block: KnownBlock = { type: 'section', text: { type: 'plain_text', text, emoji: false } }
  return { text, blocks: [block], to: 'asker', files: [] }
}

export function withButtons(message: Message, elements: readonly Button[]): Message {
  return elements.length === 0 ? message : { ...message, blocks: [...message.blocks, { type: 'actions', elements: [...elements] }] }
}
