import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { WhatIf } from '../../../src/bot/talk/what-if.js'
import { type FakeApp, startRoom } from '../../support/room.js'

const at = 1_777_881_600
const answer: WhatIf = {
  at,
  from: at - 122_400,
  to: at + 482_400,
  zone: 'Europe/Berlin',
  nextMorning: null,
  told: [{ kind: 'spray', text: '✕ NO-GO: spray', blocks: [] }]
}

let app: FakeApp
let asked: unknown[]
let hold: Promise<void> | null
beforeEach(async () => {
  asked = []
  hold = null
  app = await startRoom({
    whatIf: async (question) => {
      asked.push(question)
      await hold
      return question.site === 'demo' ? answer : null
    }
  })
})
afterEach(() => app.close())

const path = (query: Record<string, string>) =>
  `/room/what-if?${new URLSearchParams({ site: 'demo', user: 'crew', at: '2026-05-04T08:00:00Z', ...query })}`
const status = async (query: Record<string, string>, headers: Record<string, string> = {}) => (await app.page(path(query), undefined, headers)).status

describe('what would be said at an instant', () => {
  it('is told as JSON, instants in ISO, and passes on who asks in which words', async () => {
    const response = await app.page(path({ lang: 'fr', units: 'us', at: '2026-05-04T10:00:00+02:00' }))
    expect(await response.json()).toEqual({
      at: '2026-05-04T08:00:00Z',
      from: '2026-05-02T22:00:00Z',
      to: '2026-05-09T22:00:00Z',
      zone: 'Europe/Berlin',
      nextMorning: null,
      told: answer.told
    })
    expect(asked).toEqual([{ site: 'demo', user: 'U0CREW', at, lang: 'fr', units: 'us' }])
  })

  it('is asked for with an instant of this century and a site that has supposing', async () => {
    const wrong = [
      '',
      'now',
      '2026-05-04',
      '2026-05-04T08:00:00',
      '1999-12-31T23:59:59Z',
      '2100-01-01T00:00:00Z',
      '+275760-09-13T00:00:00Z',
      '9'.repeat(5000)
    ]
    for (const text of wrong) expect(await status({ at: text }), text.slice(0, 40)).toBe(400)
    for (const site of ['', 'x'.repeat(101)]) expect(await status({ site })).toBe(400)
    expect(await status({ user: 'nobody' })).toBe(400)
    expect(asked).toEqual([])
    expect(await status({ site: 'north' })).toBe(404)
    expect(await status({ lang: 'de', units: 'furlongs' })).toBe(200)
    expect(asked.at(-1)).toMatchObject({ lang: null, units: null })
  })

  it('is for the page alone', async () => {
    expect(await status({}, { 'x-room-key': 'wrong' })).toBe(403)
    expect(await status({}, { origin: 'http://elsewhere.example' })).toBe(403)
    expect((await app.page(path({}), {})).status).toBe(404)
    expect(asked).toEqual([])
  })

  it('takes three at once and no more, and goes on after them', async () => {
    let release = () => {}
    hold = new Promise((resolve) => {
      release = resolve
    })
    const three = [status({}), status({}), status({})]
    await app.until(() => asked.length === 3)
    expect(await status({})).toBe(429)
    release()
    expect(await Promise.all(three)).toEqual([200, 200, 200])
    expect(await status({})).toBe(200)
  })

  it('is not there where nobody supposes, nor is its button', async () => {
    expect(await (await fetch(app.base)).text()).toContain('whatif-open')
    await app.close()
    app = await startRoom()
    expect(await status({})).toBe(404)
    expect(await (await fetch(app.base)).text()).not.toContain('whatif-open')
  })
})
