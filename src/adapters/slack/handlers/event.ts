import type { Delivery } from '../../../bot/talk/talk.js'
import { deliveryOf } from '../delivery.js'
import { at, type Loose, textAt } from '../loose.js'
import { typedText, withoutMention } from '../text.js'
import type { Context } from './context.js'
import { publishHome, refreshHome } from './home.js'
import { answerLate } from './late.js'

/** The events of the manifest. The framework has acknowledged them already. */
export const handledEvents = ['message', 'app_mention', 'app_home_opened', 'app_uninstalled', 'tokens_revoked'] as const

export async function onEvent(context: Context, body: Loose): Promise<void> {
  const type = textAt(body, 'event', 'type')
  if (type === 'app_uninstalled' || type === 'tokens_revoked') return revoked(context, body, type)
  if (type === 'app_home_opened') return homeOpened(context, body)
  if (type === 'message' || type === 'app_mention') return spoken(context, body, type)
}

/** Of revoked tokens only the bot's own counts. Which workspace, and when, the service says. */
async function revoked({ log, origin, workspaces }: Context, body: Loose, type: string): Promise<void> {
  const bots = at(body, 'event', 'tokens', 'bot')
  if (type === 'tokens_revoked' && Array.isArray(bots) && bots.length === 0) return
  const { workspace } = deliveryOf(origin, body)
  log.error({ type, workspace }, 'the service took the token away')
  const time = at(body, 'event_time')
  await workspaces.revoked(workspace, typeof time === 'number' && Number.isSafeInteger(time) ? time : origin.now())
}

async function homeOpened(context: Context, body: Loose): Promise<void> {
  if (textAt(body, 'event', 'tab') === 'home') await publishHome(context, deliveryOf(context.origin, body))
}

/** A mention, or a message in a direct conversation: answered where it was said. */
async function spoken(context: Context, body: Loose, type: string): Promise<void> {
  const { origin, seen, talk, workspaces } = context
  const event = at(body, 'event') as Loose
  const delivery = deliveryOf(origin, body)
  const botUserId = (await workspaces.of(delivery.workspace))?.botUserId ?? ''
  if (!isAPersons(event, botUserId) || (type === 'message' && event.channel_type !== 'im')) return
  const first = seen.first(delivery.claim)
  if (!first) return
  const text = typedText(withoutMention(textAt(event, 'text') ?? '', botUserId))
  await answerLate(context, delivery, body, talk.say(delivery, wordsOf(text, delivery)), first)
  refreshHome(context, delivery)
}

/** Nothing but the name asks for help; nothing but photos asks what they show. */
function wordsOf(text: string, { files }: Delivery): string {
  if (text !== '') return text.replace(/^\//, '')
  return files !== undefined && files.length > 0 ? '' : 'help'
}

/** Not the bot's own, not another bot's, not the echo of an edit or a deletion: an answer to those never ends. */
function isAPersons(event: Loose, botUserId: string): boolean {
  const { subtype, bot_id: bot, user, edited } = event
  if (subtype !== undefined && subtype !== 'file_share' && subtype !== 'thread_broadcast') return false
  return bot === undefined && edited === undefined && typeof user === 'string' && user !== botUserId
}
