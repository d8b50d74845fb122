import { describe, expect, it } from 'vitest'
import type { Entry } from '../../../src/core/log/entry.js'
import { findingOf, fullSpray, numbersOf, seamhands } from '../../support/seamhand.js'

const open = seamhands()

function short({ type, subject, data }: Entry): unknown {
  return [type, subject, type === 'decision' ? (data as { activity: string }).activity : data]
}

const day = 'day:2026-05-04'

/** What each message logs: types, subjects and data, outside contract §6 and §8. */
const logs: readonly (readonly [text: string, entries: readonly unknown[]])[] = [
  ['spray', [['decision', day, 'spray']]],
  [
    'spray air 20 rh 50',
    [
      ['reading', day, { airC: 20, rhPct: 50 }],
      ['decision', day, 'spray']
    ]
  ],
  [
    'spray dry no thunder',
    [
      ['statement', day, { substrateDry: true, fleeceDry: true, thunder: false }],
      ['decision', day, 'spray']
    ]
  ],
  [
    'spray deck dry',
    [
      ['statement', day, { substrateDry: true }],
      ['decision', day, 'spray']
    ]
  ],
  [
    'spray kit K7 25 mixed',
    [
      ['kit', 'kit:K7', { isoC: 25, resinC: 25, mixed: true }],
      ['decision', day, 'spray']
    ]
  ],
  [
    'spray iso 24',
    [
      ['kit', 'kit:K1', { isoC: 24 }],
      ['decision', day, 'spray']
    ]
  ],
  [
    fullSpray,
    [
      ['reading', day, { airC: 20, substrateC: 20, rhPct: 50, windKmh: 10, gustKmh: 15 }],
      [
        'statement',
        day,
        {
          rainFalling: false,
          rainChancePct: 10,
          thunder: false,
          substrateDry: true,
          fleeceDry: true,
          substrateClean: true,
          compatibility: 'compatible',
          intakes: 'none',
          sheet: 'relaxed',
          tight: true,
          purged: true,
          nozzle: true,
          tested: true
        }
      ],
      ['kit', 'kit:K1', { isoC: 25, resinC: 25, mixed: true, expiresOn: '2099-01-01' }],
      ['decision', day, 'spray']
    ]
  ],
  [
    'spray override tarps are up',
    [
      ['decision', day, 'spray'],
      ['override', day, { activity: 'spray', decision: 'demo-1', outcome: 'unknown', reason: 'tarps are up' }]
    ]
  ],
  [
    'air 12 wind 20 gust 30',
    [
      ['reading', day, { airC: 12, windKmh: 20, gustKmh: 30 }],
      ['decision', day, 'lay']
    ]
  ],
  [
    'air thunder',
    [
      ['statement', day, { thunder: true }],
      ['decision', day, 'lay']
    ]
  ],
  [
    'weld sheet 25 lap clean dry',
    [
      ['reading', day, { sheetC: 25 }],
      ['statement', day, { lapClean: true, lapDry: true }],
      ['decision', day, 'weld']
    ]
  ],
  [
    'weld lead 50 m 2.5 mm2',
    [
      ['statement', day, { lead: { leadM: 50, areaMm2: 2.5 } }],
      ['decision', day, 'weld']
    ]
  ],
  [
    'weld robot 41 39 40 mm film set 480 speed 2.5 by ana',
    [
      [
        'coupon',
        'welder:robot',
        {
          widthsMm: [41, 39, 40],
          widthMm: 39,
          peel: 'film',
          setC: 480,
          speedMMin: 2.5,
          by: 'ana',
          passed: true,
          cause: null,
          minWidthMm: 38,
          conditions: { airC: null, sheetC: null, windKmh: null, cloudPct: null }
        }
      ]
    ]
  ],
  ['weld robot set 500', [['welder', 'welder:robot', { event: 'set', setC: 500 }]]],
  ['weld robot operator ana', [['welder', 'welder:robot', { event: 'operator', by: 'ana' }]]],
  ['weld hand off', [['welder', 'welder:hand', { event: 'off' }]]],
  ['probe course 4 end 3.2 m 40 mm cold', [['void', 'void:1', { course: 4, on: 'end', distanceM: 3.2, lengthMm: 40, causes: ['cold'] }]]],
  ['probe list', []],
  ['kit', []],
  ['kit K7', [['kit', 'kit:K7', {}]]],
  ['kit K7 iso 24 box 28 exp tomorrow lot A1', [['kit', 'kit:K7', { isoC: 24, place: 'box', placeC: 28, expiresOn: '2026-05-05', lot: 'A1' }]]],
  ['foam 45 s even', [['kit', 'kit:K1', { foam: { signs: ['even'], verdict: 'good', gelS: 45 } }]]],
  ['laid 42 m2 robot 20 m', [['laid', day, { areaM2: 42, robotM: 20, kit: 'K1' }]]],
  ['site morning 05:45 units us', [['setting', 'site', { morning: '05:45', units: 'us' }]]],
  ['site', []],
  ['strip 2 m', []],
  ['help', []],
  ['me lang es', []]
]

