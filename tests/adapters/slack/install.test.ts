import { afterEach, describe, expect, it } from 'vitest'
import type { Installation, InstallationBook } from '../../../src/adapters/slack/workspaces.js'
import { en } from '../../../src/bot/text/en.js'
import {
  type Bot,
  botToken,
  command,
  event,
  interaction,
  type Loose,
  type Service,
  secret,
  startBot,
  startService,
  until
} from '../../support/slack.js'

const mode = {
  kind: 'many' as const,
  clientId: '11.22',
  clientSecret: 'client secret',
  stateSecret: 'state secret of the tests',
  signingSecret: secret
}
const open: Bot[] = []
afterEach(async () => {
  for (const bot of open.splice(0)) await bot.close()
})

/** A book in memory, as the store keeps it. */
function memoryBook(): InstallationBook & { readonly kept: Map<string, Installation & { readonly at: number }> } {
  const kept = new Map<string, Installation & { readonly at: number }>()
  return {
    kept,
    find: async (workspace) => kept.get(workspace) ?? null,
    save: async (installation, at) => void kept.set(installation.workspace, { ...installation, at }),
    remove: async (workspace, at) => {
      const gone = (kept.get(workspace)?.at ?? 0) <= at
      if (gone) kept.delete(workspace)
      return gone
    }
  }
}

async function startMany(service?: Service) {
  const book = memoryBook()
  const installers: string[] = []
  const installedBy = async (workspace: string, user: string) => installers.push(`${workspace} ${user}`)
  const many = { ...mode, book, words: en.install, installedBy }
  const bot = await startBot({ mode: many, workspaceOf: (team) => team }, service ?? (await startService(null)))
  open.push(bot)
  return { book, bot, installers }
}

const installedAs = (workspace: string, at = 0): Installation & { at: number } => ({
  workspace,
  botToken: `xoxb-${workspace}`,
  botId: `B${workspace}`,
  botUserId: `U${workspace}`,
  at
})

describe('installing', () => {
  async function begin(bot: Bot) {
    const page = await bot.get('/slack/install')
    const address = new URL(/href="([^"]+)"/.exec(page.text)?.[1]?.replaceAll('&#38;', '&') ?? '')
    const cookie = page.headers['set-cookie']?.[0] ?? ''
    return { page, address, state: address.searchParams.get('state') ?? '', cookie }
  }
  const granted = (team: Loose = { id: 'T1', name: 'North' }, more: Loose = {}) => ({
    body: {
      ok: true,
      access_token: 'xoxb-T1',
      token_type: 'bot',
      scope: 'commands',
      bot_user_id: 'UB',
      app_id: 'A0',
      team,
      enterprise: null,
      authed_user: { id: 'U1' },
      is_enterprise_install: false,
      ...more
    }
  })

  it('leads to the service with the least scopes and a state in the browser, and keeps the token', async () => {
    const { book, bot, installers } = await startMany()
    bot.service.on('oauth.v2.access', granted())
    const { page, address, state, cookie } = await begin(bot)

    expect(page.status).toBe(200)
    expect(`${address.origin}${address.pathname}`).toBe(new URL('/oauth/v2/authorize', bot.service.apiUrl).href)
    expect(address.searchParams.get('client_id')).toBe('11.22')
    expect(address.searchParams.get('scope')).toMatch(/^commands,chat:write/)
    expect(cookie).toMatch(/HttpOnly/)
    expect(cookie).toMatch(/Secure/)
    expect(page.headers).toMatchObject({ 'cache-control': 'no-store', 'referrer-policy': 'no-referrer' })
    const done = await bot.get(`/slack/oauth_redirect?code=c1&state=${state}`, { cookie: cookie.split(';')[0] ?? '' })
    expect({ status: done.status, text: done.text }).toMatchObject({ status: 200, text: expect.stringContaining('Seamhand is installed') })
    expect(bot.service.of('oauth.v2.access')[0]?.args).toMatchObject({ code: 'c1', client_id: '11.22', client_secret: 'client secret' })
    expect(book.kept.get('T1')).toMatchObject({ workspace: 'T1', botToken: 'xoxb-T1', botId: 'B0BOT', botUserId: 'UB' })
    expect(installers).toEqual(['T1 U1'])
    expect(done.text + JSON.stringify(bot.logged)).not.toMatch(/xoxb|client secret/)
  })

  // platform notes C1, OAuth: "Redirect without the state cookie -> 400."
  it.each([
    ['without the cookie', (state: string) => [`code=c1&state=${state}`, ''] as const],
    ['with the state of another browser', (state: string) => [`code=c1&state=${state}`, 'slack-app-oauth-state=other'] as const],
    ['without a state', () => ['code=c1', 'slack-app-oauth-state=x'] as const],
    ['with a state made up', () => ['code=c1&state=x', 'slack-app-oauth-state=x'] as const],
    ['without a code', (state: string) => [`state=${state}`, `slack-app-oauth-state=${state}`] as const],
    ['where the person said no', (state: string) => [`error=access_denied&state=${state}`, `slack-app-oauth-state=${state}`] as const]
  ])('does not install %s', async (_name, made) => {
    const { book, bot } = await startMany()
    bot.service.on('oauth.v2.access', granted())
    const [query, cookie] = made((await begin(bot)).state)
    const answer = await bot.get(`/slack/oauth_redirect?${query}`, { cookie })
    expect(answer.status).toBe(400)
    expect(answer.text).toContain('was not installed')
    expect(bot.service.of('oauth.v2.access')).toHaveLength(0)
    expect(book.kept.size).toBe(0)
  })

  it.each([
    ['the service refuses the code', { body: { ok: false, error: 'invalid_code' } }],
    ['a whole organisation', granted(undefined, { is_enterprise_install: true, enterprise: { id: 'E1' } })],
    ['tokens that rotate', granted(undefined, { refresh_token: 'xoxe-1', expires_in: 43_200 })]
  ])('does not install: %s', async (_name, answer) => {
    const { book, bot } = await startMany()
    bot.service.on('oauth.v2.access', answer)
    const { state, cookie } = await begin(bot)
    const end = await bot.get(`/slack/oauth_redirect?code=c1&state=${state}`, { cookie: cookie.split(';')[0] ?? '' })
    expect([end.status, book.kept.size]).toEqual([500, 0])
    expect(JSON.stringify(bot.logged)).not.toMatch(/xoxb|xoxe/)
  })

  it('shows nothing of what a link says', async () => {
    const { bot } = await startMany()
    const end = await bot.get('/slack/oauth_redirect?error=%3Cscript%3Ealert(1)%3C/script%3E&state=%3Cb%3E')
    expect(end.text).not.toMatch(/<script>|<b>/)
    expect(end.headers['content-security-policy']).toContain("default-src 'none'")
  })

  it('is no path of a bot with one workspace', async () => {
    const bot = await startBot()
    open.push(bot)
    expect(bot.slack.install).toBeNull()
  })
})

