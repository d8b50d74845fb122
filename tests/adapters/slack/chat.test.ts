import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { createChat, fateOf } from '../../../src/adapters/slack/chat.js'
import { createClients } from '../../../src/adapters/slack/clients.js'
import type { Chat } from '../../../src/bot/chat-ports.js'
import { arrayLog, botToken, type Logged, type Said, type Service, startService } from '../../support/slack.js'

let service: Service
let chat: Chat
let logged: Logged[]
beforeEach(async () => {
  service = await startService()
  logged = []
  const clients = createClients(botToken, { apiUrl: service.apiUrl, log: arrayLog(logged), fetch })
  chat = createChat(async () => clients.posts, arrayLog(logged))
})
afterEach(() => service.close())

const key = 'local/north/morning/2026-05-04'
const message = { workspace: 'local', channel: 'C1', key, text: 'Morning', blocks: [{ type: 'divider' as const }], files: [] }

describe('posting', () => {
  it('sends text, blocks and the slot key as metadata, without previews of links', async () => {
    expect(await chat.post(message)).toEqual({ kind: 'sent', ts: '1700000000.000100' })
    expect(service.calls[0]).toMatchObject({
      method: 'chat.postMessage',
      authorization: `Bearer ${botToken}`,
      args: {
        channel: 'C1',
        text: 'Morning',
        blocks: [{ type: 'divider' }],
        metadata: { event_type: 'seamhand_post', event_payload: { key } },
        unfurl_links: 'false',
        unfurl_media: 'false'
      }
    })
  })

  const outcomes: readonly (readonly [string, Said, object])[] = [
    ['a limit', { status: 429, headers: { 'retry-after': '12' } }, { kind: 'later', afterS: 12 }],
    ['a limit of no time', { status: 429, headers: { 'retry-after': '0' } }, { kind: 'later', afterS: 1 }],
    ['a limit of days', { status: 429, headers: { 'retry-after': '999999' } }, { kind: 'later', afterS: 3600 }],
    ['a limit without a time', { status: 429 }, { kind: 'later', afterS: 30 }],
    ['a limit in words', { body: { ok: false, error: 'ratelimited' } }, { kind: 'later', afterS: 30 }],
    ['500', { status: 500, raw: 'oops' }, { kind: 'unknown' }],
    ['503 with JSON', { status: 503, body: { ok: false, error: 'channel_not_found' } }, { kind: 'unknown' }],
    ['a page of a proxy', { status: 200, raw: '<html>wait</html>' }, { kind: 'unknown' }],
    ['half JSON', { raw: '{"ok":true,"ts":"17' }, { kind: 'unknown' }],
    ['half JSON that looks like a no', { raw: '{"ok":false,"error":"channel_not' }, { kind: 'unknown' }],
    ['nothing in the body', { raw: '' }, { kind: 'unknown' }],
    ['JSON that is no answer', { body: {} }, { kind: 'unknown' }],
    ['null', { raw: 'null' }, { kind: 'unknown' }],
    ['a cut connection', { raw: '{"ok":true', cut: true }, { kind: 'unknown' }],
    ['yes without a place', { body: { ok: true } }, { kind: 'unknown' }],
    ['an error inside the service', { body: { ok: false, error: 'internal_error' } }, { kind: 'unknown' }],
    ['fatal_error', { body: { ok: false, error: 'fatal_error' } }, { kind: 'unknown' }]
  ]
  it.each(outcomes)('%s', async (_name, answer, outcome) => {
    service.on('chat.postMessage', answer)
    expect(await chat.post(message)).toEqual(outcome)
    expect(service.calls).toHaveLength(1)
  })

  it.each([
    'channel_not_found',
    'not_in_channel',
    'is_archived',
    'invalid_auth',
    'account_inactive',
    'token_revoked',
    'invalid_blocks',
    'msg_too_long',
    'msg_blocks_too_long',
    'missing_scope',
    'restricted_action'
  ])('is refused for good by %s', async (error) => {
    service.on('chat.postMessage', { body: { ok: false, error } })
    expect(await chat.post(message)).toEqual({ kind: 'refused', code: error })
  })

  it('is of unknown fate when there is no service at all', async () => {
    await service.close()
    expect(await chat.post(message)).toEqual({ kind: 'unknown' })
    service = await startService()
  })

  it('is of unknown fate when no answer comes', () => {
    expect(fateOf(new DOMException('too long', 'TimeoutError'))).toEqual({ kind: 'unknown' })
  })

  // platform notes C1, Web client: "invalid_blocks details: error.data.response_metadata.messages with json-pointer".
  it('logs why blocks were refused, and neither token nor text', async () => {
    service.on('chat.postMessage', {
      body: { ok: false, error: 'invalid_blocks', needed: 'x:y', response_metadata: { messages: ['[ERROR] no [json-pointer:/blocks/0]'] } }
    })
    await chat.post({ ...message, text: 'secret words' })
    const line = logged.find(({ message: text }) => text === 'post not sent')
    expect(line?.fields).toMatchObject({
      key,
      fate: 'refused',
      code: 'invalid_blocks',
      needed: 'x:y',
      messages: ['[ERROR] no [json-pointer:/blocks/0]']
    })
    expect(JSON.stringify(logged)).not.toMatch(/secret words|xoxb/)
  })
})

