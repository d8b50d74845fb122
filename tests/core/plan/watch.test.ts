import { describe, expect, test } from 'vitest'
import { firstSaid, type Look, look, newsOf, type Said } from '../../../src/core/plan/watch.js'
import { toldOf } from '../../../src/core/weather/alert.js'
import type { Hour } from '../../../src/core/weather/hour.js'
import { alertOf } from '../../support/alerts.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'
import { weatherOf } from '../../support/post-on.js'

const memory = emptyMemory()

/** A look at the mild day of 2026-05-04, with other weather from an instant on. */
function lookAt(at: string, from: string, then: Partial<Hour>): Look {
  const begins = iso(from)
  return look(
    memory,
    weatherOf((hour) => (hour > begins ? then : {}), '2026-05-04T08:00:00Z'),
    sheet(),
    iso(at)
  )
}

/** All well, seen at ten in the morning: nothing of it is said. */
const fine: Look = lookAt('2026-05-04T08:00:00Z', '2026-05-05T00:00:00Z', {})
const said: Said = firstSaid(fine)

function turned(change: Partial<Look>): Look {
  return { ...fine, ...change }
}

describe('alerts of a weather service', () => {
  const storm = alertOf({ id: 'storm', from: iso('2026-05-04T11:00:00Z'), to: iso('2026-05-04T12:00:00Z') })

  test('a look has the bad ones that touch what is left of the working hours, 06:00 to 18:00 in Berlin', () => {
    const all = [
      storm,
      alertOf({ id: 'mild', severity: 'minor' }),
      alertOf({ id: 'untold', severity: 'unknown', from: 0 }),
      alertOf({ id: 'evening', from: iso('2026-05-04T16:00:00Z'), to: iso('2026-05-04T18:00:00Z') })
    ]
    const at = iso('2026-05-04T08:00:00Z')
    const seen = (asOf: number) => look(memory, weatherOf(), sheet(), at, { source: 'nws', asOf, all }).alerts.map(({ id }) => id)
    expect(seen(at)).toEqual(['storm', 'untold'])
    expect(fine.alerts).toEqual([])
  })

  test('those that the morning told are told again only where they got worse', () => {
    const before = firstSaid(fine, [toldOf(storm)])
    expect(newsOf(before, turned({ alerts: [storm] })).news).toBeNull()
    expect(newsOf(before, turned({ alerts: [{ ...storm, severity: 'extreme' }] })).news).toMatchObject({ worse: true })
    expect(newsOf(said, turned({ alerts: [storm] })).news).toMatchObject({ worse: true, alerts: [{ id: 'storm' }] })
  })

  test('one that is over is said to be over once, and is no turn for the worse', () => {
    const before = firstSaid(fine, [toldOf(storm)])
    const { news, said: next } = newsOf(before, fine)
    expect(news).toMatchObject({ worse: false, over: [{ id: 'storm' }] })
    expect(newsOf(next, fine).news).toBeNull()
    expect(newsOf(next, turned({ alerts: [storm] })).news).toBeNull()
  })

  test('what was said before there were alerts reads as none told', () => {
    expect(said).not.toHaveProperty('alerts')
    expect(newsOf(said, fine).said).toEqual(said)
  })
})

describe('a look', () => {
  test('mild weather warns of nothing; lay and weld can go', () => {
    expect(fine).toMatchObject({ sees: true, warned: [], lapsed: [], outcomes: { lay: 'go', weld: 'go' } })
    expect(newsOf(said, fine)).toEqual({ news: null, said })
  })

  test('rain is due from an hour before it falls, the time of closing up, and not two hours before', () => {
    const rain = { rainMm: 2, rainChancePct: 90 }
    const warning = (at: string) => lookAt(at, '2026-05-04T12:00:00Z', rain).warned.map(({ warning: of }) => of)
    expect(warning('2026-05-04T10:00:00Z')).toEqual([])
    expect(warning('2026-05-04T11:15:00Z')).toEqual(['rain'])
    expect(warning('2026-05-04T12:30:00Z')).toEqual(['rain'])
  })

  test('gusts beyond laying sheets within the hour, with their time', () => {
    const seen = lookAt('2026-05-04T11:10:00Z', '2026-05-04T12:00:00Z', { gustKmh: 90 })
    expect(seen.warned).toMatchObject([{ warning: 'gust', at: iso('2026-05-04T12:10:00Z'), finding: { rule: 'wind-gust', outcome: 'no-go' } }])
    expect(lookAt('2026-05-04T10:00:00Z', '2026-05-04T12:00:00Z', { gustKmh: 90 }).warned).toEqual([])
  })

  test('thunder in the forecast within two hours', () => {
    const warned = (at: string) => lookAt(at, '2026-05-04T12:00:00Z', { thunder: true }).warned.map(({ warning }) => warning)
    expect(warned('2026-05-04T09:30:00Z')).toEqual([])
    expect(warned('2026-05-04T10:30:00Z')).toEqual(['thunder'])
  })

  test('without a forecast, or with one of yesterday, it does not see', () => {
    expect(look(memory, null, sheet(), iso('2026-05-04T08:00:00Z')).sees).toBe(false)
    expect(look(memory, weatherOf(undefined, '2026-05-03T19:59:00Z'), sheet(), iso('2026-05-04T08:00:00Z')).sees).toBe(false)
  })
})

