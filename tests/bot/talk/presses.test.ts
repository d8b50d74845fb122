import type { ActionsBlock, Button } from '@slack/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkMessage } from '../../../src/adapters/room/check/index.js'
import { formIds } from '../../../src/bot/forms/form-id.js'
import type { Delivery, Message, Pressed } from '../../../src/bot/talk/talk.js'
import { texts } from '../../../src/bot/text/index.js'
import { defaultSettings } from '../../../src/core/site.js'
import { seamhands } from '../../support/seamhand.js'
import { morningAt, startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
  await talking.store.savePerson('local', 'U0BOSS01', { role: 'supervisor' })
  await talking.store.savePerson('local', 'U0LOOK01', { role: 'inspector' })
})
afterEach(async () => {
  expect(talking.bugs).toEqual([])
  await talking.close()
})

const say = (text: string, part: Partial<Delivery> = {}) => talking.talk.say(talking.delivery({ user: 'U0BOSS01', ...part }), text)
const press = (actionId: string, value: string, part: Partial<Delivery> = {}) =>
  talking.talk.press(talking.delivery({ user: 'U0BOSS01', ...part }), actionId, value)
const seq = async () => (await talking.store.view({ workspace: 'local', site: 'demo' }))?.head.seq ?? 0
const messageOf = (pressed: Pressed): Message => {
  if (pressed.kind !== 'message') throw new Error('a form')
  return pressed.message
}
const buttonsOf = ({ blocks }: Message) =>
  blocks.filter((block): block is ActionsBlock => block.type === 'actions').flatMap(({ elements }) => elements as Button[])

/** Says something short, in the service's limits, and what to do next: in words or by a button. */
function isAnAnswer(message: Message): void {
  const lines = message.text.split('\n')
  expect(message.text.trim()).not.toBe('')
  expect(lines.length).toBeLessThanOrEqual(30)
  expect(lines.length > 1 || buttonsOf(message).length > 0 || /again|de nuevo|Ask/i.test(message.text)).toBe(true)
  expect(checkMessage(message.blocks, () => false)).toBeNull()
}

/** Every button that says words: what was said before, its words, and what a second press of a new delivery says. */
const says: readonly (readonly [name: string, before: readonly string[], words: string, again: RegExp])[] = [
  ['undo', ['spray air 20'], 'undo demo-1', /undone already/],
  ['fixed', ['probe course 4 end 3.2 m 40 mm'], 'probe 1 fixed', /repaired/],
  ['patched', ['probe course 4 end 3.2 m 400 mm'], 'probe 1 fixed patch', /repaired/],
  ['passed', ['probe course 4 end 3.2 m 40 mm', 'probe 1 fixed'], 'probe 1 passed', /passed/],
  ['failed', ['probe course 4 end 3.2 m 40 mm', 'probe 1 fixed'], 'probe 1 failed', /open/],
  ['punchDone', ['punch flange loose'], 'punch 1 done', /done/],
  ['fireDone', ['fire heat'], 'fire done', /./],
  ['photo', ['punch flange loose'], 'punch 1 photo F012345', /./],
  ['spray', [], 'spray', /./],
  ['list', [], 'probe list', /./],
  ['punchList', [], 'punch list', /./]
]
/** Log nothing by themselves: a look, a watch that is not over, a photo that is still to be fetched. */
const quiet = new Set(['spray', 'list', 'punchList', 'fireDone', 'photo'])

describe('every button that says words', () => {
  it.each(says)('%s: twice, late, elsewhere, by others, of a closed site', async (name, before, words, again) => {
    for (const each of before) await say(each)
    const [action, value] = [`say:${name}`, `demo|${words}`]
    const start = await seq()
    isAnAnswer(messageOf(await press(action, value, { user: 'U0LOOK01' })))
    isAnAnswer(messageOf(await press(action, value, { workspace: 'T9' })))
    expect(await seq()).toBe(start)

    const first = messageOf(await press(action, value, { claim: 'once', channel: 'C0OTHER1' }))
    isAnAnswer(first)
    const done = await seq()
    expect(messageOf(await press(action, value, { claim: 'once' })).text).toBe(first.text)
    expect(await seq()).toBe(done)
    if (!quiet.has(name)) expect(done).toBeGreaterThan(start)

    const second = messageOf(await press(action, value))
    isAnAnswer(second)
    expect(second.text).toMatch(again)
    // Another look is another decision; anything else is done once.
    if (name !== 'spray') expect(await seq()).toBe(done)
    isAnAnswer(messageOf(await press(action, value, { at: morningAt + 86_400 })))

    await talking.store.createSite({ workspace: 'local', site: 'gone' }, { ...defaultSettings, lat: 50, lon: 8, zone: 'Europe/Berlin', closed: true })
    isAnAnswer(messageOf(await press(action, `gone|${words}`)))
    isAnAnswer(messageOf(await press(action, `never|${words}`)))
  })

  it('has a row here, each of them, or is a form or the details', () => {
    const known = new Set([...says.map(([name]) => name), ...formIds, 'details'])
    const named = [...Object.keys(texts.en.talk.buttons), ...Object.keys(texts.en.home.numbered)]
    expect(named.filter((name) => !known.has(name))).toEqual([])
  })

  it('shows the list where a void is no longer where the button left it', async () => {
    await say('probe course 4 end 3.2 m 40 mm')
    await press('say:fixed', 'demo|probe 1 fixed')
    const refused = messageOf(await press('say:fixed', 'demo|probe 1 fixed'))
    expect(refused).toMatchObject({ to: 'asker', text: expect.stringContaining('Nothing was logged') })
    expect(buttonsOf(refused).map(({ value }) => value)).toContain('demo|probe list')
  })

  it('does not undo what was logged more than ten minutes ago', async () => {
    await say('probe course 4 end 3.2 m 40 mm')
    expect(messageOf(await press('say:undo', 'demo|undo demo-1', { at: morningAt + 601 })).text).toContain('more than 10 min ago')
  })
})