describe('changing a message', () => {
  it('by its id, with text and blocks; what the service says of it is told as of a post', async () => {
    service.on('chat.update', { body: { ok: true, ts: '17.1', channel: 'C1' } })
    expect(await chat.edit(message, '17.1')).toEqual({ kind: 'sent', ts: '17.1' })
    expect(service.calls[0]).toMatchObject({
      method: 'chat.update',
      args: { channel: 'C1', ts: '17.1', text: 'Morning', blocks: [{ type: 'divider' }] }
    })
    service.on('chat.update', { body: { ok: false, error: 'message_not_found' } })
    expect(await chat.edit(message, '17.1')).toEqual({ kind: 'refused', code: 'message_not_found' })
    service.on('chat.update', { status: 500, raw: 'oops' })
    expect(await chat.edit(message, '17.1')).toEqual({ kind: 'unknown' })
  })
})

describe('a message to a person', () => {
  it('goes into the conversation with them, where it can be looked up', async () => {
    service.on('conversations.open', { body: { ok: true, channel: { id: 'D7' } } })
    expect((await chat.post({ ...message, channel: 'U7' })).kind).toBe('sent')
    expect(await chat.find('local', 'U7', key, 1777874400)).toEqual({ kind: 'absent' })
    expect(service.calls.map(({ method, args }) => [method, args.channel ?? args.users])).toEqual([
      ['conversations.open', 'U7'],
      ['chat.postMessage', 'D7'],
      ['conversations.open', 'U7'],
      ['conversations.history', 'D7']
    ])
  })

  it('nothing was posted where the conversation cannot be opened: tried again later, or refused', async () => {
    service.on('conversations.open', { status: 500, raw: 'oops' })
    expect(await chat.post({ ...message, channel: 'U7' })).toEqual({ kind: 'later', afterS: 30 })
    service.on('conversations.open', { body: { ok: false, error: 'user_not_found' } })
    expect(await chat.post({ ...message, channel: 'U7' })).toEqual({ kind: 'refused', code: 'user_not_found' })
    expect(await chat.find('local', 'U7', key, 1777874400)).toEqual({ kind: 'unreadable' })
    expect(service.of('chat.postMessage')).toEqual([])
  })
})

describe('looking a post up', () => {
  const post = (ts: string, eventType: string, slot: string) => ({ ts, text: 'x', metadata: { event_type: eventType, event_payload: { key: slot } } })

  it('finds it by its slot key, not by another kind of metadata', async () => {
    service.on('conversations.history', {
      body: {
        ok: true,
        messages: [{ ts: '1.1', text: key }, post('2.2', 'other', key), post('3.3', 'seamhand_post', `${key}9`), post('4.4', 'seamhand_post', key)]
      }
    })
    expect(await chat.find('local', 'C1', key, 1777874400)).toEqual({ kind: 'found', ts: '4.4' })
    expect(service.calls[0]?.args).toMatchObject({ channel: 'C1', include_all_metadata: 'true', oldest: '1777874100' })
  })

  it('goes through the pages, and says absent only at their end', async () => {
    service.on('conversations.history', (call) => ({
      body:
        call.args.cursor === 'two'
          ? { ok: true, messages: [post('9.9', 'seamhand_post', key)] }
          : { ok: true, messages: [], response_metadata: { next_cursor: 'two' } }
    }))
    expect(await chat.find('local', 'C1', key, 0)).toEqual({ kind: 'found', ts: '9.9' })
    expect(await chat.find('local', 'C1', 'another', 0)).toEqual({ kind: 'absent' })
  })

  it('does not look for ever', async () => {
    service.on('conversations.history', { body: { ok: true, messages: [], response_metadata: { next_cursor: 'more' } } })
    expect(await chat.find('local', 'C1', key, 0)).toEqual({ kind: 'unreadable' })
    expect(service.calls).toHaveLength(10)
  })

  const closed: readonly (readonly [string, Said])[] = [
    ['missing_scope', { body: { ok: false, error: 'missing_scope' } }],
    ['not_in_channel', { body: { ok: false, error: 'not_in_channel' } }],
    ['channel_not_found', { body: { ok: false, error: 'channel_not_found' } }]
  ]
  it.each(closed)('is unreadable with %s', async (_name, answer) => {
    service.on('conversations.history', answer)
    expect(await chat.find('local', 'C1', key, 0)).toEqual({ kind: 'unreadable' })
  })

  const away: readonly (readonly [string, Said, number])[] = [
    ['500', { status: 500, raw: 'x' }, 60],
    ['429', { status: 429, headers: { 'retry-after': '9' } }, 9],
    ['half', { raw: '{"ok":true,"messages":[' }, 60],
    ['a cut connection', { raw: '{"ok":true', cut: true }, 60],
    ['no list', { body: { ok: true } }, 60],
    ['an error inside the service', { body: { ok: false, error: 'internal_error' } }, 60]
  ]
  it.each(away)('says nothing of the history with %s: it is to be looked up later', async (_name, answer, afterS) => {
    service.on('conversations.history', answer)
    expect(await chat.find('local', 'C1', key, 0)).toEqual({ kind: 'later', afterS })
  })
})

