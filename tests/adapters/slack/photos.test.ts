import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { ofService } from '../../../src/adapters/slack/photos.js'
import { photoMaxBytes } from '../../../src/core/photo.js'
import { type Bot, botToken, interaction, said, startBot, until } from '../../support/slack.js'

let bot: Bot
beforeEach(async () => {
  bot = await startBot({ answerMs: 150 })
  bot.talk.set({ say: async (_delivery, text) => ({ ...said(text), photos: [{ site: 'north', subject: 'void:1', file: 'F1' }] }) })
})
afterEach(() => bot.close())

const fileAt = (url: string, more: object = {}) =>
  bot.service.on('files.info', { body: { ok: true, file: { id: 'F1', url_private: url, size: 9, ...more } } })
const own = () => bot.service.apiUrl.replace('/api/', '/files/F1')
const bytesOf = (answer: { readonly status: number; readonly headers?: Record<string, string> }) => {
  fileAt(own())
  bot.service.on('/files/F1', answer)
}
const command = { command: '/probe', text: 'course 4 lap 3 m 40 mm', user_id: 'U1', channel_id: 'C1', team_id: 'T0', trigger_id: '9.9' }
const brought = async () => {
  await bot.deliver({ ...command })
  const heard = await until(() => bot.talk.heard.find(({ what }) => what === 'photo'))
  return heard.args[1]
}

describe('photos at the chat service', () => {
  it('are fetched with the token once the reply has left, and what became of them is said in the channel', async () => {
    fileAt(own())
    bot.service.on('/files/F1', { raw: 'bytes of a photo', headers: { 'content-type': 'image/jpeg' } })
    const reply = await bot.deliver({ ...command })
    expect(JSON.parse(reply.text)).toMatchObject({ text: 'probe course 4 lap 3 m 40 mm' })
    const heard = await until(() => bot.talk.heard.find(({ what }) => what === 'photo'))
    expect(heard.args).toMatchObject([{ file: 'F1' }, { kind: 'bytes', base64: Buffer.from('bytes of a photo').toString('base64') }])
    expect(bot.service.of('/files/F1')[0]?.authorization).toBe(`Bearer ${botToken}`)
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ channel: 'C1', text: 'photo F1 bytes' })
  })

  it.each([
    ['a host that is not the service’s', () => fileAt('https://evil.example/F1'), 'not-found'],
    ['a file that is gone', () => bot.service.on('files.info', { body: { ok: false, error: 'file_not_found' } }), 'not-found'],
    ['one larger than may be', () => fileAt(own(), { size: photoMaxBytes + 1 }), 'too-large'],
    ['a service that fails', () => bot.service.on('files.info', { status: 500 }), 'away'],
    ['a missing scope', () => bot.service.on('files.info', { body: { ok: false, error: 'missing_scope' } }), 'away'],
    ['bytes that do not come', () => bytesOf({ status: 503 }), 'away'],
    ['a sign-in page', () => bytesOf({ status: 302, headers: { location: '/login' } }), 'not-found']
  ])('names %s', async (_name, set, why) => {
    set()
    expect(await brought()).toEqual({ kind: 'failed', why })
    expect(bot.service.calls.filter(({ method }) => method.includes('login'))).toEqual([])
  })

  it('ends a download that is larger than was said', async () => {
    fileAt(own())
    bot.service.on('/files/F1', { raw: 'x'.repeat(photoMaxBytes + 1) })
    expect(await brought()).toEqual({ kind: 'failed', why: 'too-large' })
  })

  it('are not fetched twice for a delivery that comes twice', async () => {
    fileAt(own())
    bot.service.on('/files/F1', { raw: 'bytes' })
    await bot.deliver({ ...command })
    await bot.deliver({ ...command })
    await until(() => bot.service.of('chat.postMessage').length > 0)
    expect(bot.service.of('files.info')).toHaveLength(1)
  })

  it('come with a form too', async () => {
    fileAt(own())
    bot.service.on('/files/F1', { raw: 'bytes' })
    bot.talk.set({
      submit: async () => ({
        kind: 'message',
        channel: 'C7',
        message: { ...said('void 1'), photos: [{ site: 'north', subject: 'void:1', file: 'F1' }] }
      })
    })
    const values = { photos: { value: { type: 'file_input', files: [{ id: 'F1' }] } } }
    await bot.deliver(
      interaction({ type: 'view_submission', view: { id: 'V1', hash: 'h', callback_id: 'void', private_metadata: '{}', state: { values } } })
    )
    expect((await until(() => bot.service.of('chat.postMessage')[1])).args).toMatchObject({ channel: 'C7', text: 'photo F1 bytes' })
    expect(bot.talk.heard[0]?.args[2]).toEqual({ photos: ['F1'] })
  })
})

describe('the token', () => {
  it.each([
    ['https://files.slack.com/files-pri/T0-F1/x.jpg', true],
    ['https://slack.com/x', true],
    ['http://files.slack.com/x', false],
    ['https://files.slack.com:8443/x', false],
    ['https://slack.com.evil.example/x', false],
    ['https://notslack.com/x', false],
    ['https://user@files.slack.com/x', false],
    ['http://127.0.0.1:3000/room/files/F1', true],
    ['http://127.0.0.1:3001/room/files/F1', false],
    ['file:///etc/passwd', false],
    ['nonsense', false]
  ])('goes to %s: %s', (url, goes) => {
    expect(ofService(url, 'http://127.0.0.1:3000/api/')).toBe(goes)
  })
})
