import type { InputBlock, ModalView } from '@slack/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkView } from '../../../src/adapters/room/check/index.js'
import { type FormId, formIds } from '../../../src/bot/forms/form-id.js'
import type { Delivery, FormValues, Message, Pressed } from '../../../src/bot/talk/talk.js'
import { seamhands } from '../../support/seamhand.js'
import { everyHow, startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
  await say('can we spray now?')
})
afterEach(() => talking.close())

const never = () => false
const say = (text: string, part: Partial<Delivery> = {}) => talking.talk.say(talking.delivery({ user: 'U0BOSS01', ...part }), text)
const open = async (id: FormId, part: Partial<Delivery> = {}) =>
  viewOf(await talking.talk.press(talking.delivery({ user: 'U0BOSS01', ...part }), `form:${id}`, `${id === 'start' ? '+' : 'demo'}|${id}`))
const send = (view: ModalView, values: FormValues, part: Partial<Delivery> = {}) =>
  talking.talk.submit(talking.delivery({ user: 'U0BOSS01', ...part }), view.callback_id ?? '', view.private_metadata ?? '', values)
const viewOf = (pressed: Pressed): ModalView => {
  if (pressed.kind !== 'form') throw new Error(`no form: ${pressed.message.text}`)
  return pressed.view
}
const textOf = async (sent: ReturnType<typeof send>) => {
  const result = await sent
  return result.kind === 'message' ? result.message.text : JSON.stringify(result.errors)
}
const entries = () => talking.store.entries({ workspace: 'local', site: 'demo' }, 0, 100)
const newest = async () => (await entries()).at(-1)?.entry

/** What stands in each field, as the chat service would send it back untouched. */
function shown(view: ModalView): FormValues {
  const inputs = view.blocks.filter((block): block is InputBlock => block.type === 'input')
  return Object.fromEntries(
    inputs.map(({ block_id, element }) => {
      const held = element as unknown as Record<string, unknown>
      const one = held.initial_value ?? held.initial_date ?? held.initial_time ?? (held.initial_option as { value: string } | undefined)?.value
      const many = (held.initial_options as { value: string }[] | undefined)?.map(({ value }) => value)
      return [block_id ?? '', ((one ?? many) as string | undefined) ?? null]
    })
  )
}

const labelOf = (view: ModalView, block: string) =>
  view.blocks.filter((each): each is InputBlock => each.type === 'input').find(({ block_id }) => block_id === block)?.label.text

