import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Bot, command, event, nowS, sign, startBot } from '../../support/slack.js'

let bot: Bot
beforeAll(async () => {
  bot = await startBot()
})
afterAll(() => bot.close())

describe('POST /slack/events: who may deliver', () => {
  // The worked example of the service's page "Verifying requests from Slack", as vendored in its own public SDK tests.
  const example = {
    secret: '8f742231b10e8888abcd99yyyzzz85a5',
    ts: 1531420618,
    body: 'token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c',
    signature: 'v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503'
  }

  it('signs as the published example does, so that the second implementation is a check', () => {
    expect(sign(example.body, example.ts, example.secret)).toBe(example.signature)
  })

  it('takes a request signed by the second implementation', async () => {
    expect((await bot.deliver(command(bot.service, 'air 20'))).status).toBe(200)
  })

  it.each([
    ['another secret', { secret: 'another' }],
    ['a signature cut short', { signature: `v0=${'a'.repeat(60)}` }],
    ['another version', { signature: `v1=${'a'.repeat(64)}` }],
    ['no signature', { signature: null }],
    ['no number for a time', { headers: { 'x-slack-request-timestamp': 'soon' } }],
    ['another time than was signed', { headers: { 'x-slack-request-timestamp': String(nowS() - 5) } }]
  ])('refuses %s', async (_name, how) => {
    const before = bot.talk.heard.length
    expect((await bot.deliver(command(bot.service, 'air 20'), how)).status).toBe(401)
    expect(bot.talk.heard).toHaveLength(before)
  })

  // platform notes C1, Signature: "Future timestamps are accepted (RAN +1 day)" by the framework alone.
  it.each([
    [-86_400, 401],
    [-310, 401],
    [-290, 200],
    [0, 200],
    [290, 200],
    [310, 401],
    [86_400, 401]
  ])('a time off by %i s: %i', async (off, status) => {
    expect((await bot.deliver(command(bot.service, 'air 20'), { ts: nowS() + off })).status).toBe(status)
  })

  // platform notes C1, Signature: "an identical request is accepted twice (RAN)" by the framework alone.
  it('gives an identical request the stored reply, and does nothing twice', async () => {
    const body = new URLSearchParams(command(bot.service, 'air 21')).toString()
    const ts = nowS()
    const done = bot.talk.done()
    const first = await bot.deliver(body, { ts })
    const second = await bot.deliver(body, { ts })
    expect([first.status, second.status]).toEqual([200, 200])
    expect(second.text).toBe(first.text)
    expect(bot.talk.done()).toBe(done + 1)
  })
})

describe('POST /slack/events: what may be delivered', () => {
  // outside contract §12: 413 over 1 MiB. platform notes C1, Errors: the framework's limit is 4 MB unless told.
  it.each([
    [1024 * 1024, 200],
    [1024 * 1024 + 1, 413]
  ])('%i bytes: %i', async (size, status) => {
    const head = new URLSearchParams(command(bot.service, '')).toString()
    const body = `${head}&fill=${'x'.repeat(size - head.length - 6)}`
    expect(Buffer.byteLength(body)).toBe(size)
    expect((await bot.deliver(body)).status).toBe(status)
  })

  // platform notes C1, Signature: "Content-Type is compared with ===".
  it('refuses a form with a charset as the framework does, at once', async () => {
    expect((await bot.deliver(command(bot.service, 'air 20'), { contentType: 'application/x-www-form-urlencoded;charset=UTF-8' })).status).toBe(400)
  })

  it.each(['{', '{"type":"event_callback"', ''])('refuses JSON that is none: %j', async (body) => {
    expect((await bot.deliver(body, { as: 'json' })).status).toBe(400)
  })

  // Found by changed payloads: the framework looks into it outside of anything that catches, which would end the process.
  it.each([
    ['null', 'json'],
    [' null ', 'json'],
    ['payload=null', 'form'],
    ['payload=+null', 'form']
  ] as const)('refuses %j, which is signed and nothing', async (body, as) => {
    const unhandled: unknown[] = []
    const note = (error: unknown) => void unhandled.push(error)
    process.on('unhandledRejection', note)
    expect((await bot.deliver(body, { as })).status).toBe(401)
    process.off('unhandledRejection', note)
    expect(unhandled).toEqual([])
  })

  it('answers the check of the certificate without a signature, and the check of the address with one', async () => {
    const check = await bot.deliver({ ssl_check: '1', token: 'x' }, { signature: null })
    expect([check.status, check.text]).toEqual([200, ''])
    const body = { type: 'url_verification', challenge: 'say this', token: 'x' }
    expect((await bot.deliver(body, { as: 'json' })).json).toEqual({ challenge: 'say this' })
    expect((await bot.deliver(body, { as: 'json', signature: null })).status).toBe(401)
  })

  it('knows no other path or method', async () => {
    expect((await bot.deliver(command(bot.service, ''), { path: '/slack/other' })).status).toBe(404)
    expect((await bot.deliver('', { method: 'GET' })).status).toBe(404)
  })

  // platform notes C1, Errors: "No ack in 3001 ms -> unhandledRequestHandler -> 404".
  it('says no to a kind that nobody knows, and logs no body', async () => {
    const reply = await bot.deliver({ payload: JSON.stringify({ type: 'novelty', team: { id: 'T0' }, user: { id: 'U1' }, secret: 'hidden' }) })
    expect(reply.status).toBe(404)
    expect(JSON.stringify(bot.logged)).toContain('a payload that nobody answered')
    expect(JSON.stringify(bot.logged)).not.toContain('hidden')
  })

  it('takes an event that it does not know in silence', async () => {
    expect((await bot.deliver(event({ type: 'reaction_added' }), { as: 'json' })).status).toBe(200)
  })
})
