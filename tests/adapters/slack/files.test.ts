import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Bot, command, event, said, startBot, until } from '../../support/slack.js'

let bot: Bot
beforeEach(async () => {
  bot = await startBot()
  const { service } = bot
  service.on('files.getUploadURLExternal', () => ({ body: { ok: true, upload_url: `${service.apiUrl}upload`, file_id: 'F1' } }))
  service.on('upload', { body: { ok: true } })
  service.on('files.completeUploadExternal', { body: { ok: true, files: [{ id: 'F1', title: 'demo.png' }] } })
  bot.talk.set({ say: async () => ({ ...said('GO'), files: [picture] }) })
})
afterEach(() => bot.close())

const bytes = new Uint8Array([137, 80, 78, 71, 13, 10, 26, 10])
const picture = { kind: 'day', name: 'demo.png', alt: 'A day', mime: 'image/png', sha256: '0'.repeat(64), bytes }
const done = () => bot.service.of('files.completeUploadExternal')

describe('files of an answer', () => {
  it('follow the reply of a command into its channel', async () => {
    expect((await bot.deliver(command(bot.service, '', { command: '/day' }))).json?.text).toBe('GO')
    await until(() => done().length > 0)
    expect(done()[0]?.args).toMatchObject({ channel_id: 'C1' })
    expect(bot.service.of('files.getUploadURLExternal')[0]?.args).toMatchObject({
      filename: 'demo.png',
      length: String(bytes.length),
      alt_text: 'A day'
    })
    expect(bot.service.of('chat.postMessage')).toEqual([])
  })

  it('stay in the thread of a mention', async () => {
    await bot.deliver(event({ text: '<@U0BOT> day', thread_ts: '1.5' }), { as: 'json' })
    await until(() => done().length > 0)
    expect(done()[0]?.args).toMatchObject({ channel_id: 'C1', thread_ts: '1.5' })
  })

  it('go to the person alone, with the answer, where the bot is no member', async () => {
    bot.service.on('files.completeUploadExternal', ({ args }) =>
      args.channel_id === 'C1' ? { body: { ok: false, error: 'not_in_channel' } } : { body: { ok: true, files: [{ id: 'F1', title: 'demo.png' }] } }
    )
    bot.service.on('chat.postMessage', { body: { ok: true, ts: '3.0', channel: 'D1' } })
    await bot.deliver(command(bot.service, '', { command: '/day' }))
    await until(() => done().length > 1)
    expect(bot.service.of('chat.postMessage')[0]?.args).toMatchObject({ channel: 'U1', text: 'GO' })
    expect(done()[1]?.args).toMatchObject({ channel_id: 'D1' })
  })

  it('that fail leave the answer as it is, and are logged', async () => {
    bot.service.on('files.getUploadURLExternal', { status: 500, raw: 'oops' })
    expect((await bot.deliver(command(bot.service, '', { command: '/day' }))).json?.text).toBe('GO')
    await until(() => bot.logged.some(({ message }) => message === 'files not shared'))
    expect(bot.service.of('chat.postMessage')).toEqual([])
  })

  it('of a delivery that comes again are not posted again', async () => {
    const body = command(bot.service, '', { command: '/day' })
    await bot.deliver(body)
    await bot.deliver(body)
    await until(() => done().length > 0)
    expect(done()).toHaveLength(1)
  })
})
