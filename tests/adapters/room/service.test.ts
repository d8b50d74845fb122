import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { channelIdOf } from '../../../src/adapters/room/index.js'
import { type FakeApp, type Got, type Loose, startRoom } from '../../support/room.js'

let app: FakeApp
beforeEach(async () => {
  app = await startRoom()
})
afterEach(() => app.close())

const demo = channelIdOf('demo')
const say = (text: string, user = 'crew', site = 'demo') => app.page('/room/say', { site, user, text })
const messages = async (user = 'crew', site = 'demo'): Promise<Loose[]> =>
  (await app.page(`/room/messages?site=${site}&user=${user}`)).json() as never
const got = (what: (delivery: Got) => boolean) => app.until(() => app.got.find(what))

describe('calls of the bot', () => {
  it('asks for the token', async () => {
    expect((await app.api('auth.test', {}, 'wrong')).body).toEqual({ ok: false, error: 'invalid_auth' })
    expect(await (await fetch(`${app.base}/api/auth.test`, { method: 'POST' })).json()).toEqual({ ok: false, error: 'not_authed' })
    expect((await app.api('auth.test', {})).body).toMatchObject({ ok: true, user_id: 'U0SEAMHAND', bot_id: 'B0SEAMHAND', team_id: 'T0ROOM' })
    expect((await app.api('chat.sing', {})).body).toMatchObject({ ok: false, error: 'unknown_method' })
  })

  it('posts, keeps metadata, edits and deletes', async () => {
    const metadata = { event_type: 'seamhand_post', event_payload: { key: 'local/demo/morning/2026-05-04' } }
    const posted = (await app.api('chat.postMessage', { channel: demo, text: 'Morning', metadata })).body
    expect(posted).toMatchObject({ ok: true, channel: demo })
    expect(posted.ts).toMatch(/^\d+\.\d{6}$/)
    const bare = (await app.api('conversations.history', { channel: demo })).body
    expect(bare.messages[0].metadata).toBeUndefined()
    const full = (await app.api('conversations.history', { channel: demo, include_all_metadata: true })).body
    expect(full.messages[0]).toMatchObject({ text: 'Morning', metadata, bot_id: 'B0SEAMHAND' })
    await app.api('chat.update', { channel: demo, ts: posted.ts, text: 'Changed' })
    expect(await messages()).toMatchObject([{ text: 'Changed', edited: true, user: 'seamhand', thread: null, onlyFor: null }])
    expect((await app.api('conversations.history', { channel: demo, include_all_metadata: true })).body.messages[0].metadata).toEqual(metadata)
    await app.api('chat.delete', { channel: demo, ts: posted.ts })
    expect(await messages()).toEqual([])
    expect((await app.api('chat.update', { channel: demo, ts: posted.ts, text: 'x' })).body.error).toBe('message_not_found')
  })

  it('pages the history from the newest on, threads apart', async () => {
    const first = (await app.api('chat.postMessage', { channel: 'C0NORTH', text: 'one' })).body
    await app.api('chat.postMessage', { channel: 'C0NORTH', text: 'in the thread', thread_ts: first.ts })
    const third = (await app.api('chat.postMessage', { channel: 'C0NORTH', text: 'two' })).body
    const page = (await app.api('conversations.history', { channel: 'C0NORTH', limit: 1 })).body
    expect(page).toMatchObject({ has_more: true, messages: [{ text: 'two' }] })
    expect((await app.api('conversations.history', { channel: 'C0NORTH', limit: 1, cursor: page.response_metadata.next_cursor })).body).toMatchObject(
      { has_more: false, messages: [{ text: 'one' }] }
    )
    expect(
      (await app.api('conversations.replies', { channel: 'C0NORTH', ts: first.ts })).body.messages.map((message: Loose) => message.text)
    ).toEqual(['one', 'in the thread'])
    expect((await app.api('conversations.history', { channel: 'C0NORTH', oldest: first.ts, latest: third.ts })).body.messages).toEqual([])
    expect((await app.api('conversations.history', { channel: 'C0NORTH', oldest: first.ts, inclusive: true })).body.messages).toHaveLength(2)
  })

  it('knows its channels and people', async () => {
    expect((await app.api('chat.postMessage', { channel: 'C0NOWHERE', text: 'x' })).body.error).toBe('channel_not_found')
    expect((await app.api('chat.postMessage', { channel: 'C0ELSEWHERE', text: 'x' })).body.error).toBe('not_in_channel')
    expect((await app.api('conversations.info', { channel: demo })).body.channel).toMatchObject({ name: 'demo', is_member: true })
    expect((await app.api('conversations.open', { users: 'U0CREW' })).body.channel.id).toBe('D0CREW')
    expect((await app.api('users.info', { user: 'U0CREW', include_locale: true })).body.user).toMatchObject({
      locale: 'en-US',
      tz: 'Pacific/Kiritimati',
      tz_offset: 50_400
    })
    expect((await app.api('users.info', { user: 'U0CREW' })).body.user.locale).toBeUndefined()
  })

  it('holds posts to one a second and channel after a burst', async () => {
    const answers = []
    for (let i = 0; i < 8; i += 1) answers.push(await app.api('chat.postMessage', { channel: demo, text: `${i}` }))
    const limited = answers.find((answer) => answer.status === 429)
    expect(limited?.headers.get('retry-after')).toBe('1')
    expect(limited?.body).toEqual({ ok: false, error: 'ratelimited' })
    expect((await app.api('chat.postMessage', { channel: 'C0NORTH', text: 'another channel' })).status).toBe(200)
  })

  it('uploads in three steps, and the file is of use a moment later', async () => {
    // Long enough that the looks before it come before it on a busy machine too.
    await app.close()
    app = await startRoom({ timing: { fileMs: 400 } })
    const bytes = Buffer.from('89504e470d0a1a0a', 'hex')
    const place = (await app.api('files.getUploadURLExternal', { filename: 'sky.png', length: String(bytes.length), alt_txt: 'Sky' })).body
    const form = new FormData()
    form.append('body', new Blob([bytes]), 'Untitled')
    expect((await fetch(place.upload_url, { method: 'POST', body: form })).status).toBe(200)
    expect((await app.api('files.completeUploadExternal', { files: [{ id: place.file_id, title: 'Sky' }] })).body).toMatchObject({
      ok: true,
      files: [{ id: place.file_id, title: 'Sky' }]
    })
    const blocks = [{ type: 'image', slack_file: { id: place.file_id }, alt_text: 'Sky' }]
    expect((await app.api('chat.postMessage', { channel: demo, text: 'x', blocks })).body).toMatchObject({ ok: false, error: 'invalid_blocks' })
    await app.until(async () => (await app.api('files.info', { file: place.file_id })).body.file.mimetype === 'image/png')
    expect((await app.api('chat.postMessage', { channel: demo, text: 'x', blocks })).body.ok).toBe(true)
    expect(Buffer.from(await (await fetch(`${app.base}/room/files/${place.file_id}`)).arrayBuffer())).toEqual(bytes)
  })

  it('shares a file in a channel later, with its message', async () => {
    // Long enough that the looks before it come before it on a busy machine too.
    await app.close()
    app = await startRoom({ timing: { fileMs: 400 } })
    const place = (await app.api('files.getUploadURLExternal', { filename: 'day.csv', length: '3' })).body
    await fetch(place.upload_url, { method: 'POST', body: 'a,b' })
    await app.api('files.completeUploadExternal', { files: [{ id: place.file_id }], channel_id: demo, initial_comment: 'The day' })
    expect((await app.api('files.info', { file: place.file_id })).body.file.shares).toEqual({})
    expect(await messages()).toEqual([])
    const file = await app.until(async () => {
      const shown = (await app.api('files.info', { file: place.file_id })).body.file
      return shown.shares.public?.[demo]?.length === 1 ? shown : null
    })
    expect(await messages()).toMatchObject([
      { ts: file.shares.public[demo][0].ts, text: 'The day', files: [{ id: place.file_id, title: 'day.csv' }] }
    ])
  })
})

