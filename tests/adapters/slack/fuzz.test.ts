import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { changes, mutated, polluted } from '../../support/fuzz/mutate.js'
import { type Bot, command, event, type Loose, startBot } from '../../support/slack.js'

let bot: Bot
const unhandled: unknown[] = []
const note = (error: unknown) => void unhandled.push(error)
beforeAll(async () => {
  process.on('unhandledRejection', note)
  process.on('uncaughtException', note)
  bot = await startBot()
})
afterAll(async () => {
  process.off('unhandledRejection', note)
  process.off('uncaughtException', note)
  await bot.close()
})

const sizes = { many: 20, deep: 50, chars: 1_000_000 }
const who = { team: { id: 'T0', domain: 'x' }, user: { id: 'U1', team_id: 'T0' }, api_app_id: 'A0', token: 'old', trigger_id: '1.2.3' }
const interactions: readonly Loose[] = [
  {
    ...who,
    type: 'block_actions',
    channel: { id: 'C1' },
    message: { ts: '1.2' },
    response_url: 'http://127.0.0.1:9/hook',
    actions: [{ action_id: 'say:undo', block_id: 'b', type: 'button', value: 'north|undo north-1', action_ts: '1.2' }]
  },
  {
    ...who,
    type: 'view_submission',
    view: {
      id: 'V1',
      hash: 'h',
      type: 'modal',
      callback_id: 'readings',
      private_metadata: '{"site":"north","channel":"C1","lang":"en","units":"metric","files":[]}',
      state: { values: { air: { air: { type: 'plain_text_input', value: '20' } } } }
    }
  },
  {
    ...who,
    type: 'message_action',
    callback_id: 'void',
    channel: { id: 'C1' },
    message: { ts: '1.2', files: [{ id: 'F1' }] },
    response_url: 'http://127.0.0.1:9/hook'
  },
  { ...who, type: 'view_closed', view: { id: 'V1', callback_id: 'readings', private_metadata: '' } }
]

/** Delivers and sees that it ends: whatever is in it the answer is a status of the list, and its body tells nothing of the program. */
async function ends(body: Loose, as: 'form' | 'json'): Promise<void> {
  const reply = await bot.deliver(body, { as })
  expect([200, 400, 401, 404, 500]).toContain(reply.status)
  expect(reply.text).not.toMatch(/node_modules|\.ts:\d|\.js:\d|at [A-Z]\w+\./)
  expect(polluted()).toBe(false)
}

/** What the framework finds nobody for it answers after the 3 s of the service: all are sent at once. */
const all = <T>(made: fc.Arbitrary<T>) => fc.sample(made, { numRuns: 40 })

describe('payloads of the service, changed', () => {
  it('interactions: missing members, other ids, values of any size', async () => {
    const sent = all(fc.tuple(fc.constantFrom(...interactions), changes)).map(([payload, made]) => mutated(payload, made, sizes))
    await Promise.all(sent.map((payload) => ends({ payload: JSON.stringify(payload) }, 'form')))
  })

  it('events and commands', async () => {
    const mention = event({ type: 'app_mention', user: 'U1', text: '<@U0BOT> air 20', ts: '1.2', channel: 'C1' })
    await Promise.all(all(changes).map((made) => ends(Object(mutated(mention, made, sizes)), 'json')))
    const commands = all(changes).map((made) => Object.entries(Object(mutated(command(bot.service, 'air 20'), made, sizes))))
    const texts = commands.map((entries) =>
      entries.map(([name, value]) => [name, typeof value === 'string' ? value : JSON.stringify(value)] as const)
    )
    await Promise.all(texts.map((entries) => ends(Object.fromEntries(entries), 'form')))
  })

  it('left nobody waiting and nothing thrown, and the next one is taken', async () => {
    expect(unhandled).toEqual([])
    expect((await bot.deliver(command(bot.service, 'air 22'))).status).toBe(200)
  })
})
