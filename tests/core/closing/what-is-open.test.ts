import { describe, expect, it } from 'vitest'
import { type DayToClose, whatIsOpen } from '../../../src/core/closing/what-is-open.js'
import { emptyClosing } from '../../../src/core/log/states/closing.js'
import { emptyDay } from '../../../src/core/log/states/day.js'
import { emptySite } from '../../../src/core/log/states/site.js'
import { emptyWelder } from '../../../src/core/log/states/welder.js'

const now = 1_777_900_000
const noted = <T>(value: T) => ({ value, at: now - 100, seq: 1 })
const quiet: DayToClose = { site: emptySite, today: emptyDay, yesterday: null, welders: [], substrate: 'board', now }
const laid = { ...emptyDay, laidAt: now - 7200, areaM2: 40 }
const sealed = { openEdgeM: noted(12), method: noted('tape' as const), drainsOpen: noted(true), sheetsSafe: noted(true) }
const bonds = { board: noted({ substrate: 'board', broke: 'foam' as const, passed: true }) }
const closed = { ...laid, closing: { ...emptyClosing, seal: sealed, bonds } }
const whats = (part: Partial<DayToClose>) => whatIsOpen({ ...quiet, ...part }).items.map(({ what, outcome }) => `${what} ${outcome}`)

describe('what still stands open', () => {
  it('is nothing on a day on which nothing was done', () => {
    expect(whatIsOpen(quiet)).toMatchObject({ items: [], closed: true, fire: { state: 'none' } })
  })

  it('asks for seal, drains, sheets and test square once something was laid', () => {
    expect(whats({ today: laid })).toEqual(['seal unknown', 'drains unknown', 'sheets unknown', 'bond unknown'])
    expect(whatIsOpen({ ...quiet, today: closed })).toMatchObject({ items: [], closed: true })
  })

  it('takes no open edge for a seal, and an edge without a method for none', () => {
    const edge = (openEdgeM: number) => ({
      ...closed,
      closing: { ...closed.closing, seal: { ...sealed, openEdgeM: noted(openEdgeM), method: undefined } }
    })
    expect(whats({ today: edge(0) as never })).toEqual([])
    expect(whats({ today: edge(4) as never })).toEqual(['seal no-go'])
  })

  it('names what is stated wrong on any day', () => {
    const seal = { drainsOpen: noted(false), sheetsSafe: noted(false) }
    expect(whats({ today: { ...emptyDay, closing: { ...emptyClosing, seal } } })).toEqual(['drains no-go', 'sheets no-go'])
  })

  it('keeps voids, punch list and metres on hold from day to day, voids by number', () => {
    const voids = { highest: 12, total: 12, passed: 9, unsettled: { 2: 'open', 10: 'open', 7: 'repaired' } } as const
    const site = { ...emptySite, voids, punch: { highest: 2, total: 2, open: [1, 2] } }
    const { items } = whatIsOpen({ ...quiet, site, welders: [{ ...emptyWelder('robot'), onHoldM: 12.5 }, emptyWelder('hand')] })

    expect(items).toEqual([
      { what: 'voids', outcome: 'no-go', numbers: [2, 10] },
      { what: 'reprobe', outcome: 'no-go', numbers: [7] },
      { what: 'punch', outcome: 'caution', numbers: [1, 2] },
      { what: 'on-hold', outcome: 'no-go', welder: 'robot', metresM: 12.5 }
    ])
  })

  it.each([
    [false, 'failed', 'no-go'],
    [null, 'unjudged', 'unknown']
  ])('names a test square that passed: %s', (passed, why, outcome) => {
    const bad = { foil: noted({ substrate: 'foil', broke: null, passed }), ...bonds }
    const today = { ...closed, closing: { ...closed.closing, bonds: bad } }
    expect(whatIsOpen({ ...quiet, today }).items).toEqual([{ what: 'bond', outcome, why, substrate: 'foil' }])
  })

  it('runs the fire watch, and wants it signed when its time is over', () => {
    const welded = { ...closed, robotM: 10 }
    expect(whats({ today: { ...welded, laidAt: now - 600 } })).toEqual(['fire no-go'])
    expect(whats({ today: welded })).toEqual(['fire unknown'])
    expect(whatIsOpen({ ...quiet, today: { ...welded, laidAt: now - 600 } }).fire).toMatchObject({ state: 'running', leftMin: 50 })
  })
})
