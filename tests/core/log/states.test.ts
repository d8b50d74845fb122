import { describe, expect, it } from 'vitest'
import type { Entry } from '../../../src/core/log/entry.js'
import { refold } from '../../../src/core/log/fold.js'
import type { DayState } from '../../../src/core/log/states/day.js'
import type { KitState } from '../../../src/core/log/states/kit.js'
import type { SiteState } from '../../../src/core/log/states/site.js'
import type { VoidState } from '../../../src/core/log/states/void.js'
import { type WelderState, widthsKept } from '../../../src/core/log/states/welder.js'

type Told = readonly [type: Entry['type'], data: Entry['data'], subject?: string]

/** The state of a subject after what is told of it, a minute apart from 08:00 UTC on. */
function stateOf<T>(subject: string, told: readonly Told[]): T {
  const entries = told.map(([type, data, own = subject], index) => {
    return { seq: index + 1, at: new Date(Date.UTC(2026, 4, 4, 8, index)).toISOString().replace('.000', ''), type, subject: own, data }
  })
  return refold(subject, entries)?.is as T
}

const eight = Date.UTC(2026, 4, 4, 8) / 1000
const passed = (widthMm: number): Told => ['coupon', { widthMm, passed: true }]
const failed = (widthMm: number): Told => ['coupon', { widthMm, passed: false }]
const laid = (robotM: number, handM = 0): Told => ['laid', { areaM2: 1, robotM, handM }, 'day:2026-05-04']

describe('a welder', () => {
  const robot = (...told: readonly Told[]) => stateOf<WelderState>('welder:robot', told)

  it('is cleared by a coupon that passed, and keeps its widths, newest last', () => {
    expect(robot(passed(41), passed(42))).toMatchObject({ status: 'cleared', lapsedBy: null, widthsMm: [41, 42], off: false })
  })

  it('is failed by one that did not, and stays so whatever happens to it', () => {
    expect(robot(passed(41), failed(30), ['welder', { event: 'restart' }])).toMatchObject({
      status: 'failed',
      lapsedBy: 'failed',
      widthsMm: [41, 30]
    })
  })

  it('is neither by one that was not judged', () => {
    expect(robot(passed(41), ['coupon', { widthMm: 20, passed: null }])).toMatchObject({ status: 'cleared', widthsMm: [41] })
    expect(robot(['coupon', { widthMm: 41, passed: null }])).toMatchObject({ status: 'none', coupon: null, widthsMm: [] })
  })

  it.each(['restart', 'power', 'set', 'speed', 'nozzle', 'operator', 'off'])('lapses by %s, and keeps the first reason', (event) => {
    expect(robot(passed(41), ['welder', { event }])).toMatchObject({ status: 'lapsed', lapsedBy: event, off: event === 'off' })
    expect(robot(passed(41), ['welder', { event }], ['welder', { event: 'restart' }])).toMatchObject({ lapsedBy: event, off: false })
  })

  it('puts on hold what was welded since the last pass, and at once what is welded uncleared', () => {
    expect(robot(passed(41), laid(20), laid(10))).toMatchObject({ sincePassM: 30, onHoldM: 0 })
    expect(robot(passed(41), laid(20), failed(30))).toMatchObject({ sincePassM: 0, onHoldM: 20 })
    expect(robot(passed(41), laid(20), failed(30), laid(5))).toMatchObject({ onHoldM: 25 })
    expect(robot(laid(7))).toMatchObject({ onHoldM: 7 })
    expect(robot(passed(41), laid(20), passed(41), failed(30))).toMatchObject({ onHoldM: 0 })
    expect(stateOf<WelderState>('welder:hand', [passed(41), laid(20, 3)])).toMatchObject({ sincePassM: 3 })
  })

  it('keeps so many widths and no more', () => {
    const many = robot(...Array.from({ length: widthsKept + 5 }, (_, index) => passed(40 + index)))

    expect(many.widthsMm).toHaveLength(widthsKept)
    expect(many.widthsMm.at(-1)).toBe(40 + widthsKept + 4)
  })
})

describe('a void', () => {
  const found = { course: 4, on: 'lap', distanceM: 3, lengthMm: 40, causes: [] }
  const one = (...told: readonly Told[]) => stateOf<VoidState | null>('void:7', told)

  it('goes open, repaired, passed, or back to open with the failure counted', () => {
    expect(one(['void', found])).toMatchObject({ number: 7, state: 'open', found, failures: 0, openedAt: eight })
    expect(one(['void', found], ['repair', {}])).toMatchObject({ state: 'repaired', changedAt: eight + 60 })
    expect(one(['void', found], ['repair', {}], ['probe', { passed: true }])).toMatchObject({ state: 'passed', failures: 0 })
    expect(one(['void', found], ['repair', {}], ['probe', { passed: false }])).toMatchObject({ state: 'open', failures: 1 })
  })

  it('is none without its finding: a repair that came without it repairs nothing', () => {
    expect(one(['repair', {}])).toBeNull()
  })
})

