import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { handledEvents } from '../../../src/adapters/slack/handlers/event.js'
import { botEvents, manifestOf, scopes } from '../../../src/adapters/slack/manifest.js'
import { manifestYaml } from '../../../src/adapters/slack/manifest-yaml.js'
import { Stop } from '../../../src/adapters/terminal/io.js'
import { manifest } from '../../../src/adapters/terminal/manifest.js'
import type { Tools } from '../../../src/adapters/terminal/tools.js'
import { commandNames } from '../../../src/bot/text/usages.js'

const root = join(import.meta.dirname, '../../..')
const both = [
  ['Socket Mode', null],
  ['HTTP', 'https://roof.example/bot/']
] as const

/** Bounds of the platform's published manifest schema (draft-07, "App Manifest"), read 2026-05. */
const schema = {
  name: 35,
  description: 140,
  longMin: 175,
  longMax: 4000,
  displayName: 80,
  commands: 50,
  command: 32,
  commandDescription: 2000,
  hint: 1000,
  url: 3000,
  requestUrl: 3500,
  events: 100,
  scopes: 255,
  text: 50
}
/** Its members, level by level; it takes no others. */
const members = {
  top: ['_metadata', 'display_information', 'features', 'oauth_config', 'settings'],
  display: ['name', 'description', 'background_color', 'long_description'],
  home: ['home_tab_enabled', 'messages_tab_enabled', 'messages_tab_read_only_enabled'],
  command: ['command', 'url', 'description', 'usage_hint', 'should_escape'],
  settings: ['event_subscriptions', 'interactivity', 'org_deploy_enabled', 'socket_mode_enabled', 'token_rotation_enabled']
}

describe.each(both)('the manifest for %s', (_name, url) => {
  const made = manifestOf(url)

  it('stays inside the bounds of the published schema', () => {
    const { display_information: display, features, settings, oauth_config: oauth } = made
    expect(Object.keys(made).every((key) => members.top.includes(key))).toBe(true)
    expect(Object.keys(display).every((key) => members.display.includes(key))).toBe(true)
    expect(Object.keys(features.app_home)).toEqual(members.home)
    expect(Object.keys(settings).every((key) => members.settings.includes(key))).toBe(true)
    expect(display.name.length).toBeLessThanOrEqual(schema.name)
    expect(display.description.length).toBeLessThanOrEqual(schema.description)
    expect(display.long_description.length).toBeGreaterThanOrEqual(schema.longMin)
    expect(display.long_description.length).toBeLessThanOrEqual(schema.longMax)
    expect(features.bot_user.display_name.length).toBeLessThanOrEqual(schema.displayName)
    expect(features.slash_commands.length).toBeLessThanOrEqual(schema.commands)
    for (const each of features.slash_commands) {
      expect(Object.keys(each).every((key) => members.command.includes(key))).toBe(true)
      expect(each.command).toMatch(/^\/[a-z]+$/)
      expect(each.command.length).toBeLessThanOrEqual(schema.command)
      expect(each.description.length).toBeLessThanOrEqual(schema.commandDescription)
      expect(each.usage_hint.length).toBeGreaterThan(0)
      expect(each.usage_hint.length).toBeLessThanOrEqual(100)
    }
    expect(settings.event_subscriptions.bot_events.length).toBeLessThanOrEqual(schema.events)
    expect(oauth.scopes.bot.length).toBeLessThanOrEqual(schema.scopes)
    for (const text of [...settings.event_subscriptions.bot_events, ...oauth.scopes.bot]) expect(text.length).toBeLessThanOrEqual(schema.text)
  })

  it('names every command that stands alone, once, and none that is not built', () => {
    const names = made.features.slash_commands.map(({ command }) => command.slice(1))
    // Behind /seamhand alone: outside contract §6 lists what stands in the manifest.
    const behind = ['bond', 'seal', 'fire', 'detail', 'punch', 'start', 'role', 'help', 'me', 'undo', 'correct']
    expect([...names].sort()).toEqual(['seamhand', ...commandNames.filter((name) => !behind.includes(name))].sort())
  })

  it('lets people write to the bot directly', () => {
    expect(made.features.app_home).toEqual({ home_tab_enabled: true, messages_tab_enabled: true, messages_tab_read_only_enabled: false })
  })

  it('prints what it is', () => {
    expect(parse(manifestYaml(url))).toEqual(made)
  })
})