describe('forms are filled with what is known', () => {
  it('a kit with the last one’s name, lot and date; what was not changed is not said again', async () => {
    await say('kit K7 iso 24 resin 23 lot L55 exp 2099-01-01')
    const view = await open('kit')
    expect(shown(view)).toMatchObject({ name: 'K7', lot: 'L55', expiry: '2099-01-01', iso: null, resin: null })

    await send(view, { ...shown(view), iso: '25.5', resin: '25', place: 'box', placeT: '30' })
    expect(await newest()).toMatchObject({ type: 'kit', subject: 'kit:K7', data: { isoC: 25.5, resinC: 25, place: 'box', placeC: 30 } })
    expect((await newest())?.data).not.toHaveProperty('lot')

    await send(view, { ...shown(view), name: 'K8', mixed: ['mixed'] })
    expect(await newest()).toMatchObject({ subject: 'kit:K8', data: { mixed: true, lot: 'L55', expiresOn: '2099-01-01' } })
  })

  it('a coupon with the last welder and its settings, in the person’s units; another welder takes none of them', async () => {
    await say('weld robot 41 mm film set 480 speed 2.5 by Ana')
    const view = await open('coupon', { units: 'us' })
    expect(shown(view)).toMatchObject({ welder: 'robot', set: '896', speed: '8.202', thick: '0.059', operator: 'Ana', widths: null, peel: null })

    await send(view, { ...shown(view), widths: '1.6', peel: 'film' })
    expect(await newest()).toMatchObject({ subject: 'welder:robot', data: { setC: 480, by: 'Ana', passed: true } })
    await send(view, { ...shown(view), welder: 'hand', widths: '1.6', peel: 'film' })
    expect(await newest()).toMatchObject({ subject: 'welder:hand', data: { passed: true } })
    expect((await newest())?.data).not.toHaveProperty('setC')
    expect((await newest())?.data).not.toHaveProperty('by')
  })

  it('a coupon with the sheet’s thickness before any was made; nothing that has to be measured', async () => {
    expect(shown(await open('coupon'))).toMatchObject({ welder: null, set: null, thick: '1.5' })
    await say('spray air 20 deck 18 rh 60 wind 10')
    expect(Object.values(shown(await open('readings'))).filter((value) => value !== null)).toEqual([])
  })

  it('what was laid with the kit in use, its area in the person’s units', async () => {
    await say('kit K7 mixed')
    const view = await open('laid', { units: 'us' })
    expect(shown(view)).toMatchObject({ kitName: 'K7' })
    expect(labelOf(view, 'area')).toBe('Area laid, ft²')

    expect(await textOf(send(view, { ...shown(view), area: '450', sheets: '2', robotM: '60' }))).toContain('450')
    expect(await newest()).toMatchObject({ type: 'laid', data: { areaM2: 41.806368, sheets: 2, robotM: 18.288, kit: 'K7' } })
  })

  it('the checklist with the date of the kit and what the sheet touches', async () => {
    await say('spray compatible kit K7 exp 2099-01-01')
    expect(shown(await open('checklist'))).toMatchObject({ contact: 'compatible', expiry: '2099-01-01', surfaces: null, startUp: null })
  })

  it('the settings of the site, of which only those are said that were changed', async () => {
    const view = await open('site')
    expect(shown(view)).toMatchObject({ units: 'metric', morning: '05:30', hoursFrom: '06:00', days: ['1', '2', '3', '4', '5', '6'] })
    expect(await textOf(send(view, shown(view)))).toContain('Site demo')
    expect((await entries()).filter(({ entry }) => entry.type === 'setting')).toEqual([])

    await send(view, { ...shown(view), morning: '05:00', hoursTo: '16:00', days: ['1', '2'], posts: [] })
    expect((await newest())?.data).toEqual({ morning: '05:00', hours: '06:00-16:00', days: [1, 2], posts: [] })
  })

  it('a new site with the person’s language and units, and this channel where it is nobody’s', async () => {
    await talking.store.savePerson('local', 'U0BOSS01', { lang: 'es', units: 'us' })
    const view = await open('start', { channel: 'C0HARBOUR' })
    expect(view.title.text).toBe('Una obra nueva')
    expect(shown(view)).toMatchObject({ lang: 'es', units: 'us', here: ['here'], evening: '17:00', zone: null })

    const made = await textOf(send(view, { ...shown(view), name: 'harbour', at: '50.1, 8.2', zone: 'Europe/Berlin', evening: '16:30' }))
    expect(made).toContain('La obra harbour está lista')
    expect((await talking.store.view({ workspace: 'local', site: 'harbour' }))?.base).toMatchObject({
      lang: 'es',
      units: 'us',
      channel: 'C0HARBOUR',
      evening: '16:30'
    })
    // The next one is near: its zone is known now.
    expect(shown(await open('start', { channel: 'C0HARBOUR' }))).toMatchObject({ zone: 'Europe/Berlin' })
  })
})

describe('the form of the punch list', () => {
  it.each(['flange loose', '3 pipes open', '1 done', 'list of drains', 'open corner'])(
    'adds what was typed, whatever it looks like: %s',
    async (text) => {
      await say('punch first')
      await send(await open('punch'), { text })
      expect(await newest()).toMatchObject({ type: 'note', subject: 'punch:2', data: { text: expect.stringContaining(text) } })
    }
  )
})

