import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createSlack } from '../../../src/adapters/slack/app.js'
import type { Slack } from '../../../src/adapters/slack/slack.js'
import {
  appToken,
  arrayLog,
  botToken,
  command,
  event,
  type FakeTalk,
  fakeTalk,
  interaction,
  type Logged,
  type Loose,
  type Service,
  said,
  startService,
  until
} from '../../support/slack.js'
import { type SocketService, startSocketService } from '../../support/socket.js'

let service: Service
let socket: SocketService
let slack: Slack
let talk: FakeTalk
let logged: Logged[]

/** The stand-in takes the bot token alone: the app token is checked by the one method that needs it. */
beforeEach(async () => {
  socket = await startSocketService()
  service = await startService()
  talk = fakeTalk()
  logged = []
  const withAppToken: typeof fetch = (input, init) => {
    const authorization = new Headers(init?.headers).get('authorization')
    if (!String(input).endsWith('apps.connections.open')) return fetch(input, init)
    return Promise.resolve(
      Response.json(authorization === `Bearer ${appToken}` ? { ok: true, url: socket.url } : { ok: false, error: 'invalid_auth' })
    )
  }
  const options = (token: string) => ({
    mode: { kind: 'socket' as const, botToken, appToken: token },
    apiUrl: service.apiUrl,
    talk,
    workspaceOf: () => 'local',
    room: false,
    now: () => Math.floor(Date.now() / 1000),
    log: arrayLog(logged),
    fetch: withAppToken,
    answerMs: 150
  })
  make = (token) => createSlack(options(token))
  slack = await make(appToken)
})
let make: (token: string) => Promise<Slack>
afterEach(async () => {
  await slack.stop()
  await service.close()
  await socket.close()
})

const envelope = (type: string, payload: Loose, id: string) => ({
  envelope_id: id,
  type,
  payload,
  accepts_response_payload: type !== 'events_api'
})
const ackOf = (id: string) => until(() => socket.acks.find((ack) => ack.envelope_id === id))

describe('Socket Mode', () => {
  it('is ready when the service says hello, and not before', async () => {
    expect(slack.ready()).toBe(false)
    await slack.start()
    await until(() => slack.ready())
    await slack.stop()
    expect(slack.ready()).toBe(false)
  })

  it('answers a command, a press, a form and a mention through the connection', async () => {
    await slack.start()
    socket.send(envelope('slash_commands', command(service, 'air 20'), 'E-command'))
    expect((await ackOf('E-command')).payload).toMatchObject({ response_type: 'in_channel', text: 'you said spray air 20 (0)' })
    const press = JSON.parse(
      interaction({ type: 'block_actions', channel: { id: 'C1' }, response_url: service.hook, actions: [{ action_id: 'say:x', value: 'y' }] }).payload
    )
    socket.send(envelope('interactive', press, 'E-press'))
    await ackOf('E-press')
    await until(() => service.of('hook').length === 1)
    talk.set({ submit: async () => ({ kind: 'errors', errors: { width: 'too wide' } }) })
    const view = { id: 'V1', hash: 'h', type: 'modal', callback_id: 'coupon', private_metadata: '', blocks: [], state: { values: {} } }
    socket.send(envelope('interactive', JSON.parse(interaction({ type: 'view_submission', view }).payload), 'E-form'))
    expect((await ackOf('E-form')).payload).toEqual({ response_action: 'errors', errors: { width: 'too wide' } })
    socket.send(envelope('events_api', event({ text: '<@U0BOT> weld' }), 'E-event'))
    await ackOf('E-event')
    await until(() => service.of('chat.postMessage').length === 1)
  })

  // platform notes C5 3: "bolt-js#2487 (Socket Mode redelivers with the same envelope)".
  it('does nothing twice when an envelope comes again', async () => {
    await slack.start()
    const body = event({ text: '<@U0BOT> weld' })
    for (const id of ['E-1', 'E-2']) {
      socket.send(envelope('events_api', body, id))
      await ackOf(id)
    }
    await until(() => service.of('chat.postMessage').length > 0)
    expect(talk.done()).toBe(1)
    expect(service.of('chat.postMessage')).toHaveLength(1)
  })

  // platform notes C1, Errors: SocketModeReceiver has "no 3 s guard": ours holds here too.
  it('says that it works on it, and fails aloud', async () => {
    await slack.start()
    talk.set({ say: () => new Promise((resolve) => setTimeout(() => resolve(said('late')), 300)) })
    socket.send(envelope('slash_commands', command(service, 'air 20'), 'E-slow'))
    expect((await ackOf('E-slow')).payload).toMatchObject({ text: 'working on it — not logged yet' })
    await until(() => service.of('hook').some(({ args }) => args.text === 'late'))
    talk.set({
      say: async () => {
        throw new Error('bug')
      }
    })
    socket.send(envelope('slash_commands', command(service, 'air 20'), 'E-bug'))
    expect((await ackOf('E-bug')).payload).toMatchObject({ response_type: 'ephemeral', text: expect.stringContaining('abc12345') })
  })

  // platform notes C1, Web client: "Socket Mode sets retryConfig {retries:100} into the SHARED clientOptions".
  it('does not bring its retries to the client that posts', async () => {
    await slack.start()
    service.on('chat.postMessage', { status: 500, raw: 'oops' })
    expect(await slack.chat.post({ workspace: 'local', channel: 'C1', key: 'k', text: 'x', blocks: [], files: [] })).toEqual({ kind: 'unknown' })
    expect(service.of('chat.postMessage')).toHaveLength(1)
  })

  // platform notes C1, Web client: a refresh leaves some 5 s without a connection.
  it('is not ready while the connection is away', async () => {
    await slack.start()
    await until(() => slack.ready())
    socket.drop()
    await until(() => !slack.ready())
  })

  it('says in a sentence that the app token is not taken', async () => {
    const other = await make('xapp-another')
    await expect(other.start()).rejects.toThrow('the chat service refused the app token: invalid_auth')
  })
})