describe('every button that opens a form, and every form', () => {
  const values = {
    checklist: { surfaces: ['deck dry'], intakes: 'none' },
    readings: { air: '20' },
    kit: { name: 'K7', iso: '24', resin: '24' },
    coupon: { welder: 'robot', widths: '41', peel: 'film' },
    void: { course: '4', on: 'lap', distance: '2', length: '40' },
    laid: { area: '40', robotM: '20' },
    seal: { edge: '12', method: 'tape' },
    detail: { details: ['corners'] },
    punch: { text: 'flange loose' },
    site: { morning: '05:00', days: ['1'], posts: ['morning'] },
    start: { name: 'harbour', at: '50.1, 8.2', zone: 'Europe/Berlin', days: ['1'] }
  } as const

  it.each(formIds)('%s: opened and sent twice, late, elsewhere, by others, of a closed site', async (id) => {
    const value = `${id === 'start' ? '+' : 'demo'}|${id}`
    const opened = await press(`form:${id}`, value)
    if (opened.kind !== 'form') throw new Error(opened.message.text)
    expect(await press(`form:${id}`, value)).toMatchObject({ kind: 'form' })
    const metadata = opened.view.private_metadata ?? ''
    const send = (part: Partial<Delivery> = {}) => talking.talk.submit(talking.delivery({ user: 'U0BOSS01', ...part }), id, metadata, values[id])
    const start = await seq()

    const other = await send({ workspace: 'T9' })
    expect(JSON.stringify(other)).not.toMatch(/ref\d/)
    const looked = await send({ user: 'U0LOOK01' })
    if (looked.kind === 'message') isAnAnswer(looked.message)
    else expect(Object.values(looked.errors).join(' ')).toMatch(/Nothing was logged|Ask a supervisor|only for/)
    expect(await seq()).toBe(start)

    const first = await send({ claim: 'once' })
    expect(first.kind).toBe('message')
    const done = await seq()
    await send({ claim: 'once', at: morningAt + 1 })
    expect(await seq()).toBe(done)
    expect(await talking.store.sites('local')).toHaveLength(id === 'start' ? 2 : 1)

    const again = await send({ at: morningAt + 86_400 })
    expect(JSON.stringify(again)).not.toMatch(/ref\d/)
    await talking.store.createSite({ workspace: 'local', site: 'gone' }, { ...defaultSettings, lat: 50, lon: 8, zone: 'Europe/Berlin', closed: true })
    const closed = JSON.stringify({ ...(JSON.parse(metadata) as object), site: 'gone' })
    const late = await talking.talk.submit(talking.delivery({ user: 'U0BOSS01' }), id, closed, values[id])
    if (id !== 'site' && id !== 'start') expect(late).toMatchObject({ kind: 'errors', errors: expect.anything() })
    const errors = late.kind === 'errors' ? Object.keys(late.errors) : []
    const fields = opened.view.blocks.flatMap((block) => (block.type === 'input' ? (block.block_id ?? '') : []))
    expect(errors.filter((block) => !fields.includes(block))).toEqual([])
  })

  it('says who can, at a field, to a supervisor who is none any more', async () => {
    await talking.store.savePerson('local', 'U0BOSS02', { role: 'supervisor' })
    const opened = await press('form:site', 'demo|site', { user: 'U0BOSS02' })
    await say('role <@U0BOSS02> crew')
    const metadata = opened.kind === 'form' ? (opened.view.private_metadata ?? '') : ''
    const sent = await talking.talk.submit(talking.delivery({ user: 'U0BOSS02' }), 'site', metadata, { morning: '04:00', days: ['1'] })
    expect(sent).toMatchObject({ kind: 'errors', errors: { units: expect.stringContaining('<@U0BOSS01>') } })
  })
})

describe('details', () => {
  it('go to the thread of the message, as they were when it was said, as often as they are wanted', async () => {
    const message = await say('spray air 20 deck 18 rh 60 wind 10', { claim: 'd-1' })
    const [button] = buttonsOf(message).filter(({ action_id }) => action_id === 'details')
    expect(message.blocks.some(({ type }) => type === 'divider')).toBe(false)
    await say('spray air 3')
    for (let times = 0; times < 2; times += 1) {
      const details = messageOf(await press('details', button?.value ?? ''))
      expect(details).toMatchObject({ to: 'channel', thread: true })
      expect(details.text.length).toBeGreaterThan(20)
      expect(message.blocks.map((block) => JSON.stringify(block))).not.toContain(JSON.stringify(details.blocks[0]))
    }
  })

  it('hold what is too long for a channel', async () => {
    for (let n = 1; n <= 20; n += 1) await say(`probe course ${n} end 3.2 m 40 mm`)
    const list = await say('probe list', { claim: 'long' })
    const shown = JSON.stringify(list.blocks)
    expect(shown).not.toContain('course 20')
    expect(shown).toContain('and 10 more')
    expect(messageOf(await press('details', '+|long')).text).toContain('course 20')
  })

  it('are nobody else’s, and gone where nothing was kept', async () => {
    await say('spray air 20 deck 18 rh 60 wind 10', { claim: 'd-1' })
    for (const [value, part] of [
      ['+|d-1', { workspace: 'T9' }],
      ['+|d-2', {}],
      ['+|', {}],
      ['+|\u0000', {}]
    ] as const) {
      const gone = messageOf(await press('details', value, part))
      expect(gone).toMatchObject({ to: 'asker', text: expect.stringContaining('Ask again') })
    }
  })
})
