import { createHash } from 'node:crypto'
import { createCanvas } from '@napi-rs/canvas'
import { expect, it } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { createStore } from '../../../src/adapters/store/store.js'
import { fixedWeather } from '../../../src/adapters/weather/index.js'
import type { Ask } from '../../../src/bot/ask.js'
import type { Ports } from '../../../src/bot/context.js'
import type { FetchedPhoto } from '../../../src/bot/photos/fetched.js'
import { keepPhoto } from '../../../src/bot/photos/keep-photo.js'
import { respond } from '../../../src/bot/respond.js'
import { verifySite } from '../../../src/bot/verify.js'
import type { VoidState } from '../../../src/core/log/states/void.js'
import { forEachDatabase } from '../../support/databases.js'
import { iso } from '../../support/instant.js'

const key = { workspace: 'local', site: 'demo' }
const ask = (text: string, user = 'U1'): Ask => ({
  text,
  at: iso('2026-05-04T08:00:00Z'),
  workspace: 'local',
  site: 'demo',
  channel: null,
  user,
  role: 'crew',
  via: 'room',
  lang: null,
  units: null,
  log: true,
  claim: null
})

function fetched(bytes: Uint8Array): FetchedPhoto {
  return { kind: 'bytes', bytes, base64: Buffer.from(bytes).toString('base64'), sha256: createHash('sha256').update(bytes).digest('hex') }
}

const jpeg = fetched(createCanvas(8, 6).toBuffer('image/jpeg'))
const wanted = (file: string, subject = 'void:1') => ({ site: 'demo', subject, file })
const sheets = readSheets(null)
const never = async () => {
  throw new Error('nothing is drawn here')
}

forEachDatabase((open) => {
  async function start(name?: string) {
    const store = createStore(await open(name))
    const ports: Ports = { store, weather: fixedWeather(null), sheets, draw: never, lang: 'en', units: 'metric', report: String }
    return { store, ports, say: async (text: string, user?: string) => (await respond(ask(text, user), ports)).reply }
  }

  it('keeps a photo once by its hash, as an entry of its own beside what it shows', async () => {
    const { store, ports, say } = await start()
    await say('probe course 4 lap 3 m 40 mm photo F1')
    await say('probe course 5 lap 3 m 40 mm photo F2')
    expect(await keepPhoto(ask(''), wanted('F1'), jpeg, ports)).toEqual({ kind: 'kept', id: 'demo-3' })
    expect(await keepPhoto(ask(''), wanted('F2', 'void:2'), jpeg, ports)).toEqual({ kind: 'kept', id: 'demo-4' })

    const sha256 = jpeg.kind === 'bytes' ? jpeg.sha256 : ''
    const kept = await store.keepsake('local', sha256)
    expect(kept?.kind).toBe('photo')
    expect(
      createHash('sha256')
        .update(Buffer.from(kept?.body ?? '', 'base64'))
        .digest('hex')
    ).toBe(sha256)
    const view = await store.view(key)
    const state = (await view?.state('void:1'))?.state as unknown as { is: VoidState } | undefined
    expect(state?.is.pictures).toMatchObject({ awaited: [], photos: [{ sha256, mime: 'image/jpeg', widthPx: 8, heightPx: 6, file: 'F1' }] })
    expect((await verifySite(store, key, []))?.firstBad).toBeNull()

    // The photo goes with what it shows: it does not stand in the way of taking that back.
    expect(await say('undo demo-1')).toMatchObject({ ok: true })
    expect(await say('probe 1 fixed')).toMatchObject({ error: { code: 'not-found' } })
    expect((await verifySite(store, key, []))?.firstBad).toBeNull()
  })

  it('has no second effect when the same file comes again, even at once', async () => {
    const { store, ports, say } = await start()
    await say('probe course 4 lap 3 m 40 mm photo F1')
    const all = await Promise.all([1, 2, 3].map(() => keepPhoto(ask(''), wanted('F1'), jpeg, ports)))
    expect(new Set(all.map((one) => JSON.stringify(one))).size).toBe(1)
    expect((await store.view(key))?.head.seq).toBe(2)
  })

  it('keeps none of what is no photo, did not come, or was undone meanwhile', async () => {
    const { store, ports, say } = await start()
    await say('probe course 4 lap 3 m 40 mm')
    const heic = fetched(Uint8Array.from('\0\0\0\u0018ftypheic\0\0\0\0', (char) => char.charCodeAt(0)))
    expect(await keepPhoto(ask(''), wanted('F1'), heic, ports)).toEqual({ kind: 'refused', why: 'heic' })
    expect(await keepPhoto(ask(''), wanted('F1'), { kind: 'failed', why: 'away' }, ports)).toEqual({ kind: 'refused', why: 'away' })
    expect(await keepPhoto(ask(''), wanted('F1', 'void:7'), jpeg, ports)).toEqual({ kind: 'refused', why: 'gone' })
    await say('undo')
    expect(await keepPhoto(ask(''), wanted('F3'), jpeg, ports)).toEqual({ kind: 'refused', why: 'gone' })
    expect(await keepPhoto(ask(''), wanted('F4', 'day:2026-05-04'), jpeg, ports)).toMatchObject({ kind: 'kept' })
    expect((await store.view(key))?.head.seq).toBe(3)
  })

  it('lets one of two people close a void, and tells the other since when', async () => {
    const here = await start('race')
    const there = await start('race')
    await here.say('probe course 4 lap 3 m 40 mm')
    for (const step of ['fixed', 'passed']) {
      const both = await Promise.all([here.say(`probe 1 ${step}`, 'U1'), there.say(`probe 1 ${step}`, 'U2')])
      expect(both.filter(({ ok }) => ok)).toHaveLength(1)
      expect(both.find(({ ok }) => !ok)).toMatchObject({ error: { code: 'wrong-state' }, text: expect.stringContaining('since 10:00') })
    }
    const numbers = await Promise.all([here, there, here, there].map(({ say }) => say('probe course 4 lap 9 m 40 mm')))
    expect(numbers.map(({ numbers }) => (numbers as { void: number }).void).sort()).toEqual([2, 3, 4, 5])
    expect((await verifySite(here.store, key, []))?.firstBad).toBeNull()
  })
})
