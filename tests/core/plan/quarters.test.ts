import { describe, expect, it } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { decide } from '../../../src/core/decide.js'
import { activities } from '../../../src/core/finding.js'
import { sunEvents } from '../../../src/core/gather/daylight.js'
import { gather } from '../../../src/core/gather/gather.js'
import { roofOf } from '../../../src/core/gather/roof-of.js'
import { findingsAt, moments, quarterS } from '../../../src/core/plan/quarters.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'

const commonPractice = sheet()
const now = iso('2026-06-10T03:30:00Z')
const date = '2026-06-10'
const bare = emptyMemory()
const noted = <T>(value: T, at: number) => ({ value, at, seq: 1 })
const kit = { ...bare.kit, isoC: { ...noted(24, now), mixedAt: now - 60 }, resinC: { ...noted(23, now - 1800), mixedAt: now - 2000 } }
const latest = { substrateClean: noted(true, now), lapClean: noted(true, now - 600), airC: noted(14, now), windKmh: noted(8, now) }
const memory = { ...bare, kit, today: { ...bare.today, latest } }
const forecast = sampleForecast(now, bare.settings.zone)
const instants = Array.from({ length: 96 }, (_, index) => now + index * quarterS)
const roof = roofOf(memory, forecast, commonPractice, now)
const all = moments(memory, forecast, commonPractice, date, now, instants, roof)

describe('quarters of an hour', () => {
  it('know at each instant what is gathered for it alone, whatever has passed its age by then', () => {
    const sun = sunEvents(memory.settings, date)
    for (const [index, at] of instants.entries()) {
      expect(all[index]?.facts).toEqual(gather(memory, forecast, sun, commonPractice, at, now, roof))
    }
    expect(new Set(all.map(({ facts }) => facts.substrateClean.value)).size).toBe(2)
    expect(new Set(all.map(({ facts }) => facts.kit.isoC.value)).size).toBe(2)
  })

  it('are bound by the first finding that decides alone, or by the tightest number where all is go', () => {
    for (const moment of all) {
      for (const activity of activities) {
        const alone = findingsAt(moment, activity, commonPractice).filter(
          ({ group, outcome }) => activity === 'people' || group === 'conditions' || outcome === 'no-go'
        )
        const { outcome, binding } = moment.of[activity]
        const numbered = outcome === 'go' ? alone.find(({ ease }) => ease !== null) : undefined
        expect(outcome).toBe(alone[0]?.outcome ?? 'go')
        expect(binding).toEqual(numbered ?? alone[0] ?? null)
      }
    }
  })

  it('have of one rule what all of them together say of it', () => {
    const rules = new Set(all.flatMap((moment) => findingsAt(moment, 'lay', commonPractice).map(({ rule }) => rule)))
    for (const moment of all) {
      for (const rule of rules) {
        const own = findingsAt(moment, 'lay', commonPractice).filter((finding) => finding.rule === rule)
        expect(findingsAt(moment, 'lay', commonPractice, rule)).toEqual(own)
      }
    }
    expect(rules.size).toBeGreaterThan(3)
  })

  it('have the outcome that `decide` gives of weather and people at that instant, where nothing is left to be read', () => {
    let compared = 0
    for (const moment of all) {
      for (const activity of activities) {
        const { outcome, toRead } = moment.of[activity]
        if (toRead.length > 0) continue
        const { conditions, people } = decide(activity, moment.facts, commonPractice)
        expect(outcome).toBe(activity === 'people' || people === 'no-go' ? people : conditions)
        compared += 1
      }
    }
    expect(compared).toBeGreaterThan(200)
  })
})

describe('a hot day planned ahead', () => {
  const warm = { ...forecast, hours: forecast.hours.map((hour) => ({ ...hour, airC: hour.airC === null ? null : hour.airC + 4 })) }
  const warmRoof = roofOf(memory, warm, commonPractice, now)
  const sun = sunEvents(bare.settings, date)
  const planned = moments(bare, warm, commonPractice, date, now, instants, warmRoof)

  it('says of people what is said when the heat of each quarter is reckoned in full', () => {
    const weather = { known: 0, passed: 0 }
    for (const { facts, of } of planned) {
      // Looked at as of its own instant nothing is passed over; the spread alone is what it is ahead.
      const inFull = gather(bare, { ...warm, issuedAt: facts.at }, sun, commonPractice, facts.at, facts.at, warmRoof).wbgtC
      const wbgtC = { ...inFull, spread: facts.wbgtC.value === null ? inFull.spread : facts.wbgtC.spread }
      expect(decide('people', { ...facts, wbgtC }, commonPractice).outcome).toBe(of.people.outcome)
      weather[facts.wbgtC.value === null ? 'passed' : 'known'] += 1
    }
    expect(weather.known).toBeGreaterThan(10)
    expect(weather.passed).toBeGreaterThan(10)
  })
})
