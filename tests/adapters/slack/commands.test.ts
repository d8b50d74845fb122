import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Bot, command, said, startBot, until } from '../../support/slack.js'

let bot: Bot
beforeAll(async () => {
  bot = await startBot({ answerMs: 150 })
})
afterAll(() => bot.close())

describe('slash commands', () => {
  it.each([
    ['/spray', 'air 20', 'spray air 20'],
    ['/spray', '', 'spray'],
    ['/Spray', ' air 20 ', 'spray air 20'],
    ['/seamhand', 'weld robot 41 mm film', 'weld robot 41 mm film'],
    ['/seamhand', '', 'help'],
    ['/novelty', 'x', 'novelty x'],
    ['/site', 'channel &lt;#C7|north&gt;', 'site channel <#C7|north>'],
    ['/site', 'channel <#C7|north>', 'site channel C7'],
    ['/air', 'wind &lt; 18 &amp; more', 'air wind < 18 & more']
  ])('%s %j is heard as %j', async (name, text, heard) => {
    await bot.deliver(command(bot.service, text, { command: name }))
    expect(bot.talk.heard.at(-1)?.args).toEqual([heard])
  })

  it('hands over who said it where, with a claim from the trigger', async () => {
    await bot.deliver(command(bot.service, 'air 20', { trigger_id: '77.1' }))
    const { delivery } = bot.talk.heard.at(-1)!
    expect(delivery).toMatchObject({ workspace: 'local', user: 'U1', channel: 'C1', via: 'slack', claim: 'command:77.1', lang: null, units: null })
  })

  it('answers in the reply itself: to all, or to the asker alone', async () => {
    bot.talk.set({ say: async (_delivery, text) => said(text, text === 'help' ? 'asker' : 'channel') })
    const open = await bot.deliver(command(bot.service, 'air 20'))
    expect(open.json).toEqual({
      response_type: 'in_channel',
      text: 'spray air 20',
      blocks: [{ type: 'section', text: { type: 'plain_text', text: 'spray air 20' } }]
    })
    const own = await bot.deliver(command(bot.service, '', { command: '/seamhand' }))
    expect(own.json?.response_type).toBe('ephemeral')
    expect(bot.service.calls.map(({ method }) => method)).toEqual(['auth.test'])
  })

  it('says that it works on it when that takes long, and brings the answer after, once', async () => {
    let finish = () => {}
    bot.talk.set({
      say: () =>
        new Promise((resolve) => {
          finish = () => resolve(said('done at last'))
        })
    })
    const body = command(bot.service, 'air 20')
    const [first, second] = await Promise.all([bot.deliver(body), bot.deliver(body)])
    expect(first.json).toMatchObject({ response_type: 'ephemeral', text: 'working on it — not logged yet' })
    expect(second.json).toEqual(first.json)
    expect(bot.service.of('hook')).toHaveLength(0)
    finish()
    await until(() => bot.service.of('hook').length > 0)
    await bot.slack.stop()
    expect(bot.service.of('hook').map(({ args }) => args)).toEqual([
      {
        response_type: 'in_channel',
        text: 'done at last',
        blocks: [{ type: 'section', text: { type: 'plain_text', text: 'done at last' } }],
        replace_original: false
      }
    ])
  })

  it('posts the late answer when the reply address is used up', async () => {
    bot.service.on('hook', { status: 404, body: {} })
    bot.talk.set({ say: () => new Promise((resolve) => setTimeout(() => resolve(said('later')), 250)) })
    await bot.deliver(command(bot.service, 'air 20'))
    const call = await until(() => bot.service.of('chat.postMessage')[0])
    expect(call.args).toMatchObject({ channel: 'C1', text: 'later', unfurl_links: 'false' })
  })
})

describe('the page of the local room', () => {
  const chosen = { room_lang: 'fr', room_units: 'us', room_at: '2026-05-04T06:00:00Z' }

  it('may choose language, units and time in the room', async () => {
    const room = await startBot({ room: true })
    await room.deliver(command(room.service, '', chosen))
    expect(room.talk.heard.at(-1)?.delivery).toMatchObject({ via: 'room', lang: 'fr', units: 'us', at: 1777874400 })
    await room.deliver(command(room.service, '', { room_lang: 'xx', room_units: 'old', room_at: 'noon' }))
    expect(room.talk.heard.at(-1)?.delivery).toMatchObject({ lang: null, units: null })
    await room.close()
  })

  it('may not in a real workspace', async () => {
    const real = await startBot({ now: () => Math.floor(Date.now() / 1000) })
    await real.deliver(command(real.service, '', chosen))
    expect(real.talk.heard.at(-1)?.delivery).toMatchObject({ via: 'slack', lang: null, units: null })
    expect(real.talk.heard.at(-1)?.delivery.at).not.toBe(1777874400)
    await real.close()
  })
})