describe('forms keep what is wrong at its field', () => {
  it.each<[FormId, string]>([
    ['checklist', 'surfaces'],
    ['readings', 'air'],
    ['detail', 'details']
  ])('%s sent with nothing new in it says that nothing was stated, and logs nothing', async (id, block) => {
    await say('spray compatible kit K7 exp 2099-01-01')
    const before = (await entries()).length
    const view = await open(id)
    for (const values of [{}, shown(view)])
      expect(await send(view, values as FormValues)).toMatchObject({
        kind: 'errors',
        errors: { [block]: expect.stringContaining('Nothing was stated') }
      })
    expect((await entries()).length).toBe(before)
  })

  it.each<[FormValues, Readonly<Record<string, number>>]>([
    [
      { distance: '3,2', length: '4 cm' },
      { distanceM: 3.2, lengthMm: 40 }
    ],
    [
      { distance: '320 cm', length: '40 mm' },
      { distanceM: 3.2, lengthMm: 40 }
    ],
    [
      { distance: '3.2 m', length: '1 1/2 in' },
      { distanceM: 3.2, lengthMm: 38.1 }
    ]
  ])('a length says its own unit, else the field does: %j', async (values, data) => {
    await send(await open('void'), { course: '4', on: 'lap', ...values })
    expect(await newest()).toMatchObject({ type: 'void', data })
  })

  it('a fraction of an inch where inches are usual, and decimals as they are written there', async () => {
    await send(await open('void', { units: 'us' }), { course: '4', on: 'lap', distance: '10\' 6"', length: '1 1/2' })
    expect(await newest()).toMatchObject({ data: { distanceM: 3.2004, lengthMm: 38.1 } })
    expect(shown(await open('coupon', { lang: 'es' }))).toMatchObject({ thick: '1,5' })
    await send(await open('coupon'), { welder: 'robot', widths: '41, 40 and 42', peel: 'film', thick: '1,5' })
    expect(await newest()).toMatchObject({ type: 'coupon', data: { widthsMm: [41, 40, 42], thicknessMm: 1.5 } })
  })

  it.each<[FormId, FormValues, string]>([
    ['kit', { name: 'K7', iso: '24', resin: '240' }, 'resin'],
    ['kit', { name: 'kit seven' }, 'name'],
    ['coupon', { welder: 'robot', widths: '41', peel: 'film', set: '9000' }, 'set'],
    ['coupon', { welder: 'robot', widths: '41', peel: 'film', operator: '!!' }, 'operator'],
    ['laid', { area: '40', robotM: '40000', sheets: '4' }, 'robotM'],
    ['laid', { area: '40', sheets: '400' }, 'sheets'],
    ['void', { course: '4', on: 'lap', distance: '40', length: '40000' }, 'length'],
    ['site', { hoursFrom: '18:00', hoursTo: '06:00' }, 'hoursFrom'],
    ['site', { days: [] }, 'days'],
    ['start', { name: 'a b', at: '50.1, 8.2', zone: 'Europe/Berlin' }, 'name'],
    ['start', { name: 'north', at: 'Main Street 4', zone: 'Europe/Berlin' }, 'at'],
    ['start', { name: 'north', at: '91, 8.2', zone: 'Europe/Berlin' }, 'at'],
    ['start', { name: 'north', at: '50.1, 8.2', zone: 'Berlin' }, 'zone'],
    ['start', { name: 'demo', at: '50.1, 8.2', zone: 'Europe/Berlin', days: ['1'] }, 'name']
  ])('%s %j', async (id, values, block) => {
    const before = (await entries()).length
    const sent = await send(await open(id), values)
    expect(sent).toMatchObject({ kind: 'errors', errors: { [block]: expect.stringMatching(/\w/) } })
    expect((await entries()).length).toBe(before)
  })

  it.each<[FormId, FormValues, readonly string[]]>([
    ['kit', { name: 'K7', iso: '240', resin: '-99', mixed: ['mixed'], placeT: '300', place: 'box', used: '-4' }, ['iso', 'resin', 'place', 'used']],
    ['readings', { air: '200', deck: '18', rh: '140', wind: '40', gust: '30', rain: '900' }, ['air', 'rh', 'gust', 'rain']],
    ['coupon', { welder: 'robot', widths: 'wide', peel: 'film', set: '9000', speed: '99', operator: '!!' }, ['widths', 'set', 'speed', 'operator']],
    ['laid', { area: '-1', sheets: '400', robotM: '40000', handM: '5' }, ['area', 'sheets', 'robotM']],
    ['void', { course: '0', on: 'lap', distance: '4000', length: '40000' }, ['course', 'distance', 'length']],
    ['site', { hoursFrom: '18:00', hoursTo: '06:00', days: [] }, ['hoursFrom', 'days']],
    ['start', { name: 'a b', at: '91, 8.2', zone: 'Berlin', days: ['1'] }, ['name', 'at', 'zone']],
    // What is known of the workspace is a mistake as well: the name is taken.
    ['start', { name: 'demo', at: 'Main Street 4', zone: 'Berlin', days: ['1'] }, ['at', 'zone', 'name']]
  ])('and all that is wrong at once: %s %j', async (id, values, blocks) => {
    const before = await entries()
    const sent = await send(await open(id), values)
    expect(sent.kind === 'errors' ? Object.keys(sent.errors).sort() : sent).toEqual([...blocks].sort())
    const said = sent.kind === 'errors' ? Object.values(sent.errors) : []
    expect(said.filter((text) => /\w/.test(text)).length).toBe(blocks.length)
    expect(await entries()).toEqual(before)
    expect(await talking.store.sites('local')).toEqual(['demo'])
  })

  it('each with its own reason, and nobody is asked what only a supervisor may', async () => {
    const sent = await send(await open('readings'), { air: '200', rh: '140' })
    expect(sent).toMatchObject({ errors: { air: expect.stringContaining('60'), rh: expect.stringContaining('100') } })
    await talking.store.savePerson('local', 'U0CREW01', { role: 'crew' })
    const crew = await send(await open('start'), { name: 'north', at: '50.1, 8.2', zone: 'Europe/Berlin', days: ['1'] }, { user: 'U0CREW01' })
    expect(crew).toMatchObject({ errors: { name: expect.stringContaining('<@U0BOSS01>') } })
    expect(Object.keys(crew.kind === 'errors' ? crew.errors : {})).toEqual(['name'])
  })

  it('and stay open when something breaks on our side', async () => {
    const view = await open('void')
    const broken = await startTalking({
      append: async () => {
        throw new Error('a bug')
      }
    })
    const sent = await broken.talk.submit(broken.delivery(), 'void', view.private_metadata ?? '', { course: '4', on: 'lap', length: '40' })
    expect(sent).toMatchObject({ kind: 'errors', errors: { course: expect.stringContaining('ref1') } })
    await broken.close()
  })
})