describe('deliveries to the app', () => {
  it('sends a command as the service does, and shows its answer to all', async () => {
    app.onDelivery = () => ({
      body: { response_type: 'in_channel', text: 'No-go: wind', blocks: [{ type: 'header', text: { type: 'plain_text', text: 'No-go: wind' } }] }
    })
    const response = await app.page('/room/say', {
      site: 'demo',
      user: 'crew',
      text: '/spray wind 40',
      lang: 'es',
      units: 'us',
      at: '2026-05-04T06:10:00Z'
    })
    expect(response.status).toBe(202)
    const { ts } = (await response.json()) as { ts: string }
    const answered = await app.until(async () => (await messages('inspector')).find((message) => message.user === 'seamhand'))
    expect(answered).toMatchObject({ text: 'No-go: wind', onlyFor: null, blocks: [{ type: 'header' }] })
    expect(await messages('inspector')).toMatchObject([{ ts, user: 'crew', text: '/spray wind 40' }, {}])
    const { headers, body } = app.got[0]!
    expect(headers['content-type']).toBe('application/x-www-form-urlencoded')
    expect(headers.connection).toBe('close')
    expect(body).toMatchObject({
      command: '/spray',
      text: 'wind 40',
      user_id: 'U0CREW',
      channel_id: demo,
      channel_name: 'demo',
      team_id: 'T0ROOM',
      api_app_id: 'A0SEAMHAND',
      room_lang: 'es',
      room_units: 'us',
      room_at: '2026-05-04T06:10:00Z'
    })
    expect(body.trigger_id).toBeTruthy()
    const after = (await (await app.page(`/room/messages?site=demo&user=crew&after=${ts}`)).json()) as unknown[]
    expect(after).toHaveLength(1)
  })

  it('shows an answer without a type to its asker alone, and no one the command', async () => {
    app.onDelivery = () => ({ body: 'Help is here' })
    await say('/seamhand help')
    await app.until(async () => (await messages()).find((message) => message.text === 'Help is here' && message.onlyFor === 'crew'))
    expect(await messages('supervisor')).toEqual([])
    expect((await app.api('conversations.history', { channel: demo })).body.messages).toEqual([])
  })

  it('takes a word that lives behind /seamhand as that', async () => {
    app.onDelivery = ({ body }) => ({ body: `${body.command} ${body.text}` })
    await say('/seal 12 m tape')
    await app.until(async () => (await messages()).find((message) => message.text === '/seamhand seal 12 m tape'))
    await say('/pendientes lista')
    await app.until(async () => (await messages()).find((message) => message.text === '/seamhand pendientes lista'))
  })

  it('says what is no command, without asking the app', async () => {
    await say('/sing')
    expect((await messages()).at(-1)).toMatchObject({ user: 'room', onlyFor: 'crew', text: expect.stringContaining('/sing is not a valid command') })
    expect(app.got).toEqual([])
  })

  it('says so when there is no answer in time, and when it is refused', async () => {
    await app.close()
    app = await startRoom({ timing: { deadlineMs: 60 } })
    app.onDelivery = ({ body }) =>
      body.text === 'slow'
        ? { silent: true }
        : body.text === 'bad'
          ? { body: { text: 'x', blocks: [{ type: 'header', text: { type: 'mrkdwn', text: 'x' } }] } }
          : { status: 500 }
    await say('/spray slow')
    await app.until(async () => (await messages()).find((message) => message.text === '/spray failed: no answer within 0.06 s.'))
    await say('/spray broken')
    await app.until(async () => (await messages()).find((message) => message.text === '/spray failed: the app answered 500.'))
    await say('/spray bad')
    await app.until(async () =>
      (await messages()).find((message) =>
        message.text.includes('invalid_blocks [ERROR] unsupported type: mrkdwn [json-pointer:/blocks/0/text/type]')
      )
    )
  })

  it('hands plain words over as a mention, escaped, and words in private as a message', async () => {
    await say('can we spray <!channel> & now?')
    const mention = await got(({ body }) => body.event?.type === 'app_mention')
    expect(mention.headers['content-type']).toBe('application/json')
    expect(mention.body).toMatchObject({
      type: 'event_callback',
      team_id: 'T0ROOM',
      room: { lang: null, units: null, at: null },
      event: { text: '<@U0SEAMHAND> can we spray &lt;!channel&gt; &amp; now?', user: 'U0CREW', channel: demo }
    })
    await say('hello', 'crew', '@seamhand')
    expect((await got(({ body }) => body.event?.channel_type === 'im')).body.event).toMatchObject({
      type: 'message',
      text: 'hello',
      channel: 'D0CREW'
    })
    expect(await messages('supervisor', '@seamhand')).toEqual([])
  })

  it('tells of its own messages and their changes where the app listens', async () => {
    const { ts } = (await app.api('chat.postMessage', { channel: 'D0CREW', text: 'one' })).body
    expect((await got(({ body }) => body.event?.ts === ts)).body.event).toMatchObject({ type: 'message', bot_id: 'B0SEAMHAND' })
    await app.api('chat.update', { channel: 'D0CREW', ts, text: 'two' })
    expect((await got(({ body }) => body.event?.subtype === 'message_changed')).body.event).toMatchObject({
      message: { text: 'two' },
      previous_message: { text: 'one' }
    })
  })

  it('sends an event again, three times at most, with the reason', async () => {
    app.onDelivery = () => ({ status: 500 })
    await say('hello')
    await app.until(() => app.got.length === 4)
    expect(app.got.map(({ headers }) => [headers['x-slack-retry-num'], headers['x-slack-retry-reason']])).toEqual([
      [undefined, undefined],
      ['1', 'http_error'],
      ['2', 'http_error'],
      ['3', 'http_error']
    ])
    expect(new Set(app.got.map(({ raw }) => raw)).size).toBe(1)
    await new Promise((resolve) => setTimeout(resolve, 60))
    expect(app.got).toHaveLength(4)
  })

  it('sends no event again when told not to', async () => {
    app.onDelivery = () => ({ status: 500, headers: { 'x-slack-no-retry': '1' } })
    await say('hello')
    await app.until(async () => (await messages()).some((message) => message.user === 'room'))
    await new Promise((resolve) => setTimeout(resolve, 60))
    expect(app.got).toHaveLength(1)
  })
})

