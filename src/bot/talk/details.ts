import type { Ports } from '../context.js'
import type { Reply } from '../reply.js'
import { texts } from '../text/index.js'
import { plainMessage } from './message.js'
import { preferred } from './preferred.js'
import { shortened, textOf } from './shorten.js'
import type { Delivery, Message } from './talk.js'

const claimAt = /^[\x21-\x7e]{1,300}$/

/** The rest of an answer as it was when it was given, for the thread of its message. */
export async function detailsOf(delivery: Delivery, claim: string, ports: Ports): Promise<Message> {
  const known = claimAt.test(claim) ? await ports.store.keptReply(delivery.workspace, claim) : null
  const reply = known as unknown as Partial<Reply> | null
  const lang = reply?.lang ?? (await preferred(delivery, null, ports)).lang
  const { rest } = shortened(Array.isArray(reply?.blocks) ? reply.blocks : [], lang)
  if (reply?.v !== 1 || rest === null) return plainMessage(texts[lang].talk.gone)
  return { text: rest.flatMap((block) => textOf(block) ?? []).join('\n'), blocks: rest, to: 'channel', thread: true, files: [] }
}