describe('what each command logs', () => {
  it.each(logs)('%s', async (text, entries) => {
    const seamhand = await open()
    const reply = await seamhand.ask(text, { user: 'U7' })
    const logged = await seamhand.entries()

    expect(logged.map(short)).toEqual(entries)
    const ids = logged.map(({ seq }) => `demo-${seq}`)
    expect(reply.logged).toEqual(ids.filter((id) => id !== reply.decision))
    expect(reply.decision).toBe(
      entries.some((entry) => (entry as string[])[0] === 'decision') ? `demo-${logged.find(({ type }) => type === 'decision')?.seq}` : null
    )
    expect(reply.undoUntil).toBe(reply.logged.length === 0 ? null : '2026-05-04T08:10:00Z')
    for (const entry of logged) {
      expect(entry).toMatchObject({
        v: 1,
        workspace: 'local',
        site: 'demo',
        author: 'U7',
        via: 'ask',
        at: '2026-05-04T08:00:00Z',
        loggedAt: '2026-05-04T08:00:00Z'
      })
    }
  })

  it.each(logs)('%s: --no-log logs nothing and decides the same', async (text) => {
    const [logging, silent] = [await open(), await open()]
    const told = await logging.ask(text)
    const reply = await silent.ask(text, { log: false })

    expect(await silent.head()).toEqual({ seq: 0, hash: '0'.repeat(64) })
    expect(reply).toMatchObject({ ok: true, logged: [], decision: null, undoUntil: null })
    expect({
      outcome: reply.outcome,
      outcomes: reply.outcomes,
      findings: reply.findings,
      numbers: reply.numbers,
      changesAt: reply.changesAt
    }).toEqual({
      outcome: told.outcome,
      outcomes: told.outcomes,
      findings: told.findings,
      numbers: told.numbers,
      changesAt: told.changesAt
    })
    expect((await silent.store.person('local', 'ask')).lang).toBeNull()
  })

  it('--no-log makes no site and keeps no choice of a person', async () => {
    const seamhand = await open()
    await seamhand.ask('site new north at 51,0 zone Europe/London', { log: false })
    await seamhand.ask('me lang fr', { log: false })

    expect(await seamhand.store.sites('local')).toEqual(['demo'])
    expect((await seamhand.ask('site')).lang).toBe('en')
  })
})

describe('a decision entry', () => {
  it('holds activity, outcome, findings, every input, limits, weather and engine: outside contract §8', async () => {
    const seamhand = await open({ weather: 'sample' })
    const reply = await seamhand.ask(fullSpray)
    const data = (await seamhand.entries()).at(-1)?.data as Record<string, unknown>

    expect(data).toMatchObject({
      activity: 'spray',
      outcome: reply.outcome,
      limits: reply.limits,
      weather: { source: 'sample', issuedAt: reply.weather?.issuedAt, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) },
      engine: expect.stringMatching(/^\d+\.\d+\.\d+/)
    })
    expect(data.findings).toHaveLength(reply.findings.length)
    expect(data.inputs).toMatchObject({
      airC: { value: 20, origin: 'reading', at: '2026-05-04T08:00:00Z' },
      today: '2026-05-04',
      kit: { name: 'K1' }
    })
    expect(await seamhand.store.keepsake('local', reply.limits?.sha256 ?? '')).toMatchObject({ kind: 'sheet' })
    expect(await seamhand.store.keepsake('local', (data.weather as { sha256: string }).sha256)).toMatchObject({ kind: 'forecast' })
  })
})