describe('a site', () => {
  const site = (...told: readonly Told[]) => stateOf<SiteState>('site', told)
  const found = { course: 4, on: 'lap', distanceM: null, lengthMm: 40, causes: [] }

  it('counts voids by state', () => {
    const log: readonly Told[] = [
      ['void', found, 'void:1'],
      ['void', found, 'void:2'],
      ['void', found, 'void:3'],
      ['repair', {}, 'void:1'],
      ['repair', {}, 'void:2'],
      ['probe', { passed: true }, 'void:1'],
      ['probe', { passed: false }, 'void:2']
    ]

    expect(site(...log).voids).toEqual({ highest: 3, total: 3, passed: 1, unsettled: { 2: 'open', 3: 'open' } })
  })

  it('adds up what was laid and welded', () => {
    const log: readonly Told[] = [
      ['laid', { areaM2: 40, sheets: 2, robotM: 20, handM: 3 }, 'day:2026-05-04'],
      ['laid', { areaM2: 2.5 }, 'day:2026-05-04']
    ]

    expect(site(...log)).toMatchObject({ areaM2: 42.5, weldedM: 23, laidSheets: 2 })
  })

  it('keeps the last setting of each, the kit last named, the compatibility last stated', () => {
    const log: readonly Told[] = [
      ['setting', { units: 'us', morning: '06:00' }],
      ['setting', { units: 'metric' }],
      ['kit', {}, 'kit:K1'],
      ['kit', {}, 'kit:K7'],
      ['statement', { compatibility: 'contact' }, 'day:2026-05-04'],
      ['statement', { substrateDry: true }, 'day:2026-05-04']
    ]

    expect(site(...log)).toMatchObject({
      settings: { units: 'metric', morning: '06:00' },
      kit: 'K7',
      compatibility: { value: 'contact', at: eight + 240 }
    })
  })
})

describe('a kit', () => {
  const kit = (...told: readonly Told[]) => stateOf<KitState>('kit:K7', told)

  it('keeps with each part when it had last been mixed by then', () => {
    const state = kit(['kit', { isoC: 24 }], ['kit', { mixed: true }], ['kit', { resinC: 25 }])

    expect(state.isoC).toMatchObject({ value: 24, mixedAt: null })
    expect(state.resinC).toMatchObject({ value: 25, at: eight + 120, mixedAt: eight + 60 })
    expect(kit(['kit', { mixed: true }], ['kit', { mixed: false }], ['kit', { isoC: 24 }]).isoC?.mixedAt).toBeNull()
  })

  it('adds up the area, said of it or laid with it', () => {
    expect(kit(['kit', { usedM2: 20 }], ['laid', { areaM2: 12.5, kit: 'K7' }, 'day:2026-05-04'], ['kit', { empty: true }])).toMatchObject({
      usedM2: 32.5,
      empty: true
    })
  })

  it('forgets the temperature of a place when it is moved without one', () => {
    expect(kit(['kit', { place: 'box', placeC: 28 }])).toMatchObject({ place: { value: 'box' }, placeC: 28 })
    expect(kit(['kit', { place: 'box', placeC: 28 }], ['kit', { place: 'deck' }])).toMatchObject({ place: { value: 'deck' }, placeC: null })
    expect(kit(['kit', { place: 'box', placeC: 28 }], ['kit', { isoC: 24 }])).toMatchObject({ place: { value: 'box' }, placeC: 28 })
  })
})

describe('a day', () => {
  const day = (...told: readonly Told[]) => stateOf<DayState>('day:2026-05-04', told)

  it('keeps the last of each reading and statement, and nothing it does not know', () => {
    const state = day(['reading', { airC: 20, rhPct: 50 }], ['reading', { airC: 21 }], ['statement', { substrateDry: true, compatibility: 'ask' }])

    expect(state.latest).toEqual({
      airC: { value: 21, at: eight + 60, seq: 2 },
      rhPct: { value: 50, at: eight, seq: 1 },
      substrateDry: { value: true, at: eight + 120, seq: 3 }
    })
  })

  it('remembers when rain last fell and thunder was last heard, after "none now" too', () => {
    const state = day(['statement', { rainFalling: true, thunder: true }], ['statement', { rainFalling: false, thunder: false }])

    expect(state).toMatchObject({ rainFellAt: eight, thunderHeardAt: eight, latest: { rainFalling: { value: false }, thunder: { value: false } } })
  })

  it('knows the welders in use, and adds up what was laid', () => {
    const state = day(
      ['coupon', { widthMm: 41, passed: true }, 'welder:robot'],
      ['welder', { event: 'restart' }, 'welder:hand'],
      ['welder', { event: 'off' }, 'welder:robot'],
      ['laid', { areaM2: 40, robotM: 20 }],
      ['laid', { areaM2: 2, handM: 3 }]
    )

    expect(state).toMatchObject({ welders: { robot: { off: true }, hand: { off: false } }, areaM2: 42, robotM: 20, handM: 3, laidAt: eight + 240 })
  })
})