describe('reply addresses', () => {
  const answer = (url: string, body: object) =>
    fetch(url, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })

  it('take five answers, then none', async () => {
    await say('/day')
    const { response_url } = (await got(({ body }) => body.command === '/day')).body
    const codes = []
    for (let i = 0; i < 6; i += 1)
      codes.push((await answer(response_url, { text: `answer ${i}`, response_type: i === 0 ? 'in_channel' : 'ephemeral' })).status)
    expect(codes).toEqual([200, 200, 200, 200, 200, 404])
    expect((await messages('inspector')).map((message) => message.text)).toEqual(['/day', 'answer 0'])
  })

  it('end after half an hour', async () => {
    let now = Date.now()
    await app.close()
    app = await startRoom({ now: () => now })
    await say('/day')
    const { response_url } = (await got(({ body }) => body.command === '/day')).body
    now += 1_800_001
    expect((await answer(response_url, { text: 'late' })).status).toBe(404)
  })

  it('replace and delete the message of the button', async () => {
    const button = {
      type: 'actions',
      block_id: 'b',
      elements: [{ type: 'button', action_id: 'undo', text: { type: 'plain_text', text: 'Undo' }, value: 'demo-1' }]
    }
    const { ts } = (await app.api('chat.postMessage', { channel: demo, text: 'logged', blocks: [button] })).body
    const pressed = await app.page('/room/press', {
      site: 'demo',
      user: 'crew',
      ts,
      action: { type: 'button', action_id: 'undo', block_id: 'b', value: 'demo-1' }
    })
    expect(await pressed.json()).toEqual({ problem: null })
    const { body } = await got((delivery) => delivery.body.type === 'block_actions')
    expect(body).toMatchObject({
      container: { type: 'message', message_ts: ts, channel_id: demo, is_ephemeral: false },
      user: { id: 'U0CREW' },
      actions: [{ action_id: 'undo', block_id: 'b', value: 'demo-1' }],
      message: { ts }
    })
    await answer(body.response_url, { text: 'undone', replace_original: true })
    expect(await messages()).toMatchObject([{ ts, text: 'undone', edited: true, blocks: [] }])
    await answer(body.response_url, { delete_original: true })
    expect(await messages()).toEqual([])
  })
})

