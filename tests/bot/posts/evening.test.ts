import { describe, expect, test } from 'vitest'
import { speakEvening } from '../../../src/bot/posts/evening.js'
import type { PostOn } from '../../../src/bot/posts/post.js'
import { emptyKit, type KitState } from '../../../src/core/log/states/kit.js'
import { nightOf } from '../../../src/core/plan/night.js'
import { nextWorkday } from '../../../src/core/schedule.js'
import { demoSite } from '../../../src/core/site.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyRecord } from '../../support/memory.js'
import { postOn, weatherOf } from '../../support/post-on.js'

/** 17:00 in Berlin. */
const at = '2026-05-04T15:00:00Z'

function text(change: Partial<PostOn> = {}): string {
  return speakEvening(postOn(at, change), metric).text
}

/** A kit read at 16:30, both parts alike, mixed then. */
function kit(name: string, c: number, change: Partial<KitState> = {}): KitState {
  const read = iso('2026-05-04T14:30:00Z')
  const part = { value: c, at: read, seq: 1, mixedAt: read }
  return { ...emptyKit(name), isoC: part, resinC: part, mixedAt: read, ...change }
}

function kits(...all: readonly KitState[]): Partial<PostOn> {
  return { record: { ...emptyRecord, kits: all } }
}

const box = { value: 'box', at: iso('2026-05-04T14:30:00Z'), seq: 1 } as const

describe('the evening post', () => {
  test('the outlook of tomorrow under its own name and date', () => {
    const [head] = text().split('\n')
    expect(head).toMatch(/^Tomorrow: [✓△?✕] [A-Z-]+: spray.*, demo, 5 May 2026$/)
    expect(text()).toMatch(/^[✓△?✕] spray: \d\d:\d\d–\d\d:\d\d/m)
    expect(text()).toMatch(/^Stage: \d+ kits/m)
  })

  test('before days off it is the next working day', () => {
    const saturday = postOn('2026-05-02T15:00:00Z', { date: '2026-05-02', forecast: weatherOf(undefined, '2026-05-02T15:00:00Z') })
    expect(speakEvening(saturday, metric).text.split('\n')[0]).toMatch(/^Next working day: .*4 May 2026$/)
  })

  test('a picture of that day goes with it', () => {
    expect(speakEvening(postOn(at), metric).papers.map(({ name }) => name)).toEqual(['demo-2026-05-05.png'])
  })

  test('kits: into the box by when, read, ready later than work begins; nothing for one that is fine', () => {
    // 40 °C box: where one kit says what its box has, that holds for the others.
    const warm = kit('K9', 25, { place: box, placeC: 40 })
    const said = text(kits(warm, kit('K1', 12), emptyKit('K2'), kit('K3', 12, { empty: true }), kit('K4', 3, { place: box, placeC: 22 })))
    expect(said).toMatch(/^kit K1: into the warm box by (Tue 5 May )?\d\d:\d\d$/m)
    expect(said).toMatch(/^kit K2: read both parts/m)
    expect(said).toMatch(/^kit K4: ready about /m)
    expect(said).not.toMatch(/kit K3|kit K9/)
  })

  test('a cold kit and no box that is known of: now', () => {
    expect(text(kits(kit('K1', 12)))).toContain('kit K1: into the warm box now\n')
    expect(text(kits(kit('K1', 25)))).not.toContain('kit K1')
  })

  test('many kits are counted, names of people are escaped', () => {
    const many = Array.from({ length: 9 }, (_, n) => emptyKit(`K${n}<!channel>`))
    const said = text(kits(...many))
    expect(said.match(/^kit K/gm)).toHaveLength(6)
    expect(said).not.toContain('<!channel>')
    expect(said).toContain('3 more')
  })

  test('a cold night is said where no kit is logged', () => {
    expect(text({ forecast: weatherOf(() => ({ airC: 6 }), at) })).toContain('air down to 6 °C, kit at least 21 °C')
  })

  test('no forecast: unknown, and says so; every language and unit inside the limits of a message', () => {
    expect(text({ forecast: null })).toMatch(/^Tomorrow: \? UNKNOWN: spray, demo, 5 May 2026\nno forecast that can be used$/m)
    const worst = {
      forecast: weatherOf(() => ({ airC: -35, rhPct: 99, windKmh: 90, gustKmh: 140, rainMm: 20, rainChancePct: 100, thunder: true }), at)
    }
    for (const how of hows) {
      for (const change of [worst, { forecast: null }, kits(kit('K1', 10), ...Array.from({ length: 30 }, (_, n) => emptyKit(`K${n}`)))])
        expect(blockProblems(speakEvening(postOn(at, change), how))).toEqual([])
    }
  })
})

describe('the night', () => {
  test('lowest, highest and sums of the hours between, by hand', () => {
    const forecast = weatherOf((hour) => ({ airC: (hour / 3600) % 24, rainMm: 0.5, gustKmh: 20 + ((hour / 3600) % 24) }), at)
    const night = nightOf(forecast, sheet(), iso('2026-05-04T15:30:00Z'), iso('2026-05-04T19:00:00Z'))
    // 16:00 … 19:00Z: four instants; gust, rain of the hour that ends after each.
    expect(night.airC).toEqual({ min: 16, max: 19 })
    expect(night.gustKmh).toEqual({ min: 37, max: 40 })
    expect(night.rainMm).toBeCloseTo(2, 9)
    expect(nightOf(null, sheet(), iso(at), iso(at) + 3600)).toEqual({ airC: null, gustKmh: null, rainChancePct: null, rainMm: null })
  })
})

describe('the next working day', () => {
  test('skips days off, over the end of a year; without any day it is tomorrow', () => {
    expect(nextWorkday('2026-05-02', demoSite.days)).toBe('2026-05-04')
    expect(nextWorkday('2026-05-04', [1])).toBe('2026-05-11')
    expect(nextWorkday('2026-12-31', [1, 2, 3, 4, 5, 6, 7])).toBe('2027-01-01')
    expect(nextWorkday('2026-05-04', [])).toBe('2026-05-05')
  })
})
