import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { webApi } from '@slack/bolt'
import { afterEach, describe, expect, it } from 'vitest'
import { createSlack } from '../../../src/adapters/slack/app.js'
import { boundedFetch, clientOptions, createClients } from '../../../src/adapters/slack/clients.js'
import { createSeen } from '../../../src/adapters/slack/seen.js'
import { SlackError } from '../../../src/adapters/slack/slack-error.js'
import { createWork, within } from '../../../src/adapters/slack/work.js'
import {
  arrayLog,
  botToken,
  command,
  fakeTalk,
  type Logged,
  type Loose,
  type Service,
  said,
  secret,
  startBot,
  startService,
  until
} from '../../support/slack.js'

const open: Service[] = []
const service = async (token?: string) => {
  const started = await startService(token)
  open.push(started)
  return started
}
afterEach(async () => {
  for (const one of open.splice(0)) await one.close()
})

const optionsFor = (apiUrl: string, logged: Logged[] = []) => ({
  mode: { kind: 'http' as const, signingSecret: secret, botToken },
  apiUrl,
  talk: fakeTalk(),
  workspaceOf: () => 'local',
  room: false,
  now: () => Math.floor(Date.now() / 1000),
  log: arrayLog(logged)
})

describe('starting', () => {
  // platform notes C1, Errors: "Default construction calls auth.test at once without a catch: a bad token kills the process with an unhandled rejection".
  it('says in a sentence that the token is not taken', async () => {
    const unhandled: unknown[] = []
    const note = (error: unknown) => void unhandled.push(error)
    process.on('unhandledRejection', note)
    const { apiUrl } = await service('another token')
    const start = createSlack(optionsFor(apiUrl))
    await expect(start).rejects.toThrow(SlackError)
    await expect(start).rejects.toThrow('the chat service refused the bot token: invalid_auth')
    await new Promise((resolve) => setTimeout(resolve, 20))
    process.off('unhandledRejection', note)
    expect(unhandled).toEqual([])
  })

  it('says in a sentence that the service is away, after three tries', async () => {
    const { apiUrl, calls, on } = await service()
    on('auth.test', { status: 503, raw: 'away' })
    const logged: Logged[] = []
    await expect(createSlack(optionsFor(apiUrl, logged))).rejects.toThrow('could not be reached to check the bot token (http 503)')
    expect(calls).toHaveLength(3)
    expect(JSON.stringify(logged)).not.toContain(botToken)
  })

  // platform notes C1, Errors: "tokenVerificationEnabled:false without botId AND botUserId calls auth.test on every request"; "First request cold".
  it('asks who it is once, before the first request, and never again', async () => {
    const bot = await startBot()
    expect(bot.service.of('auth.test')).toHaveLength(1)
    for (let i = 0; i < 3; i++) await bot.deliver(command(bot.service, 'air 20'))
    expect(bot.service.of('auth.test')).toHaveLength(1)
    await bot.close()
  })

  it('takes an address without a slash at its end', async () => {
    const { apiUrl } = await service()
    const slack = await createSlack(optionsFor(apiUrl.replace(/\/$/, '')))
    expect(slack.ready()).toBe(false)
    await slack.start()
    expect(slack.ready()).toBe(true)
    await slack.stop()
    expect(slack.ready()).toBe(false)
  })
})

describe('stopping', () => {
  // platform notes C1, Errors: "app.stop(): 0 ms, does not wait for work after ack (RAN: listener unfinished)".
  it('waits for what was accepted, and for the answer that follows', async () => {
    const bot = await startBot({ answerMs: 30 })
    bot.talk.set({ say: () => new Promise((resolve) => setTimeout(() => resolve(said('finished')), 300)) })
    await bot.deliver(command(bot.service, 'air 20'))
    expect(bot.service.of('hook')).toHaveLength(0)
    await bot.slack.stop()
    expect(bot.service.of('hook').map(({ args }) => args.text)).toEqual(['finished'])
    await bot.close()
  })

  it('gives up after a while', async () => {
    const work = createWork()
    void work.track(new Promise(() => {}))
    expect(await work.drained(20)).toBe(1)
  })

  it('waits for what the awaited starts, and takes failures', async () => {
    const work = createWork()
    let last = false
    const second = () =>
      new Promise<void>((resolve) =>
        setTimeout(() => {
          last = true
          resolve()
        }, 20)
      )
    void work.track(new Promise<void>((resolve) => setTimeout(resolve, 10)).then(() => void work.track(second())))
    work.track(Promise.reject(new Error('failed'))).catch(() => {})
    expect(await work.drained(1000)).toBe(0)
    expect(last).toBe(true)
  })
})