describe('closing a day', () => {
  const day = (...told: readonly Told[]) => stateOf<DayState>('day:2026-05-04', told)

  it('has nothing of it while nothing was said: so were days folded before there was any', () => {
    expect(day(['reading', { airC: 20 }], laid(3))).not.toHaveProperty('closing')
  })

  it('keeps the last test square of each substrate and the last word on each part of the seal', () => {
    const { closing } = day(
      ['bond', { substrate: 'board', broke: 'face', passed: false }],
      ['bond', { substrate: 'board', broke: 'foam', passed: true }],
      ['bond', { substrate: 'foil', broke: 'fleece', passed: true }],
      ['seal', { openEdgeM: 12, method: 'tape', files: ['F1'] }],
      ['seal', { drainsOpen: true }],
      ['seal', { openEdgeM: 14 }]
    )
    expect(closing?.bonds).toMatchObject({ board: { value: { broke: 'foam' } }, foil: { value: { passed: true } } })
    expect(closing?.seal).toMatchObject({ openEdgeM: { value: 14 }, method: { value: 'tape' }, drainsOpen: { value: true } })
    expect(closing?.pictures).toEqual({ photos: [], awaited: ['F1'] })
  })

  it('counts heat from repairs, unjudged coupons and what is stated, never backwards', () => {
    expect(day(['repair', {}, 'void:1'], ['note', { fire: { watchMin: 120 } }]).closing?.fire).toMatchObject({ heatAt: eight, watchMin: 120 })
    expect(day(['coupon', { passed: null }, 'welder:robot']).closing?.fire).toMatchObject({ heatAt: eight })
    expect(day(['note', { fire: { heat: true } }], ['note', { fire: { done: true, by: 'Ana' } }]).closing?.fire).toEqual({
      heatAt: eight,
      watchMin: null,
      doneAt: eight + 60,
      by: 'Ana'
    })
  })
})

describe('photos of a void', () => {
  const one = (...told: readonly Told[]) =>
    stateOf<VoidState>('void:1', [['void', { course: 4, on: 'lap', lengthMm: 40, causes: [], files: ['F1', 'F2'] }], ...told])
  const photo = (file: string, sha256: string): Told => ['photo', { file, sha256, mime: 'image/png', widthPx: 2, heightPx: 2, bytes: 9 }]

  it('are awaited until they come, and one that comes twice is kept once', () => {
    expect(one().pictures).toEqual({ photos: [], awaited: ['F1', 'F2'] })
    const { pictures } = one(photo('F2', 'aa'), photo('F9', 'aa'), ['repair', { files: ['F2', 'F3'] }])
    expect(pictures?.awaited).toEqual(['F1', 'F2', 'F3'])
    expect(pictures?.photos).toMatchObject([{ file: 'F9', sha256: 'aa' }])
  })

  it('mean nothing without the void', () => {
    expect(stateOf<VoidState | null>('void:1', [photo('F1', 'aa')])).toBeNull()
  })

  it('stand beside a repair that tells its steps; one that tells none leaves what earlier versions left', () => {
    expect(one(['repair', { steps: ['lifted', 'reheated'], patched: true }]).repair).toMatchObject({ steps: ['lifted', 'reheated'], patched: true })
    expect(one(['repair', {}])).not.toHaveProperty('repair')
  })
})

describe('the punch list', () => {
  const site = (...told: readonly Told[]) => stateOf<SiteState>('site', told)
  const item = (number: number, data: Entry['data']): Told => ['note', data, `punch:${number}`]

  it('opens, is done, opens again, and never gives a number twice', () => {
    const told = [item(1, { text: 'flange loose' }), item(2, { text: 'corner' }), item(1, { done: true })]
    expect(site(...told).punch).toEqual({ highest: 2, total: 2, open: [2] })
    expect(site(...told, item(1, { done: false })).punch?.open).toEqual([1, 2])
    expect(site(...told.slice(0, 2), ['undo', { target: 2 }, 'punch:2']).punch).toMatchObject({ highest: 2, open: [1] })
    expect(
      stateOf<object>('punch:1', [
        ['note', { text: 'flange loose' }],
        ['note', { done: true }]
      ])
    ).toMatchObject({ text: 'flange loose', state: 'done' })
  })

  it('keeps what was last said of each kind of detail', () => {
    const { details } = site(
      ['note', { details: { drains: 'good', pipes: 'bad' } }, 'day:2026-05-04'],
      ['note', { details: { pipes: 'good' } }, 'day:2026-05-04']
    )
    expect(details).toMatchObject({ drains: { value: 'good' }, pipes: { value: 'good' } })
  })
})