describe('posts with a picture', () => {
  const picture = { kind: 'day', name: 'demo.png', alt: 'A day', mime: 'image/png', sha256: '0'.repeat(64), bytes: new Uint8Array([137, 80, 78, 71]) }
  const pictured = { ...message, files: [picture] }
  const mime = (mimetype: string) => ({ body: { ok: true, file: { id: 'F1', mimetype } } })
  beforeEach(() => {
    service.on('files.getUploadURLExternal', () => ({ body: { ok: true, upload_url: `${service.apiUrl}upload`, file_id: 'F1' } }))
    service.on('upload', { body: { ok: true } })
    service.on('files.completeUploadExternal', { body: { ok: true, files: [{ id: 'F1', title: 'demo.png' }] } })
    service.on('files.info', mime('image/png'))
  })
  const methods = () => service.calls.map(({ method }) => method)

  it('goes up first, shared with nobody, and the message shows it', async () => {
    expect(await chat.post(pictured)).toMatchObject({ kind: 'sent' })
    expect(methods()).toEqual(['files.getUploadURLExternal', 'upload', 'files.completeUploadExternal', 'files.info', 'chat.postMessage'])
    expect(service.calls[0]?.args).toMatchObject({ filename: 'demo.png', alt_text: 'A day' })
    expect(service.calls[2]?.args).not.toHaveProperty('channel_id')
    expect(service.calls.at(-1)?.args.blocks).toEqual([{ type: 'divider' }, { type: 'image', slack_file: { id: 'F1' }, alt_text: 'A day' }])
  })

  it('is waited for until the service has looked at it', async () => {
    const answers = [mime(''), mime('image/png')]
    service.on('files.info', () => answers.shift() ?? mime('image/png'))
    await chat.post(pictured)
    expect(service.of('files.info')).toHaveLength(2)
  })

  it.each([
    ['an upload that fails', 'files.getUploadURLExternal', { status: 500, raw: 'oops' }],
    ['a limit', 'files.getUploadURLExternal', { status: 429, headers: { 'retry-after': '9' } }],
    ['bytes that are not taken', 'upload', { status: 500, raw: 'oops' }],
    ['half an upload', 'files.completeUploadExternal', { body: { ok: false, error: 'file_not_found' } }]
  ] as const)('%s costs the picture, not the words', async (_name, method, answer) => {
    service.on(method, answer)
    expect(await chat.post(pictured)).toMatchObject({ kind: 'sent' })
    expect(service.of('chat.postMessage')[0]?.args.blocks).toEqual([{ type: 'divider' }])
    expect(logged.map(({ message: said }) => said)).toContain('picture not uploaded')
  })

  it('a clear no to the picture: the words go alone, once', async () => {
    service.on('chat.postMessage', ({ args }) =>
      args.blocks.length > 1 ? { body: { ok: false, error: 'invalid_blocks' } } : { body: { ok: true, ts: '2.0' } }
    )
    expect(await chat.post(pictured)).toEqual({ kind: 'sent', ts: '2.0' })
    expect(service.of('chat.postMessage')).toHaveLength(2)
  })

  it('a clear no to the picture costs no document: it follows all the same', async () => {
    const paper = { ...picture, kind: 'record', name: 'demo.pdf', mime: 'application/pdf' }
    service.on('chat.postMessage', ({ args }) =>
      args.blocks.length > 1 ? { body: { ok: false, error: 'invalid_blocks' } } : { body: { ok: true, ts: '2.0' } }
    )
    expect(await chat.post({ ...message, files: [picture, paper] })).toEqual({ kind: 'sent', ts: '2.0' })
    expect(service.of('files.getUploadURLExternal').map(({ args }) => args.filename)).toEqual(['demo.png', 'demo.pdf'])
    expect(service.of('files.completeUploadExternal').at(-1)?.args).toMatchObject({ channel_id: 'C1', thread_ts: '2.0' })
  })

  it('a document follows in the thread of its message, and one that fails costs nothing else', async () => {
    const paper = { ...picture, kind: 'record', name: 'demo.pdf', mime: 'application/pdf' }
    expect(await chat.post({ ...message, files: [paper] })).toMatchObject({ kind: 'sent' })
    expect(methods()[0]).toBe('chat.postMessage')
    expect(service.of('files.completeUploadExternal')[0]?.args).toMatchObject({ channel_id: 'C1', thread_ts: '1700000000.000100' })
    service.on('files.getUploadURLExternal', { status: 500, raw: 'oops' })
    expect(await chat.post({ ...message, files: [paper] })).toMatchObject({ kind: 'sent' })
    expect(logged.map(({ message: said }) => said)).toContain('file not shared')
  })

  it('of unknown fate is never sent again here, picture or not', async () => {
    service.on('chat.postMessage', { status: 500, raw: 'oops' })
    expect(await chat.post(pictured)).toEqual({ kind: 'unknown' })
    expect(service.of('chat.postMessage')).toHaveLength(1)
  })
})
