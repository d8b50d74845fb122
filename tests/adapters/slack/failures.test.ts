import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Bot, command, event, interaction, startBot, until } from '../../support/slack.js'

let bot: Bot
const broken = async (): Promise<never> => {
  throw new Error('a bug in a handler')
}
beforeEach(async () => {
  bot = await startBot()
  bot.talk.set({ say: broken, press: broken, submit: broken })
})
afterEach(() => bot.close())

// platform notes C1, Errors: "A custom app.error that swallows an error thrown before ack turns an immediate 500 into a 3 s wait and 404"; C5 1.
describe('errors before the acknowledgement', () => {
  it('answers a command at once, to the asker alone, with the reference id', async () => {
    const reply = await bot.deliver(command(bot.service, 'air 20'))
    expect(reply.status).toBe(200)
    expect(reply.json).toMatchObject({ response_type: 'ephemeral', text: 'something went wrong, reference abc12345' })
    const told = bot.talk.heard.find(({ what }) => what === 'failed')
    expect(told?.args[0]).toMatchObject({ message: 'a bug in a handler' })
    expect(told?.delivery).toMatchObject({ user: 'U1', channel: 'C1' })
  })

  it('keeps a form open, with the sentence at its first field', async () => {
    const view = {
      id: 'V1',
      hash: 'h',
      type: 'modal',
      callback_id: 'x',
      private_metadata: '',
      blocks: [
        { type: 'section', block_id: 's' },
        { type: 'input', block_id: 'width' }
      ],
      state: { values: {} }
    }
    const reply = await bot.deliver(interaction({ type: 'view_submission', view }))
    expect(reply.json).toEqual({ response_action: 'errors', errors: { width: 'something went wrong, reference abc12345' } })
  })

  it('answers a press through the reply address', async () => {
    const reply = await bot.deliver(
      interaction({ type: 'block_actions', channel: { id: 'C1' }, response_url: bot.service.hook, actions: [{ action_id: 'x', value: 'y' }] })
    )
    expect([reply.status, reply.text]).toEqual([200, ''])
    expect((await until(() => bot.service.of('hook')[0])).args).toMatchObject({
      response_type: 'ephemeral',
      text: expect.stringContaining('abc12345')
    })
  })

  it('answers a workspace that is not known', async () => {
    const strict = await startBot({
      workspaceOf: (team) => {
        throw new Error(`no workspace ${team}`)
      }
    })
    const reply = await strict.deliver(command(strict.service, 'air 20', { team_id: 'T9' }))
    expect(reply.json).toMatchObject({ response_type: 'ephemeral' })
    expect(strict.talk.heard[0]?.delivery.workspace).toBe('')
    await strict.close()
  })
})

describe('errors after the acknowledgement', () => {
  it('tells the person after an event', async () => {
    await bot.deliver(event({ text: '<@U0BOT> spray' }), { as: 'json' })
    expect((await until(() => bot.service.of('chat.postEphemeral')[0] ?? bot.service.of('chat.postMessage')[0])).args).toMatchObject({
      text: expect.stringContaining('abc12345')
    })
  })

  it('tells the person after a command that took long', async () => {
    const slow = await startBot({ answerMs: 40 })
    slow.talk.set({ say: () => new Promise((_resolve, reject) => setTimeout(() => reject(new Error('late bug')), 120)) })
    expect((await slow.deliver(command(slow.service, 'air 20'))).json).toMatchObject({ text: 'working on it — not logged yet' })
    expect((await until(() => slow.service.of('hook')[0])).args).toMatchObject({
      response_type: 'ephemeral',
      text: expect.stringContaining('abc12345')
    })
    await slow.close()
  })

  it('lives on without a way out', async () => {
    for (const method of ['chat.postEphemeral', 'chat.postMessage']) bot.service.on(method, { body: { ok: false, error: 'account_inactive' } })
    await bot.deliver(event({ text: '<@U0BOT> spray' }), { as: 'json' })
    await until(() => bot.logged.some(({ message }) => message === 'answer not posted'))
    bot.talk.set({ say: async () => ({ text: 'well again', blocks: [], to: 'channel', files: [] }) })
    expect((await bot.deliver(command(bot.service, 'air 20'))).json).toEqual({ response_type: 'in_channel', text: 'well again' })
  })
})

describe('what is logged', () => {
  // platform notes C5 13: "Log error.data.response_metadata.messages; never log bodies, tokens, response_url, trigger_id".
  it('holds codes and hints, never a body, a token, a reply address or a trigger', async () => {
    bot.service.on('hook', { status: 404, body: {} })
    bot.service.on('chat.postEphemeral', {
      body: { ok: false, error: 'invalid_blocks', response_metadata: { messages: ['[ERROR] must be shorter [json-pointer:/blocks/0]'] } }
    })
    await bot.deliver(
      interaction({
        type: 'block_actions',
        trigger_id: 'trigger-7',
        channel: { id: 'C1' },
        response_url: bot.service.hook,
        actions: [{ action_id: 'x', value: 'private words' }]
      })
    )
    await until(() => bot.logged.some(({ message }) => message === 'answer not posted'))
    const lines = JSON.stringify(bot.logged)
    expect(lines).toContain('json-pointer:/blocks/0')
    for (const hidden of ['private words', 'xoxb', '/hook', 'trigger-7']) expect(lines).not.toContain(hidden)
  })
})
