import type { Spoken } from '../answer.js'
import { escapeText } from './escape.js'

/** A person in a line: as the chat service shows a name where it is an id of its own, else the id as it is. */
export function who(id: string): string {
  return /^[UW][A-Z0-9]{5,20}$/.test(id) ? `<@${id}>` : escapeText(id, 60)
}

const mostNamed = 5

/** "@Ana, @Ben": the first of them. */
export function whoAll(ids: readonly string[]): string {
  return ids.slice(0, mostNamed).map(who).join(', ')
}

const mention = /<@([UW][A-Z0-9]{5,20})>/g

/** The same where nothing makes a name of a mention: the id that can be typed back, `@U0123ABCD`. What people typed holds no `<`. */
export function withoutMentions({ text, blocks }: Spoken): Spoken {
  if (!text.includes('<@')) return { text, blocks }
  return { text: text.replace(mention, '@$1'), blocks: JSON.parse(JSON.stringify(blocks).replace(mention, '@$1')) as Spoken['blocks'] }
}
