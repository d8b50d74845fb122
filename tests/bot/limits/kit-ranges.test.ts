import { describe, expect, test } from 'vitest'
import { parseSheet } from '../../../src/bot/limits/schema.js'
import { kitTimes } from '../../../src/core/kits/schedule.js'
import { commonPractice } from '../../../src/core/limits/common-practice.js'
import type { SystemName } from '../../../src/core/limits/fields.js'
import { sectionFields } from '../../../src/core/limits/fields.js'
import type { RawSection } from '../../../src/core/limits/raw.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import type { LimitsSheet } from '../../../src/core/limits/sheet.js'
import { rescale } from '../../../src/core/limits/twin.js'
import { emptyHour } from '../../../src/core/weather/hour.js'
import { iso } from '../../support/instant.js'
import { random } from '../../support/noise.js'

const now = iso('2026-07-01T06:00:00Z')
/** The strongest sun and no wind known of: what warms a kit most. */
const hours = Array.from({ length: 30 }, (_, index) => ({ ...emptyHour(now + (index - 2) * 3600), airC: 60, sunWm2: 1500 }))

function sheetWith(kit: RawSection, units: SystemName): LimitsSheet | null {
  const parsed = parseSheet({ id: 'site', version: 1, title: 'Site', units, kit: { ...kit, basis: 'x' } }, () => null)
  return parsed.ok ? parsed.sheet : null
}

/** Every property of the body at one of its ends. */
function atTheEnds(next: () => number, units: SystemName): RawSection {
  const ends = sectionFields.kit.map((field) => {
    const value = next() < 0.5 ? field.low : field.high
    return [field[units], field.kind === 'plain' || field.kind === 'whole' ? value : rescale(value, field.kind as 'distance', 'metric', units)]
  })
  return Object.fromEntries(ends)
}

describe('a limits sheet that is taken', () => {
  test.each(['metric', 'us'] as const)('never leaves the times of a kit without an answer: %s, all properties at their ends', (units) => {
    const next = random(5)
    for (let tries = 0; tries < 16; tries += 1) {
      const sheet = sheetWith(atTheEnds(next, units), units)
      if (sheet === null) throw new Error('an end of a range was refused')
      const { cartonM2KW } = sheet.kit
      for (const place of ['deck', 'store'] as const) {
        const limits = { minC: 21, maxC: 32 }
        const times = kitTimes({
          ...{ kit: sheet.kit, cartonM2KW, place, placeC: place === 'store' ? 5 : null, hours, boxC: 30, limits },
          reading: { at: now - 3600, c: -40 },
          from: now,
          readyBy: now + 20 * 3600
        })
        for (const value of Object.values(times)) expect(value === null || Number.isFinite(value), JSON.stringify([sheet.kit, times])).toBe(true)
      }
    }
  })

  test.each([
    ['radiusM', 1e-5],
    ['heightM', 1e-4],
    ['rhoKgM3', 0.5],
    ['rhoKgM3', 30_000],
    ['cJKgK', 5],
    ['kWMK', 1e-4],
    ['hWM2K', 0.5],
    ['hWM2K', 2e5],
    ['cartonM2KW', -0.1],
    ['cartonM2KW', 11]
  ])('does not have %s %d', (key, value) => {
    expect(sheetWith({ [key]: value }, 'metric')).toBeNull()
  })
})

describe('the carton of a kit', () => {
  test('is none where no sheet has one, and a sheet kept before there were cartons keeps its hash', () => {
    expect(resolveSheet(commonPractice).kit.cartonM2KW).toBe(0)
    expect(JSON.stringify(commonPractice)).not.toContain('carton')
    expect(sheetWith({ mixing: 4 }, 'metric')?.kit.cartonM2KW).toBe(0)
  })

  test('is the same in both systems of units', () => {
    expect(sheetWith({ cartonM2KW: 0.07 }, 'us')?.kit.cartonM2KW).toBe(0.07)
    expect(sheetWith({ cartonM2KW: 0.07 }, 'metric')?.kit.cartonM2KW).toBe(0.07)
  })
})
