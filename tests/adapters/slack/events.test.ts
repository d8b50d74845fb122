import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Bot, event, said, startBot, until } from '../../support/slack.js'

let bot: Bot
beforeEach(async () => {
  bot = await startBot()
})
afterEach(() => bot.close())

const json = { as: 'json' as const }
const posts = () => bot.service.of('chat.postMessage').map(({ args }) => args)

describe('mentions and direct messages', () => {
  it('hears the words after a mention and answers in the channel', async () => {
    await bot.deliver(event({ text: '<@U0BOT> air 20 deck 18' }, { event_id: 'Ev7' }), json)
    await until(() => posts().length > 0)
    expect(bot.talk.heard[0]).toMatchObject({ args: ['air 20 deck 18'], delivery: { user: 'U1', channel: 'C1', claim: 'event:Ev7' } })
    expect(posts()[0]).toMatchObject({ channel: 'C1', unfurl_links: 'false' })
    expect(posts()[0]).not.toHaveProperty('thread_ts')
  })

  it('answers in the thread it came from', async () => {
    await bot.deliver(event({ text: 'well <@U0BOT|seamhand>  spray', thread_ts: '9.9' }), json)
    await until(() => posts().length > 0)
    expect(bot.talk.heard[0]?.args).toEqual(['well spray'])
    expect(posts()[0]).toMatchObject({ thread_ts: '9.9' })
  })

  it('takes a direct message, and hides nothing where two are alone', async () => {
    bot.talk.set({ say: async () => said('help text', 'asker') })
    await bot.deliver(event({ type: 'message', channel_type: 'im', channel: 'D1', text: '/spray' }), json)
    await until(() => posts().length > 0)
    expect(bot.talk.heard[0]?.args).toEqual(['spray'])
    expect(bot.service.of('chat.postEphemeral')).toHaveLength(0)
  })

  it('tells mistakes to the asker alone in a channel', async () => {
    bot.talk.set({ say: async () => said('not understood', 'asker') })
    await bot.deliver(event({ text: '<@U0BOT> hm' }), json)
    const call = await until(() => bot.service.of('chat.postEphemeral')[0])
    expect(call.args).toMatchObject({ channel: 'C1', user: 'U1', text: 'not understood' })
  })

  it('gives help for a mention without words', async () => {
    await bot.deliver(event({ text: '<@U0BOT>' }), json)
    await until(() => bot.talk.heard.length > 0)
    expect(bot.talk.heard[0]?.args).toEqual(['help'])
  })

  // platform notes C1, Listeners: "app.message() without filter also gets message_changed, message_deleted, file_share, thread_broadcast and other bots".
  it.each([
    ['its own', { user: 'U0BOT', text: 'x' }],
    ['its own, as a bot', { subtype: 'bot_message', bot_id: 'B0BOT', text: 'x' }],
    ["another bot's", { bot_id: 'B9', text: 'x' }],
    ['the echo of its own edit', { subtype: 'message_changed', user: undefined, message: { user: 'U0BOT', text: 'x' } }],
    ['a deletion', { subtype: 'message_deleted', user: undefined }],
    ['one in a channel without a mention', { channel_type: 'channel', text: 'x' }],
    ['an edited one', { edited: { user: 'U1', ts: '2.2' }, text: 'x' }]
  ])('does not answer %s', async (_name, part) => {
    await bot.deliver(event({ type: 'message', channel_type: 'im', channel: 'D1', ...part }), json)
    await bot.deliver(event({ type: 'message', channel_type: 'im', channel: 'D1', text: 'last' }), json)
    await until(() => posts().length > 0)
    expect(bot.talk.heard.map(({ args }) => args)).toEqual([['last']])
    expect(posts()).toHaveLength(1)
  })

  it('takes a photo with words', async () => {
    await bot.deliver(event({ type: 'message', channel_type: 'im', subtype: 'file_share', text: 'probe list' }), json)
    await until(() => posts().length > 0)
    expect(bot.talk.heard[0]?.args).toEqual(['probe list'])
  })

  // platform notes C3, Interaction: "Events: retried up to 3 times … X-Slack-Retry-Num"; C5 3: persist event_id, do not just drop on the number.
  it('answers a delivery that comes again once, and one whose first never came though it is a retry', async () => {
    const again = { ...json, headers: { 'x-slack-retry-num': '1', 'x-slack-retry-reason': 'http_timeout' } }
    const body = event({ text: '<@U0BOT> spray' })
    await bot.deliver(body, json)
    await bot.deliver(body, again)
    await bot.deliver(event({ text: '<@U0BOT> weld' }), again)
    await until(() => posts().length === 2)
    await bot.slack.stop()
    expect(bot.talk.done()).toBe(2)
    expect(posts()).toHaveLength(2)
  })

  it('waits out a short rate limit, since that is a clear no, and posts once', async () => {
    let limited = true
    bot.service.on('chat.postMessage', () => {
      const now = limited
      limited = false
      return now ? { status: 429, headers: { 'retry-after': '1' } } : { body: { ok: true, ts: '1.2' } }
    })
    await bot.deliver(event({ text: '<@U0BOT> spray' }), json)
    await until(() => posts().length === 2)
    await bot.slack.stop()
    expect(posts()).toHaveLength(2)
  })

  // platform notes C1, Web client: "A retry after a lost answer posts twice (RAN dropafter, http500)".
  it.each([
    ['an error of the server', { status: 500, raw: 'oops' }],
    ['a lost answer', { raw: '{"ok":true,', cut: true }]
  ])('does not post again after %s', async (_name, answer) => {
    bot.service.on('chat.postMessage', answer)
    await bot.deliver(event({ text: '<@U0BOT> spray' }), json)
    await until(() => posts().length > 0)
    await bot.slack.stop()
    expect(posts()).toHaveLength(1)
  })

  it('tells the person directly when it is not in the channel', async () => {
    bot.service.on('chat.postMessage', (call) => ({
      body: call.args.channel === 'C1' ? { ok: false, error: 'not_in_channel' } : { ok: true, ts: '1.2' }
    }))
    await bot.deliver(event({ text: '<@U0BOT> spray' }), json)
    await until(() => posts().length === 2)
    expect(posts()[1]).toMatchObject({ channel: 'U1' })
  })
})

