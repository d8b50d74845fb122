import { beforeEach, describe, expect, it } from 'vitest'
import { readSheets } from '../../../src/adapters/limits/files.js'
import { sampleWeather } from '../../../src/adapters/weather/index.js'
import type { Ports } from '../../../src/bot/context.js'
import { type WhatIfAsked, whatIf } from '../../../src/bot/talk/what-if.js'
import { iso } from '../../support/instant.js'
import { type Seamhand, seamhands } from '../../support/seamhand.js'

const open = seamhands()
const never = async (): Promise<never> => {
  throw new Error('nothing may be drawn, and nothing written')
}
const monday = iso('2026-05-04T08:00:00Z')

let on: Seamhand
let ports: Ports
beforeEach(async () => {
  on = await open({ weather: 'sample' })
  const store = { ...on.store, append: never, savePerson: never, createSite: never }
  ports = { store, weather: sampleWeather(), sheets: readSheets(null), draw: never, lang: 'en', units: 'metric', report: String }
})

const asked = (part: Partial<WhatIfAsked> = {}): WhatIfAsked => ({
  workspace: 'local',
  site: 'demo',
  user: 'U1',
  at: monday,
  lang: null,
  units: null,
  ...part
})

describe('what would be said', () => {
  it('is word for word what the same question is answered when it is not logged', async () => {
    for (const lang of ['en', 'es', 'fr'] as const) {
      const told = (await whatIf(asked({ lang, units: 'us' }), ports))?.told
      for (const kind of ['spray', 'day'] as const) {
        const reply = await on.ask(kind, { lang, units: 'us', log: false, role: 'crew' })
        expect(told?.find((one) => one.kind === kind)).toEqual({ kind, text: reply.text, blocks: reply.blocks })
      }
    }
  })

  it('writes the morning post of that day, in the language asked for', async () => {
    const post = async (at: string, lang: 'en' | 'fr') =>
      (await whatIf(asked({ at: iso(at), lang }), ports))?.told.find(({ kind }) => kind === 'morning')?.text
    expect(await post('2026-05-05T03:30:00Z', 'en')).toMatch(/spray \(forecast\), demo, 5 May 2026/)
    expect(await post('2026-05-06T03:30:00Z', 'fr')).toMatch(/6 mai 2026/)
  })

  it('leaves the log, the people and the files as they are', async () => {
    await on.ask('/spray air 12', { log: true })
    const before = await on.head()
    for (const at of ['2026-05-03T22:00:00Z', '2026-05-04T12:00:00Z', '2026-05-10T21:45:00Z'])
      expect(await whatIf(asked({ at: iso(at) }), ports)).not.toBeNull()
    expect(await on.head()).toEqual(before)
  })

  it('goes by what is logged so far', async () => {
    const first = async () => (await whatIf(asked(), ports))?.told[0]?.text
    const before = await first()
    await on.ask('/spray wind 60 gust 70', { at: '2026-05-04T07:50:00Z' })
    expect(await first()).not.toBe(before)
    expect(await first()).toMatch(/^✕ NO-GO/)
  })

  it('knows the week at the site, also where clocks change in it', async () => {
    const week = async (at: string) => {
      const told = await whatIf(asked({ at: iso(at) }), ports)
      return told === null ? null : { from: told.from, hours: (told.to - told.from) / 3600, next: told.nextMorning }
    }
    // 2026-05-04 is a Monday; Berlin is two hours ahead in summer. Clocks of the EU go on at 01:00 UTC of 2026-03-29, a Sunday (Directive 2000/84/EC).
    expect(await week('2026-05-04T08:00:00Z')).toEqual({ from: iso('2026-05-03T22:00:00Z'), hours: 168, next: iso('2026-05-05T03:30:00Z') })
    expect(await week('2026-05-04T02:00:00Z')).toMatchObject({ next: iso('2026-05-04T03:30:00Z') })
    expect(await week('2026-05-10T21:45:00Z')).toEqual({ from: iso('2026-05-03T22:00:00Z'), hours: 168, next: null })
    expect(await week('2026-03-29T12:00:00Z')).toEqual({ from: iso('2026-03-22T23:00:00Z'), hours: 167, next: null })
  })

  it('is nothing where there is no such site, or its weather is real', async () => {
    await on.ask('site new north at 60,10 zone Europe/Oslo')
    expect(await whatIf(asked({ site: 'nowhere' }), ports)).toBeNull()
    expect(await whatIf(asked({ site: 'north' }), ports)).toBeNull()
  })
})