describe('clients', () => {
  const log = arrayLog([])

  // platform notes C1, OAuth, SECURITY: "setting clientOptions.headers leaks tokens between workspaces".
  it('never share what the web client writes into: no headers, a new object each time', async () => {
    const settings = { apiUrl: (await service('either')).apiUrl, log, fetch }
    expect(clientOptions(settings)).not.toHaveProperty('headers')
    expect(clientOptions(settings)).not.toBe(clientOptions(settings))
    const one = open[0]!
    await createClients('xoxb-a', settings)
      .posts.auth.test()
      .catch(() => {})
    await createClients('xoxb-b', settings)
      .posts.auth.test()
      .catch(() => {})
    expect(one.calls.map(({ authorization }) => authorization)).toEqual(['Bearer xoxb-a', 'Bearer xoxb-b'])
  })

  // platform notes C1, Web client: "Default retries 10 over ~30 min … no timeout".
  it.each([
    ['500', { status: 500, raw: 'x' }],
    ['404', { status: 404, raw: 'x' }],
    ['429', { status: 429, headers: { 'retry-after': '9' } }],
    ['a cut', { raw: '{', cut: true }]
  ])('call once and no more after %s', async (_name, answer) => {
    const { apiUrl, calls, on } = await service()
    on('chat.postMessage', answer)
    const { posts } = createClients(botToken, { apiUrl, log, fetch })
    await expect(posts.chat.postMessage({ channel: 'C1', text: 'x' })).rejects.toThrow()
    expect(calls).toHaveLength(1)
  })

  // platform notes C1, Web client: "respond() has no timeout and no retry (RAN: unsettled after 4 s)".
  it('end a call that is never answered', async () => {
    const { hook, on } = await service()
    on('hook', { silent: true })
    const bounded = boundedFetch(fetch, 60)
    await expect(bounded(hook, { method: 'POST', body: '{}', headers: { 'content-type': 'application/json' } })).rejects.toThrow(/timeout|aborted/i)
    const ended = new AbortController()
    const asked = boundedFetch(fetch, 60_000)(hook, {
      method: 'POST',
      body: '{}',
      headers: { 'content-type': 'application/json' },
      signal: ended.signal
    })
    ended.abort()
    await expect(asked).rejects.toThrow(/abort/i)
    expect(clientOptions({ apiUrl: hook, log, fetch }).timeout).toBe(10_000)
  })

  // platform notes C5 5: "node-slack-sdk#1421 bad Retry-After".
  it.each([undefined, 'soon', ''])('read a limit without a time (%j) as 30 s', async (retryAfter) => {
    const { apiUrl, on } = await service()
    on('chat.postMessage', { status: 429, headers: retryAfter === undefined ? {} : { 'retry-after': retryAfter } })
    const { posts } = createClients(botToken, { apiUrl, log, fetch })
    await expect(posts.chat.postMessage({ channel: 'C1', text: 'x' })).rejects.toMatchObject({ retryAfter: 30 })
    await expect(posts.chat.postMessage({ channel: 'C1', text: 'x' })).rejects.toBeInstanceOf(webApi.WebAPIRateLimitedError)
  })

  it('are not made with headers anywhere', () => {
    const folder = join(import.meta.dirname, '../../../src/adapters/slack')
    const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(join(folder, name), 'utf8'))
    for (const source of sources) expect(source).not.toMatch(/clientOptions[^\n]*headers|new webApi\.WebClient\([^)]*headers/)
    expect(sources.join('\n')).not.toContain('developerMode')
  })
})

describe('memory of deliveries', () => {
  it('tells the first from the next, forgets the oldest and what failed', () => {
    const seen = createSeen(2)
    expect([seen.first('a'), seen.first('a'), seen.first(null), seen.first(null)]).toEqual([true, false, true, true])
    seen.first('b')
    seen.first('c')
    expect(seen.first('a')).toBe(true)
    expect(seen.first('c')).toBe(false)
    seen.forget('c')
    seen.forget(null)
    expect(seen.first('c')).toBe(true)
  })

  it('waits for a value as long as it may', async () => {
    expect(await within(Promise.resolve(7), 50)).toEqual({ value: 7 })
    expect(await within(new Promise(() => {}), 5)).toBe('late')
    await expect(within(Promise.reject(new Error('no')), 50)).rejects.toThrow('no')
  })
})

it('reads a payload without believing it', async () => {
  const bot = await startBot()
  const forms: Loose[] = [{ command: '/spray' }, { command: '/spray', text: '__proto__', user_id: '', team_id: '' }]
  const payloads = [
    { type: 'block_actions', actions: [{ action_id: 7, value: {} }], user: { id: 'U1' }, team: null },
    { type: 'view_submission', view: { callback_id: 'x' }, user: { id: 'U1' }, team: null },
    { type: 'view_submission', view: { callback_id: 'x', state: { values: { a: null, b: [1], c: { d: 'e' } } } }, user: {}, team: { id: 'T0' } }
  ].map((payload) => ({ payload: JSON.stringify(payload) }))
  for (const body of [...forms, ...payloads]) expect((await bot.deliver(body)).status, JSON.stringify(body)).toBe(200)
  await until(() => bot.talk.heard.length === 5)
  await bot.close()
})
