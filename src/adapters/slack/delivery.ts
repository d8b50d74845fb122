import { createHash } from 'node:crypto'
import type { Lang, Units } from '../../bot/answer.js'
import type { Delivery } from '../../bot/talk/talk.js'
import { fromIso, type Instant } from '../../core/instant.js'
import { at, jsonObject, type Loose, textAt } from './loose.js'

/** What is known of where payloads come from. */
export interface Origin {
  readonly workspaceOf: (teamId: string) => string
  /** The local room: its page may choose language, units and time of a message. A real workspace may not. */
  readonly room: boolean
  readonly now: () => Instant
}

/** Who sent what, from where, of a command, an event, a button, a form or a shortcut. */
export function deliveryOf(origin: Origin, body: Loose): Delivery {
  return {
    workspace: origin.workspaceOf(teamOf(body)),
    user: textAt(body, 'event', 'user') ?? textAt(body, 'user_id') ?? textAt(body, 'user', 'id') ?? '',
    channel: channelOf(body),
    thread: threadOf(body),
    via: origin.room ? 'room' : 'slack',
    claim: claimOf(body),
    files: filesOf(body),
    ...chosenOf(origin, body)
  }
}

/** A conversation shared between workspaces: the one that installed the app counts. */
function teamOf(body: Loose): string {
  return (
    textAt(body, 'authorizations', 0, 'team_id') ??
    textAt(body, 'view', 'app_installed_team_id') ??
    textAt(body, 'team_id') ??
    textAt(body, 'team', 'id') ??
    textAt(body, 'user', 'team_id') ??
    ''
  )
}

/** Files of the message that was sent, or that a shortcut was picked on. */
function filesOf(body: Loose): readonly string[] {
  const files = at(body, 'event', 'files') ?? at(body, 'message', 'files')
  return Array.isArray(files) ? files.flatMap((file) => textAt(file, 'id') ?? []) : []
}

/** Thread of a mention, or of the message whose button was pressed; null at the top of a channel. */
export function threadOf(body: Loose): string | null {
  return textAt(body, 'event', 'thread_ts') ?? textAt(body, 'message', 'thread_ts') ?? textAt(body, 'container', 'thread_ts')
}

function channelOf(body: Loose): string | null {
  if (textAt(body, 'event', 'type') === 'app_home_opened') return null
  return (
    textAt(body, 'event', 'channel') ??
    textAt(body, 'channel_id') ??
    textAt(body, 'channel', 'id') ??
    textAt(body, 'container', 'channel_id') ??
    textAt(jsonObject(textAt(body, 'view', 'private_metadata')), 'channel')
  )
}

/**
 * Unique per delivery, the same when it comes again. A form that was refused is sent again from the same view with the same hash:
 * only its values tell the two apart.
 */
function claimOf(body: Loose): string | null {
  const eventId = textAt(body, 'event_id')
  if (eventId !== null) return `event:${eventId}`
  const viewId = textAt(body, 'view', 'id')
  if (body.type === 'view_submission' && viewId !== null) {
    const values = JSON.stringify(at(body, 'view', 'state', 'values') ?? null)
    const hash = createHash('sha256').update(values).digest('hex').slice(0, 16)
    return `view:${viewId}:${textAt(body, 'view', 'hash') ?? ''}:${hash}`
  }
  const trigger = textAt(body, 'trigger_id')
  if (trigger === null) return null
  return body.command === undefined ? `action:${trigger}` : `command:${trigger}`
}

function chosenOf({ room, now }: Origin, body: Loose): { readonly lang: Lang | null; readonly units: Units | null; readonly at: Instant } {
  if (!room) return { lang: null, units: null, at: now() }
  const chosen = (key: string) => textAt(body, `room_${key}`) ?? textAt(body, 'room', key)
  const [lang, units, time] = [chosen('lang'), chosen('units'), chosen('at')]
  return {
    lang: lang === 'en' || lang === 'es' || lang === 'fr' ? lang : null,
    units: units === 'metric' || units === 'us' ? units : null,
    at: (time === null ? null : fromIso(time)) ?? now()
  }
}