describe('shortcuts', () => {
  it('hand a message over, with a trigger and a reply address', async () => {
    const { ts } = (await app.api('chat.postMessage', { channel: demo, text: 'a photo of course 4' })).body
    expect(await (await app.page('/room/press', { site: 'demo', user: 'crew', ts, shortcut: 'void' })).json()).toEqual({ problem: null })
    const { body } = await got((delivery) => delivery.body.type === 'message_action')
    expect(body).toMatchObject({
      callback_id: 'void',
      message_ts: ts,
      message: { text: 'a photo of course 4' },
      channel: { id: demo, name: 'demo' },
      user: { id: 'U0CREW' }
    })
    expect(body.trigger_id).toBeTruthy()
    expect(body.response_url).toContain('/room/hook/')
  })
})

describe('closing', () => {
  it('waits for the delivery under way, and lets the page go', async () => {
    const other = await startRoom()
    let release = () => {}
    other.onDelivery = () =>
      new Promise((resolve) => {
        release = () => resolve({ body: 'late' })
      })
    await other.page('/room/say', { site: 'demo', user: 'crew', text: '/spray' })
    await app.until(() => other.got.length === 1)
    const held = other.page('/room/changes?site=demo&user=crew&since=99')
    await new Promise((resolve) => setTimeout(resolve, 100))
    const closed = other.close()
    expect((await held).status).toBe(200)
    expect((await other.page('/room/messages?site=demo')).status).toBe(503)
    release()
    await closed
  })
})

