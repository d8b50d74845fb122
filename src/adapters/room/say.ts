import { applyAnswer, replyBody, tellRefused } from './answer.js'
import type { RoomChannel } from './channels.js'
import { isBehindSeamhand, isRoomCommand } from './commands.js'
import { failureOf } from './deliver.js'
import { sendEvent, tellOfMessage } from './events.js'
import { type RoomPerson, roomIds } from './people.js'
import { notice, personMessage } from './post.js'
import { shownMessage } from './shown.js'
import type { Aside } from './types.js'
import { roomSays } from './words/index.js'
import { roomLang, track, type World } from './world.js'

interface Said {
  readonly channel: RoomChannel
  readonly person: RoomPerson
  readonly text: string
  readonly tab: string
  readonly thread: string | null
  readonly files: readonly string[]
  readonly aside: Aside
}

/** Takes what a person typed, shows it, and hands it to the app; the answer comes later. Returns the ts of what was typed. */
export function say(world: World, said: Said): string {
  return said.text.startsWith('/') ? sayCommand(world, said) : sayMessage(world, said)
}

function sayCommand(world: World, said: Said): string {
  const { channel, person, text } = said
  const [word = ''] = text.split(/\s/, 1)
  const lang = roomLang(world, said.aside)
  const typed = personMessage(world, { channel: channel.id, user: person.id, text, onlyFor: person.id, typed: true, threadTs: said.thread })
  const behind = !isRoomCommand(word.toLowerCase()) && isBehindSeamhand(word)
  if (!isRoomCommand(word.toLowerCase()) && !behind) notice(world, channel.id, person.id, roomSays(lang, 'notCommand', { word, name: word.slice(1) }))
  else if (said.thread !== null) notice(world, channel.id, person.id, roomSays(lang, 'notInThread', { word }))
  else if (behind) track(world, runCommand(world, said, '/seamhand', text.slice(1).trim(), typed.ts))
  else track(world, runCommand(world, said, word.toLowerCase(), text.slice(word.length).trim(), typed.ts))
  return typed.ts
}

async function runCommand(world: World, said: Said, command: string, text: string, typed: string): Promise<void> {
  const { channel, person, aside, tab } = said
  const target = { channel: channel.id, user: person.id, original: null, typed, threadTs: null }
  const form = new URLSearchParams({
    token: '',
    team_id: roomIds.team,
    team_domain: 'local-room',
    channel_id: channel.id,
    channel_name: channel.name,
    user_id: person.id,
    user_name: person.role,
    command,
    text,
    api_app_id: roomIds.app,
    is_enterprise_install: 'false',
    response_url: `${world.settings.base()}/room/hook/${world.hooks.make(target)}`,
    trigger_id: world.triggers.make({ user: person.id, tab })
  })
  for (const [key, value] of Object.entries(aside)) if (value !== null) form.set(`room_${key}`, value)
  const delivered = await world.deliver('form', form.toString())
  const lang = roomLang(world, aside)
  const failure = failureOf(delivered, world.settings.timing.deadlineMs, lang)
  if (failure !== null || delivered.kind !== 'answer')
    return notice(world, channel.id, person.id, roomSays(lang, 'commandFailed', { word: command, why: failure ?? '' }))
  const body = replyBody(delivered.body)
  const refused = body === null ? null : await applyAnswer(world, target, body)
  if (refused !== null) tellRefused(world, target, refused)
}

function sayMessage(world: World, said: Said): string {
  const { channel, person, aside } = said
  const direct = channel.with !== null
  const message = personMessage(world, { channel: channel.id, user: person.id, text: said.text, threadTs: said.thread, files: said.files })
  const sent = { ...message, text: direct ? escaped(said.text) : `<@${roomIds.botUser}> ${escaped(said.text)}` }
  const failed = (why: string) => notice(world, channel.id, person.id, roomSays(roomLang(world, aside), 'notTaken', { why }))
  tellOfMessage(world, channel, sent, aside, failed)
  // No one has to write the name: in a site's channel every message goes to Seamhand.
  if (!direct)
    sendEvent(
      world,
      'app_mention',
      { ...shownMessage(world, sent, false), type: 'app_mention', channel: channel.id, event_ts: message.ts },
      aside,
      failed
    )
  return message.ts
}

/** As the service writes what people typed. */
function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
}
