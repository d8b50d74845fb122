import type { ActionsBlock, Button, ModalView } from '@slack/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkMessage, checkView } from '../../../src/adapters/room/check/index.js'
import { forms } from '../../../src/bot/forms/index.js'
import { StoreError } from '../../../src/bot/ports.js'
import type { Message, Pressed } from '../../../src/bot/talk/talk.js'
import { seamhands } from '../../support/seamhand.js'
import { everyHow, startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
})
afterEach(() => talking.close())

const never = () => false
const buttonsOf = ({ blocks }: Message): Button[] =>
  blocks.filter((block): block is ActionsBlock => block.type === 'actions').flatMap(({ elements }) => elements as Button[])
const button = (message: Message, actionId: string): Button => {
  const found = buttonsOf(message).find(({ action_id }) => action_id === actionId)
  if (found === undefined) throw new Error(`no ${actionId} among ${buttonsOf(message).map(({ action_id }) => action_id)}`)
  return found
}
const press = (message: Message, actionId: string) => talking.talk.press(talking.delivery(), actionId, button(message, actionId).value ?? '')
const messageOf = (pressed: Pressed): Message => {
  if (pressed.kind !== 'message') throw new Error('a form')
  return pressed.message
}
const viewOf = (pressed: Pressed): ModalView => {
  if (pressed.kind !== 'form') throw new Error('no form')
  return pressed.view
}
const seq = async () => (await talking.store.view({ workspace: 'local', site: 'demo' }))?.head.seq

describe('talking', () => {
  it('answers about the site to its channel, help and mistakes to the asker alone', async () => {
    const { talk, delivery } = talking
    expect((await talk.say(delivery(), 'can we spray now?')).to).toBe('channel')
    expect((await talk.say(delivery(), 'help')).to).toBe('asker')
    expect((await talk.say(delivery(), 'me lang es')).to).toBe('asker')
    expect((await talk.say(delivery(), 'spray blorp')).to).toBe('asker')
  })

  it('takes whoever speaks first for the supervisor, and nobody after', async () => {
    const { talk, delivery } = talking
    expect((await talk.say(delivery({ user: 'U1' }), 'site morning 06:00')).to).toBe('channel')
    const refused = await talk.say(delivery({ user: 'U2' }), 'site morning 07:00')
    expect(refused.text).toMatch(/supervisor/)
    expect(await talking.store.person('local', 'U1')).toMatchObject({ role: 'supervisor' })
  })

  it('lets an inspector ask everything, and logs nothing of it', async () => {
    await talking.store.savePerson('local', 'U9', { role: 'inspector' })
    const answer = await talking.talk.say(talking.delivery({ user: 'U9' }), 'spray air 20 deck 18')

    expect(answer.text).toContain('spray')
    expect(answer.text).toContain('Nothing was logged.')
    expect(buttonsOf(answer)).toEqual([])
    expect(await seq()).toBe(0)
  })

  it('goes on from each answer by its buttons: void, repaired, passed, and undo', async () => {
    const { talk, delivery } = talking
    const opened = await talk.say(delivery(), 'probe course 4 end 3.2 m 40 mm')
    expect(buttonsOf(opened).map(({ action_id }) => action_id)).toEqual(['say:fixed', 'say:undo'])

    const repaired = messageOf(await press(opened, 'say:fixed'))
    expect(buttonsOf(repaired).map(({ action_id }) => action_id)).toEqual(['say:passed', 'say:failed', 'say:undo'])

    const passed = messageOf(await press(repaired, 'say:passed'))
    // The weld was made a moment ago: probed warm, so that the words wait and the void is passed.
    expect(passed.text).toMatch(/^△ .*probed warm/)

    const undone = messageOf(await press(passed, 'say:undo'))
    expect(undone.text).toContain('demo-3')
    expect((await talk.say(delivery(), 'probe list')).text).toContain('repaired')
  })

  it('has no second effect when a delivery comes again, and the same answer', async () => {
    const { talk, delivery } = talking
    const once = delivery({ claim: 'same' })
    const first = await talk.say(once, 'probe course 4 end 3.2 m 40 mm')
    const second = await talk.say(once, 'probe course 4 end 3.2 m 40 mm')

    expect(second).toEqual(first)
    expect(await seq()).toBe(1)
  })

  it('says what broke with a reference, and what the store said when it is the store', async () => {
    const broken = await startTalking({
      person: async () => {
        throw new Error('a bug')
      }
    })
    const away = await startTalking({
      append: async () => {
        throw new StoreError('the disk is full')
      }
    })

    const said = await broken.talk.say(broken.delivery(), 'spray')
    expect(said).toMatchObject({ to: 'asker', text: expect.stringContaining('ref1') })
    expect(broken.bugs).toHaveLength(1)
    expect((await away.talk.say(away.delivery(), 'spray')).text).toContain('the disk is full')
    expect(away.bugs).toEqual([])
    await broken.close()
    await away.close()
  })

  it('answers a button that is none of ours, a form of a site that was closed meanwhile, and a form with nothing in it', async () => {
    const { talk, delivery } = talking
    expect(messageOf(await talk.press(delivery(), 'say:undo', 'nonsense')).to).toBe('asker')
    expect(messageOf(await talk.press(delivery(), 'form:nothing', 'demo|nothing')).to).toBe('asker')
    expect(await talk.submit(delivery(), 'elsewhere', '{}', {})).toMatchObject({ kind: 'message' })

    const view = viewOf(await talk.press(delivery(), 'form:coupon', 'demo|coupon'))
    await talk.say(delivery(), 'site demo closed')
    const closed = await talk.submit(delivery(), 'coupon', view.private_metadata ?? '', {
      welder: 'robot',
      widths: '41',
      peel: 'film',
      warm: [],
      set: null
    })
    expect(JSON.stringify(closed)).toMatch(/closed/)
  })

  it('never gives a channel to a second site: what is said in it has one meaning', async () => {
    const { talk, delivery, store } = talking
    const made = await talk.say(delivery(), 'site new harbour at 50.1,8.2 zone Europe/Berlin')
    expect(made.text).not.toContain('invented')
    expect(await store.siteOfChannel('local', 'C1')).toBeNull()
    await talk.say(delivery(), 'spray deck 20')
    expect((await store.view({ workspace: 'local', site: 'demo' }))?.head.seq).toBe(2)

    await talk.say(delivery({ channel: 'C0NORTH12' }), 'site new north at 50.1,8.2 zone Europe/Berlin')
    const refused = await talk.say(delivery(), 'site harbour channel <#C0NORTH12|north>')
    expect(refused).toMatchObject({ to: 'asker', text: expect.stringContaining('another site') })
    expect(await store.siteOfChannel('local', 'C0NORTH12')).toBe('north')
  })

  it('does not close a site over a void that is not settled', async () => {
    const { talk, delivery } = talking
    await talk.say(delivery(), 'probe course 4 end 3.2 m 40 mm')
    expect((await talk.say(delivery(), 'site demo closed')).text).toContain('voids are left')
    await talk.say(delivery(), 'probe 1 fixed')
    await talk.say(delivery(), 'probe 1 passed')
    expect((await talk.say(delivery(), 'site demo closed')).to).toBe('channel')
  })

  it('makes a site in the channel it was asked in, which is the site’s from then on', async () => {
    const { talk, delivery } = talking
    await talk.say(delivery({ channel: 'C7' }), 'site new harbour at 50.1,8.2 zone Europe/Berlin')

    expect(await talking.store.siteOfChannel('local', 'C7')).toBe('harbour')
    await talk.say(delivery({ channel: 'C7' }), 'site channel off')
    expect(await talking.store.siteOfChannel('local', 'C7')).toBeNull()
  })
})