describe('forms', () => {
  const form = (blocks: object[] = [], more: object = {}) => ({
    type: 'modal',
    callback_id: 'coupon',
    title: { type: 'plain_text', text: 'Coupon' },
    submit: { type: 'plain_text', text: 'Log' },
    blocks: [
      {
        type: 'input',
        block_id: 'width',
        label: { type: 'plain_text', text: 'Width' },
        element: { type: 'number_input', action_id: 'mm', is_decimal_allowed: true, min_value: '0' }
      },
      ...blocks
    ],
    ...more
  })
  const trigger = async (): Promise<string> => {
    const before = app.got.length
    await say('/weld')
    return (await app.until(() => app.got.slice(before).find(({ body }) => body.command === '/weld'))).body.trigger_id
  }
  const submit = async (view: string, width: string) =>
    (await app.page('/room/submit', { user: 'crew', view, values: { width: { mm: { value: width } } } })).json()

  it('open with a trigger, once and within 3 s', async () => {
    let now = Date.now()
    await app.close()
    app = await startRoom({ now: () => now })
    const first = await trigger()
    expect((await app.api('views.open', { trigger_id: first, view: form() })).body).toMatchObject({
      ok: true,
      view: { callback_id: 'coupon', state: { values: {} } }
    })
    expect((await app.api('views.open', { trigger_id: first, view: form() })).body.error).toBe('exchanged_trigger_id')
    const late = await trigger()
    now += 3001
    expect((await app.api('views.open', { trigger_id: late, view: form() })).body.error).toBe('expired_trigger_id')
    expect((await app.api('views.open', { trigger_id: 'none', view: form() })).body.error).toBe('invalid_trigger_id')
  })

  it('stack three deep and change only under their hash', async () => {
    const { view } = (await app.api('views.open', { trigger_id: await trigger(), view: form() })).body
    expect((await app.api('views.push', { trigger_id: await trigger(), view: form() })).body.view).toMatchObject({
      previous_view_id: view.id,
      root_view_id: view.id
    })
    expect((await app.api('views.push', { trigger_id: await trigger(), view: form() })).body.ok).toBe(true)
    expect((await app.api('views.push', { trigger_id: await trigger(), view: form() })).body.error).toBe('push_limit_reached')
    expect((await app.api('views.update', { view_id: view.id, hash: view.hash, view: form() })).body.ok).toBe(true)
    expect((await app.api('views.update', { view_id: view.id, hash: view.hash, view: form() })).body.error).toBe('hash_conflict')
  })

  it('send what was filled in, once it can stand', async () => {
    const { view } = (await app.api('views.open', { trigger_id: await trigger(), view: form() })).body
    expect(await submit(view.id, '')).toEqual({ problem: null, errors: { width: 'Please fill this in.' } })
    expect(await submit(view.id, 'wide')).toMatchObject({ errors: { width: expect.stringContaining('number') } })
    expect(await submit(view.id, '-1')).toMatchObject({ errors: { width: 'No less than 0.' } })
    app.onDelivery = () => ({ body: { response_action: 'errors', errors: { width: 'Too narrow' } } })
    expect(await submit(view.id, '12,5')).toEqual({ problem: null, errors: { width: 'Too narrow' } })
    expect(app.got.at(-1)?.body).toMatchObject({
      type: 'view_submission',
      view: { id: view.id, state: { values: { width: { mm: { type: 'number_input', value: '12.5' } } } } }
    })
    app.onDelivery = () => ({ status: 500 })
    expect(await submit(view.id, '12')).toMatchObject({ problem: expect.stringContaining('the app answered 500') })
    app.onDelivery = () => ({ body: { response_action: 'update', view: form([], { title: { type: 'plain_text', text: 'Next' } }) } })
    expect(await submit(view.id, '12')).toEqual({ problem: null, errors: {} })
    expect(await (await app.page('/room/views?user=crew')).json()).toMatchObject([{ title: { text: 'Next' } }])
    app.onDelivery = () => ({})
    await submit(view.id, '12')
    expect(await (await app.page('/room/views?user=crew')).json()).toEqual([])
  })

  it('are closed by hand, and the app hears of it where it asked to', async () => {
    const { view } = (await app.api('views.open', { trigger_id: await trigger(), view: form([], { notify_on_close: true }) })).body
    await app.page('/room/closed', { user: 'crew', view: view.id })
    expect((await got(({ body }) => body.type === 'view_closed')).body.view.id).toBe(view.id)
    expect((await app.page('/room/submit', { user: 'supervisor', view: view.id, values: {} })).status).toBe(404)
  })

  it('make the home of a person', async () => {
    await app.page('/room/home', { user: 'supervisor' })
    expect((await got(({ body }) => body.event?.type === 'app_home_opened')).body.event).toMatchObject({ user: 'U0SUPERVISOR', tab: 'home' })
    const home = { type: 'home', blocks: [{ type: 'section', text: { type: 'mrkdwn', text: 'My sites' } }] }
    const { view } = (await app.api('views.publish', { user_id: 'U0SUPERVISOR', view: home })).body
    expect((await app.api('views.publish', { user_id: 'U0SUPERVISOR', view: home, hash: 'old' })).body.error).toBe('hash_conflict')
    expect(await (await app.page('/room/home?user=supervisor')).json()).toMatchObject({ id: view.id, blocks: home.blocks })
    expect(await (await app.page('/room/home?user=crew')).json()).toBeNull()
  })
})
