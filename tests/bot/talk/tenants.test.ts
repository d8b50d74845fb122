import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { openSqlite } from '../../../src/adapters/store/open-sqlite.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import type { Ports } from '../../../src/bot/context.js'
import { createTalk } from '../../../src/bot/talk/create-talk.js'
import type { Delivery, Talk } from '../../../src/bot/talk/talk.js'
import { defaultSettings } from '../../../src/core/site.js'
import { draw } from '../../../src/wiring/papers.js'
import { freshFolder, seamhands } from '../../support/seamhand.js'
import { morningAt } from '../../support/talking.js'

seamhands()
const [theirs, mine] = ['T1', 'T2']
const base = { ...defaultSettings, lat: 50, lon: 8, zone: 'Europe/Berlin' }

let store: ReturnType<typeof createStore>
let talk: Talk
let count = 0

/** Both workspaces have a site `north`; the neighbour's alone has entries, a void, and the site `secret-roof`. */
beforeEach(async () => {
  store = createStore(await openSqlite(freshFolder(), { server: false }))
  const ports: Ports = { store, weather: fixedWeather(null), sheets: readSheets(null), draw, lang: 'en', units: 'metric', report: () => 'bug' }
  talk = createTalk(ports, store)
  await store.createSite({ workspace: theirs, site: 'north' }, { ...base, channel: 'C1' })
  await store.createSite({ workspace: theirs, site: 'secret-roof' }, { ...base, channel: 'C2' })
  await store.createSite({ workspace: mine, site: 'north' }, { ...base, channel: 'C9' })
  await talk.say(from(theirs, { channel: 'C1' }), 'spray air 33.3 deck 44.4')
  await talk.say(from(theirs, { channel: 'C2' }), 'probe course 7 end 3.2 m 40 mm')
  await talk.say(from(mine, { channel: 'C9' }), 'air air 12')
})
afterEach(() => store.close())

function from(workspace: string, part: Partial<Delivery> = {}): Delivery {
  count += 1
  return { workspace, user: 'U1', channel: null, via: 'slack', at: morningAt, claim: `d${count}`, lang: null, units: null, ...part }
}

/** Everything that is the neighbour's, as it lies in the store. */
async function neighbours(): Promise<string> {
  const sites = await store.sites(theirs)
  const rows = await Promise.all(
    sites.map(async (site) => [site, await store.entries({ workspace: theirs, site }, 0, 100), await store.person(theirs, 'U1')])
  )
  return JSON.stringify(rows)
}

const telling = /33\.3|44\.4|secret|course 7|3\.2 m/i

describe('from another workspace', () => {
  it.each([
    'north|undo north-1',
    'north|correct north-1 air 3',
    'secret-roof|probe 1 fixed',
    'secret-roof|probe list',
    'secret-roof|site',
    'secret-roof|day',
    'T1/north|spray',
    '../T1/north|spray',
    "north' or workspace='T1|spray"
  ])('a button with the words %s reaches nothing of theirs', async (value) => {
    const before = await neighbours()
    for (const action of ['say:undo', 'say:fixed']) {
      const pressed = await talk.press(from(mine), action, value)
      // What one asked for oneself may be said back, and the example of the usage.
      expect(JSON.stringify(pressed).replaceAll('secret-roof', '').replaceAll('course 4 end 3.2 m', '')).not.toMatch(telling)
    }
    expect(await neighbours()).toBe(before)
  })

  it.each(['north', 'secret-roof'])("a form for their site %s opens without a word of it, and is refused or is one's own", async (site) => {
    const before = await neighbours()
    const opened = await talk.press(from(mine), 'form:void', `${site}|void`)
    expect(JSON.stringify(opened).replaceAll('secret-roof', '')).not.toMatch(telling)
    const metadata = JSON.stringify({ site, channel: 'C1', lang: 'en', units: 'metric', files: [] })
    const sent = await talk.submit(from(mine), 'readings', metadata, { air: '21', deck: '22' })
    expect(JSON.stringify(sent).replaceAll('secret-roof', '')).not.toMatch(telling)
    expect(await neighbours()).toBe(before)
    expect(await store.view({ workspace: mine, site: 'secret-roof' })).toBeNull()
  })

  it('a channel of theirs is no channel of ours', async () => {
    const before = await neighbours()
    const answer = await talk.say(from(mine, { channel: 'C2' }), 'probe list')
    expect(answer.text).not.toMatch(telling)
    expect(await neighbours()).toBe(before)
  })

  it("home shows one's own sites alone", async () => {
    const home = JSON.stringify(await talk.home(from(mine)))
    expect(home).toContain('north')
    expect(home).not.toMatch(telling)
    expect(JSON.stringify(await talk.home(from('T3')))).not.toMatch(/north|secret/)
  })

  it('a delivery with the id of theirs gets an answer of its own', async () => {
    const claim = 'command:1.2.3'
    await talk.say(from(theirs, { channel: 'C1', claim }), 'spray air 31.7')
    const answer = await talk.say(from(mine, { channel: 'C9', claim }), 'spray air 13')
    expect(answer.text).not.toContain('31.7')
    const own = await store.entries({ workspace: mine, site: 'north' }, 0, 100)
    expect(JSON.stringify(own.map(({ entry }) => entry.data))).toContain('13')
  })

  it('what is kept by hash is kept for each alone, also where the hash is known', async () => {
    const kept = (await store.entries({ workspace: theirs, site: 'north' }, 0, 100)).find(({ entry }) => entry.type === 'decision')
    const data = (kept?.entry.data ?? {}) as { readonly limits?: { readonly sha256?: string } }
    const sha256 = data.limits?.sha256 ?? ''
    expect(await store.keepsake(theirs, sha256)).not.toBeNull()
    expect(await store.keepsake('T3', sha256)).toBeNull()
  })

  it('a supervisor of one is nobody in another', async () => {
    await talk.say(from(mine, { user: 'U5' }), 'help')
    await talk.say(from(mine, { user: 'U1', channel: 'C9' }), 'site morning 06:00')
    expect((await store.person('T3', 'U1')).role).toBeNull()
    expect((await talk.say(from(theirs, { user: 'U5', channel: 'C1' }), 'site morning 07:00')).text).toMatch(/supervisor/)
  })
})
