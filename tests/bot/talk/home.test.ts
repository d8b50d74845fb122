import type { ActionsBlock, Button, HomeView, SectionBlock } from '@slack/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkView } from '../../../src/adapters/room/check/index.js'
import type { Delivery } from '../../../src/bot/talk/talk.js'
import { defaultSettings } from '../../../src/core/site.js'
import { seamhands } from '../../support/seamhand.js'
import { everyHow, startTalking, type Talking } from '../../support/talking.js'

seamhands()
let talking: Talking
beforeEach(async () => {
  talking = await startTalking()
  await talking.store.savePerson('local', 'U0BOSS01', { role: 'supervisor' })
})
afterEach(() => talking.close())

const never = () => false
const base = { ...defaultSettings, lat: 50, lon: 8, zone: 'Europe/Berlin', posts: [...defaultSettings.posts], days: [...defaultSettings.days] }
const make = (site: string, workspace = 'local', part: object = {}) => talking.store.createSite({ workspace, site }, { ...base, ...part })
const home = (part: Partial<Delivery> = {}) => talking.talk.home(talking.delivery({ user: 'U0BOSS01', channel: null, claim: null, ...part }))
const say = (text: string, channel = 'C1', user = 'U0BOSS01') => talking.talk.say(talking.delivery({ user, channel }), text)
const textOf = ({ blocks }: HomeView) => JSON.stringify(blocks)
const buttonsOf = ({ blocks }: HomeView) =>
  blocks.filter((block): block is ActionsBlock => block.type === 'actions').flatMap(({ elements }) => elements as Button[])
const sitesIn = ({ blocks }: HomeView) =>
  blocks.flatMap((block) => (block.type === 'section' ? (/^\*([a-z0-9-]+)\*/.exec((block as SectionBlock).text?.text ?? '')?.[1] ?? []) : []))

describe('home', () => {
  it('tells of a site what can be done now and next, what stands open, its kits and its next post', async () => {
    await say('probe course 4 end 3.2 m 40 mm')
    await say('probe course 5 1 m 30 mm')
    await say('probe 2 fixed')
    await say('weld robot 30 mm parted')
    await say('laid 40 m2 robot 20 m')
    await say('kit K7 iso 10 resin 10 box 30')
    await say('punch flange loose')
    const view = await home()
    const text = textOf(view)

    expect(text).toMatch(/\*demo\* \(invented site and weather\)/)
    expect(text).toMatch(/window to spray|to spray: /)
    expect(text).toContain('void 1: course 4, end joint, at 3.2 m, 40 mm long, open')
    expect(text).toContain('20 m on hold')
    expect(text).toContain('punch list: 1')
    expect(text).toMatch(/robot: not cleared/)
    expect(text).toMatch(/kit K7: ready/)
    expect(text).toContain('no posts: the site has no channel')
    expect(buttonsOf(view).map(({ action_id }) => action_id)).toEqual([
      'say:fixed',
      'say:passed',
      'form:coupon',
      'say:punchDone',
      'form:checklist',
      'form:start'
    ])
    expect(buttonsOf(view)[0]?.text.text).toBe('Void 1: repaired')
  })

  it('does the next thing by its buttons, and shows the one after', async () => {
    await say('probe course 4 end 3.2 m 40 mm')
    const [fixed] = buttonsOf(await home())
    await talking.talk.press(talking.delivery({ user: 'U0BOSS01', channel: null }), 'say:fixed', fixed?.value ?? '')
    const [passed] = buttonsOf(await home())
    expect(passed?.text.text).toBe('Void 1: passed')
    await talking.talk.press(talking.delivery({ user: 'U0BOSS01', channel: null }), 'say:passed', passed?.value ?? '')
    expect(textOf(await home())).not.toContain('void 1')
  })

  it('shows a supervisor all sites, those first that need somebody, and a post to come', async () => {
    await make('able', 'local', { channel: 'C0ABLE001' })
    await make('busy', 'local', { channel: 'C0BUSY001' })
    await make('shut', 'local', { closed: true })
    await say('probe course 4 end 3.2 m 40 mm', 'C0BUSY001')
    const view = await home()
    expect(sitesIn(view)[0]).toBe('busy')
    expect(sitesIn(view)).toHaveLength(3)
    expect(textOf(view)).toContain('next post: evening, 17:00')
    expect(textOf(view)).not.toContain('shut')
  })

  it('shows a crew its own sites where it has any, and no button that sets a site up', async () => {
    await make('able', 'local', { channel: 'C0ABLE001' })
    expect(sitesIn(await home({ user: 'U0CREW01' }))).toEqual(['able', 'demo'])
    await say('spray air 20', 'C0ABLE001', 'U0CREW01')
    const view = await home({ user: 'U0CREW01' })
    expect(sitesIn(view)).toEqual(['able'])
    expect(buttonsOf(view).map(({ action_id }) => action_id)).not.toContain('form:start')
  })

  it('gives an inspector no button that logs, and makes nobody a supervisor who only looks', async () => {
    await talking.store.savePerson('local', 'U0LOOK01', { role: 'inspector' })
    expect(buttonsOf(await home({ user: 'U0LOOK01' })).map(({ action_id }) => action_id)).toEqual(['say:spray'])
    await make('north', 'T9')
    await home({ workspace: 'T9', user: 'U5' })
    expect((await talking.store.person('T9', 'U5')).role).toBeNull()
  })

  it('stays inside the service’s limits with many sites, and says how many more', async () => {
    for (let n = 0; n < 45; n += 1) await make(`site-${String(n).padStart(2, '0')}-${'x'.repeat(28)}`)
    await make('secret', 'T2')
    for (let n = 0; n < 14; n += 1) await say(`probe course ${n + 1} end 3.2 m 40 mm`)
    for (const how of everyHow) {
      const view = await home(how)
      expect(checkView(view, 'home', never)).toBeNull()
      expect(sitesIn(view)).toHaveLength(15)
      expect(sitesIn(view)[0]).toBe('demo')
      expect(textOf(view)).toContain('31')
      expect(textOf(view)).not.toContain('secret')
    }
  })
})