describe('@time', () => {
  it('dates the entry in site time and leaves the decision at now', async () => {
    const seamhand = await open()
    await seamhand.ask('air 12 @07:30')
    const [reading, decision] = await seamhand.entries()

    expect(reading).toMatchObject({ at: '2026-05-04T05:30:00Z', loggedAt: '2026-05-04T08:00:00Z' })
    expect(decision).toMatchObject({ at: '2026-05-04T08:00:00Z' })
  })

  it('an entry up to 5 min ahead is logged, and counts from its instant on', async () => {
    const seamhand = await open()
    const now = await seamhand.ask('air 12 @10:05')
    expect(now.ok).toBe(true)
    expect(numbersOf(now).airC).toBeNull()
    expect(findingOf(await seamhand.ask('air', { at: '10:04:59' }), 'wind-mean', 'lay').outcome).toBe('unknown')

    expect(numbersOf(await seamhand.ask('air', { at: '10:04:59', log: false })).airC).toBeNull()
    expect(numbersOf(await seamhand.ask('air', { at: '10:05', log: false })).airC).toBe(12)
  })

  it('a late entry does not stand before a later reading', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20', { at: '09:00' })
    const reply = await seamhand.ask('air 10 @08:50', { at: '09:10' })

    expect(numbersOf(reply).airC).toBe(20)
  })

  it('of two readings of the same instant the one that came last counts', async () => {
    const seamhand = await open()
    await seamhand.ask('air 20 @09:00', { at: '09:10' })

    expect(numbersOf(await seamhand.ask('air 10 @09:00', { at: '09:10' })).airC).toBe(10)
  })

  it('a late rain makes a surface wet that was stated dry before it, not one stated dry after it', async () => {
    const seamhand = await open()
    await seamhand.ask('spray dry', { at: '09:00' })
    const wet = await seamhand.ask('spray rain @09:05', { at: '09:20' })
    const dry = await seamhand.ask('spray dry no rain', { at: '09:21' })

    expect(findingOf(wet, 'substrate-dry')).toMatchObject({ outcome: 'no-go', value: false })
    expect(findingOf(dry, 'substrate-dry')).toMatchObject({ outcome: 'go', value: true })
  })
})

describe('claims', () => {
  it('the same delivery twice gets the stored reply and has one effect', async () => {
    const seamhand = await open()
    const first = await seamhand.ask('air 12', { claim: 'd-1' })
    const again = await seamhand.ask('air 12', { claim: 'd-1', at: '10:30' })

    expect(again).toEqual(first)
    expect((await seamhand.entries()).map(({ type }) => type)).toEqual(['reading', 'decision'])
    await seamhand.ask('air 12', { claim: 'd-2' })
    expect((await seamhand.head()).seq).toBe(4)
  })

  it('a refused delivery is stored too: it is not tried again as something else', async () => {
    const seamhand = await open()
    const first = await seamhand.ask('probe 1 fixed', { claim: 'd-1' })
    await seamhand.ask('probe course 4 40 mm')
    const again = await seamhand.ask('probe 1 fixed', { claim: 'd-1' })

    expect(again).toEqual(first)
    expect((await seamhand.head()).seq).toBe(1)
  })

  it('of many at once one has the effect', async () => {
    const seamhand = await open()
    const replies = await Promise.all(Array.from({ length: 8 }, () => seamhand.ask('probe course 4 40 mm', { claim: 'd-1' })))

    expect(new Set(replies.map((reply) => JSON.stringify(reply))).size).toBe(1)
    expect((await seamhand.head()).seq).toBe(1)
  })
})
