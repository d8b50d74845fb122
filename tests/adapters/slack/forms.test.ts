import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Bot, command, form, interaction, type Loose, said, startBot, until } from '../../support/slack.js'

let bot: Bot
beforeEach(async () => {
  bot = await startBot({ answerMs: 150 })
})
afterEach(() => bot.close())

const pressed = (action: Loose, part: Loose = {}) =>
  interaction({
    type: 'block_actions',
    container: { type: 'message', message_ts: '5.5', channel_id: 'C1' },
    channel: { id: 'C1' },
    response_url: bot.service.hook,
    actions: [action],
    ...part
  })
const sent = (part: Loose = {}, body: Loose = {}) =>
  interaction({
    type: 'view_submission',
    view: {
      id: 'V1',
      hash: 'h1',
      type: 'modal',
      callback_id: 'checklist',
      private_metadata: '{"channel":"C1","site":"north"}',
      blocks: [{ type: 'header' }, { type: 'input', block_id: 'width' }],
      state: { values: {} },
      ...part
    },
    ...body
  })

describe('buttons', () => {
  it.each([
    ['a button', { action_id: 'say:undo', type: 'button', value: 'north|undo 3' }, ['say:undo', 'north|undo 3']],
    ['a choice', { action_id: 'say:site', type: 'static_select', selected_option: { value: 'south' } }, ['say:site', 'south']],
    ['an overflow', { action_id: 'more', type: 'overflow', selected_option: { value: 'x' } }, ['more', 'x']],
    ['ticks', { action_id: 'ticks', type: 'checkboxes', selected_options: [{ value: 'a' }, { value: 'b' }] }, ['ticks', 'a,b']],
    ['a date', { action_id: 'day', type: 'datepicker', selected_date: '2026-05-04' }, ['day', '2026-05-04']],
    ['one without a value', { action_id: 'plain', type: 'button' }, ['plain', '']]
  ])('hands %s on and answers through the reply address', async (_name, action, args) => {
    const reply = await bot.deliver(pressed(action))
    expect([reply.status, reply.text]).toEqual([200, ''])
    expect(bot.talk.heard[0]?.args).toEqual(args)
    const hook = await until(() => bot.service.of('hook')[0])
    expect(hook.args).toMatchObject({ response_type: 'in_channel', replace_original: false, text: `pressed ${args[0]} ${args[1]}` })
    expect(bot.talk.heard[0]?.delivery).toMatchObject({ channel: 'C1', user: 'U1' })
    expect(bot.talk.heard[0]?.delivery.claim).toMatch(/^action:2\./)
  })

  it('answers an action that nobody knows, and does not fail', async () => {
    bot.talk.set({ press: async () => ({ kind: 'message', message: said('that button is gone', 'asker') }) })
    await bot.deliver(pressed({ action_id: 'from another age', value: 'x' }))
    expect((await until(() => bot.service.of('hook')[0])).args).toMatchObject({ response_type: 'ephemeral', text: 'that button is gone' })
  })

  it('opens a form with the trigger, over an open form on top of it', async () => {
    await bot.deliver(pressed({ action_id: 'form:checklist', value: 'north|checklist' }, { trigger_id: '3.3' }))
    expect((await until(() => bot.service.of('views.open')[0])).args).toMatchObject({ trigger_id: '3.3', view: form })
    await bot.deliver(
      pressed(
        { action_id: 'form:void', value: 'x' },
        { view: { type: 'modal', private_metadata: '{"channel":"C4"}' }, channel: undefined, container: { type: 'view' } }
      )
    )
    await until(() => bot.service.of('views.push')[0])
    expect(bot.talk.heard.at(-1)?.delivery.channel).toBe('C4')
  })

  // platform notes C1, Web client: "One 429 pauses the whole client … views.open behind a rate-limited post was sent 3.06 s later, after its trigger died".
  it('opens a form while posts are limited', async () => {
    bot.service.on('chat.postMessage', { status: 429, headers: { 'retry-after': '3' } })
    const post = bot.slack.chat.post({ workspace: 'local', channel: 'C1', key: 'k', text: 'x', blocks: [], files: [] })
    await until(() => bot.service.of('chat.postMessage').length > 0)
    await bot.deliver(pressed({ action_id: 'form:checklist', value: 'x' }))
    expect(await post).toEqual({ kind: 'later', afterS: 3 })
    await until(() => bot.service.of('views.open').length === 1)
  })

  // platform notes C5 2: expired_trigger_id.
  it('says so when the form came too late to open', async () => {
    bot.service.on('views.open', { body: { ok: false, error: 'expired_trigger_id' } })
    await bot.deliver(pressed({ action_id: 'form:checklist', value: 'x' }))
    const hook = await until(() => bot.service.of('hook')[0])
    expect(hook.args).toMatchObject({ response_type: 'ephemeral', text: expect.stringContaining('reference') })
    expect(bot.logged).toContainEqual(
      expect.objectContaining({ message: 'form not opened', fields: { kind: 'refused', code: 'expired_trigger_id', messages: undefined } })
    )
  })

  it('answers a press that comes again once', async () => {
    const body = pressed({ action_id: 'say:undo', value: 'x' })
    for (let i = 0; i < 3; i++) expect((await bot.deliver(body)).status).toBe(200)
    await bot.slack.stop()
    expect(bot.talk.done()).toBe(1)
    expect(bot.service.of('hook')).toHaveLength(1)
  })

  it('acknowledges in time what takes long, says so, and answers after', async () => {
    bot.talk.set({ press: () => new Promise((resolve) => setTimeout(() => resolve({ kind: 'message', message: said('undone') }), 300)) })
    await bot.deliver(pressed({ action_id: 'say:undo', value: 'x' }))
    await until(() => bot.service.of('hook').length === 2)
    expect(bot.service.of('hook').map(({ args }) => args.text)).toEqual(['working on it — not logged yet', 'undone'])
  })

  it('answers a press at home directly to the person', async () => {
    await bot.deliver(
      pressed(
        { action_id: 'say:x', value: 'x' },
        { container: { type: 'view' }, channel: undefined, response_url: undefined, view: { type: 'home', private_metadata: '' } }
      )
    )
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ channel: 'U1' })
  })

  it('hands a message shortcut on with the photos of the message', async () => {
    await bot.deliver(
      interaction({
        type: 'message_action',
        callback_id: 'form:void',
        message: { text: 'look here', files: [{ id: 'F1' }, { id: 'F2' }, { name: 'no id' }] },
        channel: { id: 'C1' },
        response_url: bot.service.hook
      })
    )
    await until(() => bot.service.of('views.open')[0])
    expect(bot.talk.heard[0]).toMatchObject({ what: 'shortcut', args: ['form:void'], delivery: { files: ['F1', 'F2'], channel: 'C1' } })
  })
})