describe('forms', () => {
  it('say words, which say entries: the checklist', async () => {
    const { talk, delivery } = talking
    const view = viewOf(await talk.press(delivery(), 'form:checklist', 'demo|checklist'))
    const values = {
      surfaces: ['deck dry', 'fleece dry', 'clean', 'relaxed'],
      weather: ['no rain', 'no thunder'],
      intakes: 'none',
      contact: 'compatible',
      kit: ['mixed'],
      expiry: '2099-01-01',
      startUp: ['tight', 'purged', 'nozzle', 'tested']
    }

    const sent = await talk.submit(delivery(), view.callback_id ?? '', view.private_metadata ?? '', values)
    expect(sent).toMatchObject({ kind: 'message', channel: 'C1', message: { to: 'channel' } })
    expect(sent.kind === 'message' && sent.message.text).toContain('checklist go')
  })

  it.each([
    ['readings', { air: '20.5', deck: '18', rh: '60', wind: '10', gust: '18', rain: '10', iso: null, resin: null }, 'spray'],
    ['coupon', { welder: 'hand', widths: '41 39 40', peel: 'film', warm: [], set: '480' }, 'coupon'],
    ['void', { course: '4', on: 'end', distance: '3.2', length: '40', cause: ['wet', 'dirty'] }, 'void 1: course 4']
  ])('say words, which say entries: %s', async (id, values, said) => {
    const { talk, delivery } = talking
    const view = viewOf(await talk.press(delivery(), `form:${id}`, `demo|${id}`))

    const sent = await talk.submit(delivery(), id, view.private_metadata ?? '', values)
    expect(sent.kind === 'message' && sent.message.text).toContain(said)
  })

  it('keep a mistake at its field, and the form open', async () => {
    const { talk, delivery } = talking
    const readings = viewOf(await talk.press(delivery(), 'form:readings', 'demo|readings'))
    const coupon = viewOf(await talk.press(delivery(), 'form:coupon', 'demo|coupon'))

    expect(await talk.submit(delivery(), 'readings', readings.private_metadata ?? '', { air: '20', deck: '900' })).toEqual({
      kind: 'errors',
      errors: { deck: expect.stringContaining('900') },
      words: 'spray air 20 deck 900'
    })
    expect(await talk.submit(delivery(), 'coupon', coupon.private_metadata ?? '', { welder: 'robot', widths: 'wide', peel: 'film' })).toEqual({
      kind: 'errors',
      errors: { widths: expect.stringContaining('wide') },
      words: 'weld robot wide film'
    })
    expect(await seq()).toBe(0)
  })

  it.each(everyHow)('and every message and home stay inside the service’s limits: $lang $units', async (how) => {
    const { talk, delivery } = talking
    for (const id of Object.keys(forms)) {
      const view = viewOf(await talk.press(delivery(how), `form:${id}`, `demo|${id}`))
      expect(checkView(view, 'modal', never), id).toBeNull()
    }
    for (const words of [
      'can we spray now?',
      'weld',
      'weld robot 36 mm parted',
      'probe course 1 3 m 20 mm',
      'probe list',
      'kit',
      'foam 45 s',
      'laid 40 m2',
      'site',
      'help',
      'help weld',
      'me',
      'strip 2 m',
      'nonsense'
    ]) {
      const message = await talk.say(delivery(how), words)
      expect(checkMessage(message.blocks, never), words).toBeNull()
    }
    expect(checkView(await talk.home(delivery(how)), 'home', never)).toBeNull()
  })
})