describe('many workspaces', () => {
  it('speak each with their own token, whatever comes at once', async () => {
    const { book, bot } = await startMany()
    for (const team of ['T1', 'T2', 'T3']) book.kept.set(team, installedAs(team))
    const teams = Array.from({ length: 30 }, (_, index) => `T${(index % 3) + 1}`)
    await Promise.all(
      teams.map((team) =>
        bot.deliver(event({ type: 'app_mention', channel: `C${team}`, text: 'spray' }, { team_id: team, authorizations: [{ team_id: team }] }), {
          as: 'json'
        })
      )
    )
    await until(() => bot.service.of('chat.postMessage').length === 30)
    for (const { args, authorization } of bot.service.of('chat.postMessage'))
      expect(authorization).toBe(`Bearer xoxb-${String(args.channel).slice(1)}`)
    expect(new Set(bot.talk.heard.map(({ delivery }) => `${delivery.workspace} ${delivery.channel}`))).toEqual(
      new Set(['T1 CT1', 'T2 CT2', 'T3 CT3'])
    )
  })

  it('count by who installed the app, in a channel shared between two', async () => {
    const { book, bot } = await startMany()
    book.kept.set('T1', installedAs('T1'))
    await bot.deliver(
      event({ type: 'app_mention', channel: 'C9', text: 'spray', team: 'T2' }, { team_id: 'T2', authorizations: [{ team_id: 'T1' }] }),
      { as: 'json' }
    )
    await until(() => bot.service.of('chat.postMessage').length === 1)
    expect(bot.talk.heard[0]?.delivery.workspace).toBe('T1')
    expect(bot.service.of('chat.postMessage')[0]?.authorization).toBe('Bearer xoxb-T1')
  })

  it('open forms and homes with the token of their own', async () => {
    const { book, bot } = await startMany()
    for (const team of ['T1', 'T2']) book.kept.set(team, installedAs(team))
    for (const team of ['T1', 'T2']) {
      await bot.deliver(
        interaction({
          type: 'block_actions',
          team: { id: team },
          user: { id: 'U1', team_id: team },
          channel: { id: 'C1' },
          actions: [{ action_id: 'form:coupon', value: 'x' }]
        })
      )
      await bot.deliver(event({ type: 'app_home_opened', tab: 'home', channel: 'D1' }, { team_id: team, authorizations: [{ team_id: team }] }), {
        as: 'json'
      })
    }
    await until(() => bot.service.of('views.publish').length === 2)
    const tokens = (method: string) => bot.service.of(method).map(({ authorization }) => authorization)
    expect(tokens('views.open')).toEqual(['Bearer xoxb-T1', 'Bearer xoxb-T2'])
    expect(tokens('views.publish').sort()).toEqual(['Bearer xoxb-T1', 'Bearer xoxb-T2'])
  })

  it('that did not install get nothing, and nothing of them is heard', async () => {
    const { bot } = await startMany()
    expect((await bot.deliver(command(bot.service, 'air 20', { team_id: 'T9' }))).status).toBe(401)
    expect((await bot.deliver(command(bot.service, 'air 20', { team_id: '' }))).status).toBe(401)
    expect(bot.talk.heard).toEqual([])
    expect(await bot.slack.chat.post({ workspace: 'T9', channel: 'C1', key: 'k', text: 'x', blocks: [], files: [] })).toEqual({
      kind: 'refused',
      code: 'not_installed'
    })
    expect(await bot.slack.chat.find('T9', 'C1', 'k', 0)).toEqual({ kind: 'unreadable' })
    expect(bot.service.calls).toEqual([])
  })

  it('ask the service for nothing at the start, and never who they are', async () => {
    const { book, bot } = await startMany()
    book.kept.set('T1', installedAs('T1'))
    for (let n = 0; n < 3; n += 1) expect((await bot.deliver(command(bot.service, 'air 20', { team_id: 'T1' }))).status).toBe(200)
    expect(bot.service.of('auth.test')).toEqual([])
    expect(bot.slack.ready()).toBe(true)
  })

  it('see a new token at once, whichever server took it', async () => {
    const { book, bot } = await startMany()
    book.kept.set('T1', installedAs('T1'))
    const post = { workspace: 'T1', channel: 'C1', key: 'k', text: 'x', blocks: [], files: [] }
    await bot.slack.chat.post(post)
    book.kept.set('T1', { ...installedAs('T1'), botToken: 'xoxb-new' })
    await bot.slack.chat.post(post)
    book.kept.delete('T1')
    expect(await bot.slack.chat.post(post)).toMatchObject({ kind: 'refused' })
    expect(bot.service.of('chat.postMessage').map(({ authorization }) => authorization)).toEqual(['Bearer xoxb-T1', 'Bearer xoxb-new'])
  })
})