describe('forms', () => {
  it('hands on what the fields hold, by block', async () => {
    const values = {
      width: { a: { type: 'number_input', value: '41' } },
      note: { a: { type: 'plain_text_input', value: null } },
      who: { a: { type: 'static_select', selected_option: { value: 'robot' } } },
      none: { a: { type: 'radio_buttons', selected_option: null } },
      ticks: { a: { type: 'checkboxes', selected_options: [{ value: 'dry' }, { value: 'clean' }] } },
      empty: { a: { type: 'checkboxes', selected_options: [] } },
      day: { a: { type: 'datepicker', selected_date: '2026-05-04' } },
      time: { a: { type: 'timepicker', selected_time: '05:30' } },
      at: { a: { type: 'datetimepicker', selected_date_time: 1777874400 } },
      photo: { a: { type: 'file_input', files: [{ id: 'F1' }] } },
      people: { a: { type: 'multi_users_select', selected_users: ['U1', 'U2'] } }
    }
    const reply = await bot.deliver(sent({ state: { values } }))
    expect(reply.json).toEqual({ response_action: 'clear' })
    const [callback, metadata, got] = bot.talk.heard[0]!.args
    expect([callback, metadata]).toEqual(['checklist', '{"channel":"C1","site":"north"}'])
    expect(got).toEqual({
      width: '41',
      note: null,
      who: 'robot',
      none: null,
      ticks: ['dry', 'clean'],
      empty: [],
      day: '2026-05-04',
      time: '05:30',
      at: '1777874400',
      photo: ['F1'],
      people: ['U1', 'U2']
    })
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ channel: 'C1', text: 'sent checklist' })
  })

  it('keeps the form open with mistakes at their fields, and takes it when they are mended', async () => {
    bot.talk.set({
      submit: async (_delivery, _callback, _metadata, values) =>
        values.width === '41' ? { kind: 'message', message: said('logged'), channel: 'C9' } : { kind: 'errors', errors: { width: 'too wide' } }
    })
    const first = await bot.deliver(sent({ state: { values: { width: { a: { value: '4100' } } } } }))
    expect(first.json).toEqual({ response_action: 'errors', errors: { width: 'too wide' } })
    // The view and its hash are the same as before: only the values differ.
    const second = await bot.deliver(sent({ state: { values: { width: { a: { value: '41' } } } } }))
    expect(second.json).toEqual({ response_action: 'clear' })
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ channel: 'C9', text: 'logged' })
  })

  it('posts the answer of a form that comes again once', async () => {
    const body = sent()
    await bot.deliver(body)
    await bot.deliver(body)
    await bot.slack.stop()
    expect(bot.talk.done()).toBe(1)
    expect(bot.service.of('chat.postMessage')).toHaveLength(1)
    expect(bot.talk.heard[0]?.delivery.claim).toMatch(/^view:V1:h1:[0-9a-f]{16}$/)
  })

  it('closes a form that takes long, says so, and says what was wrong with it after', async () => {
    bot.talk.set({
      submit: () =>
        new Promise((resolve) => setTimeout(() => resolve({ kind: 'errors', errors: { width: 'too wide' }, words: 'weld <robot> 900' }), 300))
    })
    expect((await bot.deliver(sent())).json).toEqual({ response_action: 'clear' })
    await until(() => bot.service.of('chat.postEphemeral').length === 2)
    expect(bot.service.of('chat.postEphemeral').map(({ args }) => args.text)).toEqual([
      'working on it — not logged yet',
      'too wide\nweld &lt;robot&gt; 900'
    ])
  })

  it('says long words again cut at a character, never within an entity', async () => {
    const words = `${'x'.repeat(1497)}<<<<<`
    bot.talk.set({ submit: () => new Promise((resolve) => setTimeout(() => resolve({ kind: 'errors', errors: {}, words }), 300)) })
    await bot.deliver(sent())
    await until(() => bot.service.of('chat.postEphemeral').length === 2)
    expect(bot.service.of('chat.postEphemeral').at(-1)?.args.text).toBe(`${'x'.repeat(1497)}&lt;&lt;…`)
  })

  it('takes a form without a place to the person', async () => {
    await bot.deliver(sent({ private_metadata: 'not JSON' }))
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ channel: 'U1' })
  })

  it('lets a form be closed', async () => {
    const reply = await bot.deliver(interaction({ type: 'view_closed', view: { id: 'V1', callback_id: 'checklist', type: 'modal' } }))
    expect([reply.status, reply.text]).toEqual([200, ''])
  })
})