// platform notes C4: "Socket Mode: socket_mode_enabled true, drop every request_url/url. HTTP mode: … all the same /slack/events".
it('has addresses for HTTP alone, all the same', () => {
  expect(JSON.stringify(manifestOf(null))).not.toMatch(/url/)
  expect(manifestOf(null).settings.socket_mode_enabled).toBe(true)
  const http = manifestOf('https://roof.example/bot/')
  const urls = [...JSON.stringify(http).matchAll(/"(?:request_)?url":"([^"]*)"/g)].map((match) => match[1])
  expect(new Set(urls)).toEqual(new Set(['https://roof.example/bot/slack/events']))
  expect(urls).toHaveLength(http.features.slash_commands.length + 2)
  expect(http.settings.socket_mode_enabled).toBe(false)
})

it('is the file at the top, to the letter', () => {
  expect(readFileSync(join(root, 'manifest.yaml'), 'utf8')).toBe(manifestYaml(null))
})

it('gives each scope its reason in the file', () => {
  for (const { scope, why } of scopes) expect(manifestYaml(null)).toContain(`- ${scope} # ${why}`)
})

/** Scope each method needs (the service's reference page of each method); null: none. */
const scopeOf: Record<string, readonly string[] | null> = {
  'auth.test': null,
  'chat.postMessage': ['chat:write'],
  'chat.postEphemeral': ['chat:write'],
  'chat.update': ['chat:write'],
  'conversations.open': ['im:write'],
  'conversations.history': ['channels:history', 'groups:history'],
  'files.completeUploadExternal': ['files:write'],
  'files.info': ['files:read'],
  'views.open': null,
  'views.push': null,
  'views.publish': null
}
/** Scope each event needs (the service's reference page of each event). */
const eventScope: Record<string, string | null> = {
  app_home_opened: null,
  app_mention: 'app_mentions:read',
  app_uninstalled: null,
  'message.im': 'im:history',
  tokens_revoked: null
}

describe('scopes', () => {
  const folder = join(root, 'src/adapters/slack')
  const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
    .join('\n')
  const called = new Set(
    [...source.matchAll(/\b(auth|chat|conversations|users|views|files|reactions|pins)\.([a-zA-Z]+)\(/g)].map(([, group, name]) => `${group}.${name}`)
  )
  // The client's own three calls for an upload.
  if (source.includes('.filesUploadV2(')) called.add('files.completeUploadExternal')
  for (const [, name] of source.matchAll(/\bviews\.(open|push)\(/g)) called.add(`views.${name}`)

  it('cover every method that the adapter calls', () => {
    const service = [...called].filter((name) => name in scopeOf)
    expect(service.sort()).toEqual(Object.keys(scopeOf).sort())
    for (const name of service) for (const scope of scopeOf[name] ?? []) expect(scopes.map((each) => each.scope)).toContain(scope)
  })

  it('are no more than methods, events and commands need', () => {
    const needed = new Set([
      'commands',
      ...Object.values(scopeOf).flatMap((list) => list ?? []),
      ...Object.values(eventScope).filter((scope) => scope !== null)
    ])
    expect(scopes.map(({ scope }) => scope).sort()).toEqual([...needed].sort())
  })

  it('go with events that somebody handles', () => {
    expect(Object.keys(eventScope).sort()).toEqual([...botEvents].sort())
    expect(new Set(botEvents.map((name) => name.replace(/^message\..*/, 'message')))).toEqual(new Set(handledEvents))
  })
})

describe('seamhand manifest', () => {
  const run = async (...args: string[]) => {
    let out = ''
    const tools = {
      terminal: {
        out: (text: string) => {
          out += text
        }
      },
      manifest: async (url: string) => manifestYaml(url)
    } as unknown as Tools
    return { code: await manifest(args, tools), out }
  }

  it('prints the manifest for HTTP', async () => {
    const { code, out } = await run('--url', 'https://roof.example')
    expect(code).toBe(0)
    expect(parse(out)).toEqual(manifestOf('https://roof.example'))
  })

  it.each([
    [[], 'missing'],
    [['--url', 'http://roof.example'], 'bad-option'],
    [['--url', 'roof.example'], 'bad-option'],
    [['--url', 'https://a:b@roof.example'], 'bad-option'],
    [['--url', 'https://roof.example/?x=1'], 'bad-option'],
    [['--url', ''], 'bad-option'],
    [['--other'], 'bad-option'],
    [['--url', 'https://roof.example', 'more'], 'bad-option']
  ])('refuses %j', async (args, errorCode) => {
    const failed = await run(...args).catch((error: unknown) => error)
    expect(failed).toBeInstanceOf(Stop)
    expect(failed).toMatchObject({ code: 2, errorCode })
  })
})