describe('forms open at once', () => {
  it.each<[string, FormId]>([
    ['laid', 'laid'],
    ['probe', 'void'],
    ['coupon', 'coupon'],
    ['probeta', 'coupon'],
    ['défaut', 'void'],
    ['readings', 'readings'],
    ['day start', 'checklist'],
    ['kit form', 'kit'],
    ['formulario juego', 'kit'],
    ['formulaire chantier', 'site'],
    ['start', 'start'],
    ['/seamhand start', 'start']
  ])('by the word alone: %s', async (words, id) => {
    const message = await say(words)
    expect(message.form?.callback_id).toBe(id)
    // Where nothing can be opened (a thread, a mention) a button does it.
    const found = JSON.stringify(message.blocks).includes(`form:${id}`)
    expect(found).toBe(true)
  })

  it.each(['kit', 'weld', 'spray', 'site', 'laid 40 m2', 'probe list', 'kit K7', 'seal'])('and no other word does: %s', async (words) => {
    expect((await say(words)).form).toBeUndefined()
  })

  it('or say at once why they would be of no use', async () => {
    const asCrew = { user: 'U0CREW01' }
    const pressed = (id: FormId, part: Partial<Delivery> = asCrew) =>
      talking.talk.press(talking.delivery(part), `form:${id}`, `demo|${id}`).then((each) => (each as { message?: Message }).message?.text)
    expect(await pressed('site')).toContain('Ask a supervisor: <@U0BOSS01>')
    expect(await pressed('start')).toContain('Ask a supervisor: <@U0BOSS01>')
    await talking.store.savePerson('local', 'U0LOOK01', { role: 'inspector' })
    expect(await pressed('void', { user: 'U0LOOK01' })).toContain('only for the crew')
    await say('site demo closed')
    expect(await pressed('void')).toContain('it is closed')
    expect(await pressed('site', { user: 'U0BOSS01' })).toBeUndefined()
  })

  it.each(everyHow)('inside the service’s limits, filled as full as can be: $lang $units', async (how) => {
    await say(`kit K${'7'.repeat(18)} lot ${'L'.repeat(40)} exp 2099-01-01`)
    await say(`weld R${'2'.repeat(18)} 41 mm film set 480 speed 2.5 by ${'A'.repeat(40)}`)
    for (const id of formIds) expect(checkView(await open(id, { ...how, channel: 'C0HARBOUR' }), 'modal', never), id).toBeNull()
  })
})
