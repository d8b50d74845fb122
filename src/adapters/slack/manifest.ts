import { type CommandName, commandNames, usages } from '../../bot/text/usages.js'

/** Commands that only stand behind `/seamhand`. */
const behindRoot = ['bond', 'seal', 'fire', 'detail', 'punch', 'start', 'role', 'help', 'me', 'undo', 'correct'] as const
type Own = Exclude<CommandName, (typeof behindRoot)[number]>

/** A new command does not compile without its line here. */
const descriptions: Readonly<Record<Own, string>> = {
  spray: 'Can we spray now? Takes readings and statements',
  air: 'Can we lay sheets and be on the roof? Takes weather readings',
  weld: 'Can we weld? Takes coupons and changes of a welder',
  strip: 'Cut a cover strip and weld it all round',
  sheets: 'Lay sheets on a roof: rolls, cuts, strips, patches',
  probe: 'Log a void, its repair and its second probe',
  kit: 'Temperatures and life of an adhesive kit',
  foam: 'Judge a test spray',
  laid: 'Log what was laid',
  day: 'Hours that can go, last sheet by, what to stage',
  site: 'Show or set a site'
}

/** On any message: the photo in it goes with the form. */
export const messageShortcuts = [
  { callbackId: 'form:void', name: 'Log a void', description: 'Opens the form for a failed probe spot, with the photo of the message' },
  { callbackId: 'form:punch', name: 'Add to punch list', description: 'Something left to mend, with the photo of the message' }
] as const

const longestHint = 100

/** Bot scopes, the least that works, each with its reason: what is not in the code is not asked for. */
export const scopes = [
  { scope: 'commands', why: 'slash commands' },
  { scope: 'chat:write', why: 'answers, and the posts of the day' },
  { scope: 'app_mentions:read', why: 'the same words after a mention' },
  { scope: 'files:read', why: 'photos of voids, seals and the punch list, when a person adds one' },
  { scope: 'files:write', why: 'pictures and records that go with answers and posts' },
  { scope: 'im:history', why: 'the same words in a direct message' },
  { scope: 'im:write', why: 'telling a supervisor what did not get out, and the summary to who asked for one' },
  { scope: 'channels:history', why: 'looking up whether a post of unknown fate is there, before it is sent again' },
  { scope: 'groups:history', why: 'the same look in a private channel' }
] as const

export const botEvents = ['app_home_opened', 'app_mention', 'app_uninstalled', 'message.im', 'tokens_revoked'] as const

const longDescription =
  'For crews that glue fleece-backed roof sheets with two-component foam adhesive and hot-air weld the seams. Ask whether spraying, laying or welding can go now, ' +
  'log readings, coupons, kits, voids and repairs in short words, and get a post each morning with the hours that can go. Every answer says which number decides and what to do.'

/** The app's manifest; with an address it takes deliveries over HTTP, without one through Socket Mode. */
export function manifestOf(url: string | null) {
  const base = url?.replace(/\/+$/, '') ?? ''
  const endpoint = url === null ? null : `${base}/slack/events`
  return {
    display_information: {
      name: 'Seamhand',
      description: 'Go or no-go for gluing and welding roof sheets, with a record',
      background_color: '#1f2a36',
      long_description: longDescription
    },
    features: {
      app_home: { home_tab_enabled: true, messages_tab_enabled: true, messages_tab_read_only_enabled: false },
      bot_user: { display_name: 'Seamhand', always_online: true },
      slash_commands: slashCommands(endpoint),
      shortcuts: messageShortcuts.map(({ callbackId, name, description }) => ({
        name,
        type: 'message' as const,
        callback_id: callbackId,
        description
      }))
    },
    oauth_config: {
      ...(endpoint === null ? {} : { redirect_urls: [`${base}/slack/oauth_redirect`] }),
      scopes: { bot: scopes.map(({ scope }) => scope) }
    },
    settings: {
      event_subscriptions: { ...(endpoint === null ? {} : { request_url: endpoint }), bot_events: [...botEvents] },
      interactivity: { is_enabled: true, ...(endpoint === null ? {} : { request_url: endpoint }) },
      org_deploy_enabled: false,
      socket_mode_enabled: endpoint === null,
      token_rotation_enabled: false
    }
  }
}

function slashCommands(endpoint: string | null) {
  const url = endpoint === null ? {} : { url: endpoint }
  // A channel that is named comes as its id only where the text is escaped.
  const root = { command: '/seamhand', ...url, description: 'Everything: any command, help, me, undo', usage_hint: 'help spray', should_escape: true }
  const own = commandNames.filter(isOwn).map((name) => ({
    command: `/${name}`,
    ...url,
    description: descriptions[name],
    usage_hint: hintOf(name),
    should_escape: name === 'site'
  }))
  return [root, ...own]
}

function isOwn(name: CommandName): name is Own {
  return !(behindRoot as readonly string[]).includes(name)
}

function hintOf(name: Own): string {
  return usages[name].example.replace(`/${name} `, '').slice(0, longestHint)
}