describe('what is news', () => {
  test('a turn for the worse, at once', () => {
    const { news, said: next } = newsOf(said, turned({ outcomes: { ...fine.outcomes, lay: 'no-go' } }))
    expect(news).toMatchObject({ worse: true, turns: [{ activity: 'lay', was: 'go', is: 'no-go' }] })
    expect(next.outcomes.lay).toBe('no-go')
  })

  test('a turn for the better only where it holds for half an hour, and as what it holds', () => {
    const bad: Said = { ...said, outcomes: { ...said.outcomes, lay: 'no-go' } }
    const short = turned({ held: { ...fine.held, lay: 'no-go' } })
    expect(newsOf(bad, short)).toEqual({ news: null, said: bad })
    const held = newsOf(bad, turned({ held: { ...fine.held, lay: 'caution' } }))
    expect(held.news).toMatchObject({ worse: false, turns: [{ activity: 'lay', was: 'no-go', is: 'caution' }] })
  })

  test('people: only the roof being closed to them, and open again; their cautions the morning told', () => {
    expect(newsOf(said, turned({ outcomes: { ...fine.outcomes, people: 'caution' } })).news).toBeNull()
    const shut = newsOf(said, turned({ outcomes: { ...fine.outcomes, people: 'no-go' } }))
    expect(shut.news?.worse).toBe(true)
    expect(newsOf(shut.said, turned({ held: { ...fine.held, people: 'caution' } })).news?.turns).toEqual([
      { activity: 'people', was: 'no-go', is: 'caution' }
    ])
  })

  test('what becomes unknown is no news, and what was said stays said', () => {
    const dim = turned({ outcomes: { spray: 'unknown', lay: 'unknown', weld: 'unknown', people: 'unknown' } })
    expect(newsOf(said, dim)).toEqual({ news: null, said })
  })

  test('what never was known: good is taken as said, bad is told', () => {
    const blank: Said = { ...said, outcomes: { ...said.outcomes, weld: 'unknown' } }
    expect(newsOf(blank, fine)).toEqual({ news: null, said: { ...blank, outcomes: { ...blank.outcomes, weld: 'go' } } })
    expect(newsOf(blank, turned({ outcomes: { ...fine.outcomes, weld: 'no-go' } })).news).toMatchObject({
      worse: true,
      turns: [{ was: 'unknown', is: 'no-go' }]
    })
  })

  test('a warning once, and again only after it was over', () => {
    const rain = lookAt('2026-05-04T11:15:00Z', '2026-05-04T12:00:00Z', { rainMm: 2, rainChancePct: 90 })
    const first = newsOf({ ...said, outcomes: rain.outcomes }, rain)
    expect(first.news).toMatchObject({ worse: true, warned: [{ warning: 'rain' }] })
    expect(newsOf(first.said, rain).news).toBeNull()
    const over = newsOf(first.said, { ...rain, warned: [] })
    expect(over.news).toMatchObject({ worse: false, warned: [] })
    expect(newsOf(over.said, rain).news?.warned).toHaveLength(1)
  })

  test('a welder that the weather lapsed, once for each coupon; one that its operator lapsed never', () => {
    const robot = { name: 'robot', lapsedBy: 'wind', couponAt: iso('2026-05-04T07:00:00Z') } as const
    const first = newsOf(said, turned({ lapsed: [robot] }))
    expect(first.news).toMatchObject({ worse: true, lapsed: [{ name: 'robot' }] })
    expect(newsOf(first.said, turned({ lapsed: [robot] })).news).toBeNull()
    expect(newsOf(first.said, turned({ lapsed: [{ ...robot, couponAt: robot.couponAt + 60 }] })).news).not.toBeNull()
  })

  test('the forecast going is told, its coming back changes what stands there', () => {
    const gone = newsOf(said, turned({ sees: false }))
    expect(gone.news).toMatchObject({ worse: true, sees: false })
    expect(newsOf(gone.said, turned({ sees: false })).news).toBeNull()
    expect(newsOf(gone.said, fine).news).toMatchObject({ worse: false, sees: true })
  })
})