describe('home and the end of an installation', () => {
  it('publishes the whole home when it is opened, and again after a change', async () => {
    await bot.deliver(event({ type: 'app_home_opened', tab: 'messages', channel: 'D1' }), json)
    await bot.deliver(event({ type: 'app_home_opened', tab: 'home', channel: 'D1' }), json)
    const first = await until(() => bot.service.of('views.publish')[0])
    expect(first.args).toMatchObject({ user_id: 'U1', view: { type: 'home' } })
    expect(bot.talk.heard.find(({ what }) => what === 'home')?.delivery.channel).toBeNull()
    await bot.deliver(event({ text: '<@U0BOT> spray' }), json)
    await until(() => bot.service.of('views.publish').length === 2)
    await bot.deliver(event({ user: 'U2', text: '<@U0BOT> spray' }), json)
    await until(() => posts().length === 2)
    await bot.slack.stop()
    expect(bot.service.of('views.publish')).toHaveLength(2)
  })

  it('survives a home that cannot be made', async () => {
    bot.talk.set({
      home: async () => {
        throw new Error('bug')
      }
    })
    await bot.deliver(event({ type: 'app_home_opened', tab: 'home' }), json)
    await until(() => bot.logged.some(({ message }) => message === 'home not published'))
  })

  // platform notes C1, OAuth: "Handle app_uninstalled and tokens_revoked yourself".
  it.each(['app_uninstalled', 'tokens_revoked'])('is not ready any more after %s', async (type) => {
    expect(bot.slack.ready()).toBe(true)
    await bot.deliver(event({ type, user: undefined, channel: undefined }), json)
    await until(() => !bot.slack.ready())
    expect(bot.logged.at(-1)).toMatchObject({ level: 'error', fields: { type } })
  })
})