describe('what the service took away', () => {
  const told = (type: string, time: number, more: Loose = {}) =>
    event({ type, ...more }, { team_id: 'T1', event_time: time, authorizations: undefined })

  it.each([
    ['app_uninstalled', {}],
    ['tokens_revoked', { tokens: { oauth: ['U1'], bot: ['U2'] } }]
  ])('is gone after %s, for that workspace alone', async (type, more) => {
    const { book, bot } = await startMany()
    for (const team of ['T1', 'T2']) book.kept.set(team, installedAs(team, 100))
    expect((await bot.deliver(told(type, 200, more), { as: 'json' })).status).toBe(200)
    await until(() => !book.kept.has('T1'))
    expect([...book.kept.keys()]).toEqual(['T2'])
    // Told again, as the service does: nothing is left to do.
    expect((await bot.deliver(told(type, 200, more), { as: 'json' })).status).toBe(200)
    expect(bot.slack.ready()).toBe(true)
  })

  it('is not the bot when only a person took a token back', async () => {
    const { book, bot } = await startMany()
    book.kept.set('T1', installedAs('T1', 100))
    await bot.deliver(told('tokens_revoked', 200, { tokens: { oauth: ['U1'], bot: [] } }), { as: 'json' })
    await new Promise((resolve) => setTimeout(resolve, 30))
    expect(book.kept.has('T1')).toBe(true)
  })

  it('is not what was installed since, unless the service says so itself', async () => {
    const { book, bot } = await startMany()
    book.kept.set('T1', installedAs('T1', 300))
    await bot.deliver(told('app_uninstalled', 200), { as: 'json' })
    await until(() => bot.service.of('auth.test').length === 1)
    await new Promise((resolve) => setTimeout(resolve, 30))
    expect(book.kept.has('T1')).toBe(true)
    bot.service.on('auth.test', { body: { ok: false, error: 'account_inactive' } })
    await bot.deliver(told('app_uninstalled', 200), { as: 'json' })
    await until(() => !book.kept.has('T1'))
  })

  it('ends the one workspace of a token as before', async () => {
    const bot = await startBot()
    open.push(bot)
    expect(bot.slack.ready()).toBe(true)
    await bot.deliver(event({ type: 'app_uninstalled' }), { as: 'json' })
    await until(() => !bot.slack.ready())
    expect(botToken).toMatch(/^xoxb/)
  })
})