describe('a command that asks for a form', () => {
  it('opens it at once, and says nothing that the form says', async () => {
    bot.talk.set({ say: async () => ({ ...said('what is to be logged', 'asker'), form }) })
    const reply = await bot.deliver(command(bot.service, '', { trigger_id: '3.3' }))
    expect([reply.status, reply.text]).toEqual([200, ''])
    expect((await until(() => bot.service.of('views.open')[0])).args).toMatchObject({ trigger_id: '3.3', view: form })
    await bot.slack.stop()
    expect(bot.service.of('hook')).toHaveLength(0)
  })

  it('says it where the form cannot be opened, and with the form what the channel is to see', async () => {
    bot.talk.set({ say: async () => ({ ...said('what is to be logged', 'asker'), form }) })
    bot.service.on('views.open', { body: { ok: false, error: 'expired_trigger_id' } })
    await bot.deliver(command(bot.service, ''))
    expect((await until(() => bot.service.of('hook')[0])).args).toMatchObject({ response_type: 'ephemeral', text: 'what is to be logged' })
    bot.talk.set({ say: async () => ({ ...said('what is to be stated'), form }) })
    expect((await bot.deliver(command(bot.service, ''))).json).toMatchObject({ response_type: 'in_channel', text: 'what is to be stated' })
  })
})

describe('threads', () => {
  const inThread = { ...said('the rest'), thread: true as const }

  it('take what is for the thread of the message that was pressed, and none where one person alone sees it', async () => {
    bot.talk.set({ press: async () => ({ kind: 'message', message: inThread }) })
    await bot.deliver(pressed({ action_id: 'details', value: '+|c' }, { message: { ts: '5.5' } }))
    expect((await until(() => bot.service.of('hook')[0])).args).toMatchObject({ text: 'the rest', thread_ts: '5.5' })
    await bot.deliver(pressed({ action_id: 'details', value: '+|c' }, { container: { message_ts: '6.6', channel_id: 'C1', is_ephemeral: true } }))
    expect((await until(() => bot.service.of('hook')[1])).args).not.toHaveProperty('thread_ts')
  })

  it('keep the answer of a form that was opened in one', async () => {
    await bot.deliver(pressed({ action_id: 'form:void', value: 'x' }, { message: { ts: '7.7', thread_ts: '5.5' } }))
    expect(bot.talk.heard.at(-1)?.delivery.thread).toBe('5.5')
    bot.talk.set({ submit: async () => ({ kind: 'message', message: said('logged'), channel: 'C1', thread: '5.5' }) })
    await bot.deliver(sent())
    expect((await until(() => bot.service.of('chat.postMessage')[0])).args).toMatchObject({ text: 'logged', thread_ts: '5.5' })
  })
})
