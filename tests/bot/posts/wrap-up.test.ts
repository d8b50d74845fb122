import { describe, expect, test } from 'vitest'
import type { PostOn } from '../../../src/bot/posts/post.js'
import { speakWrapUp, wrapUp } from '../../../src/bot/posts/wrap-up.js'
import { anchorOf } from '../../../src/core/log/chain.js'
import { emptySite } from '../../../src/core/log/states/site.js'
import type { VoidState } from '../../../src/core/log/states/void.js'
import { emptyWelder } from '../../../src/core/log/states/welder.js'
import { demoSite } from '../../../src/core/site.js'
import { hows, metric } from '../../support/answers.js'
import { blockProblems } from '../../support/blocks.js'
import { iso } from '../../support/instant.js'
import { emptyMemory, emptyRecord } from '../../support/memory.js'
import { postOn, weatherOf } from '../../support/post-on.js'

/** 18:00 in Berlin. */
const at = '2026-05-04T16:00:00Z'
const head = { seq: 12, hash: 'ab'.repeat(32) }

function text(change: Partial<PostOn> = {}): string {
  return speakWrapUp(postOn(at, change), metric).text
}

function aVoid(number: number, state: VoidState['state']): VoidState {
  const found = { course: 4, on: 'end', distanceM: 3.2, lengthMm: 40, causes: [] } as const
  return { number, state, found, openedAt: iso(at) - 3600, failures: 0, changedAt: iso(at) - 3600 } as unknown as VoidState
}

const memory = emptyMemory()
const busy: Partial<PostOn> = {
  memory: {
    ...memory,
    today: { ...memory.today, laidAt: iso(at) - 7200, areaM2: 120, robotM: 60, handM: 12 },
    site: { ...emptySite, voids: { highest: 3, total: 3, passed: 1, unsettled: { 1: 'open', 2: 'repaired' } } }
  },
  record: {
    ...emptyRecord,
    head,
    voids: [aVoid(1, 'open'), aVoid(2, 'repaired'), aVoid(3, 'passed')],
    welders: [{ ...emptyWelder('robot'), onHoldM: 24 }]
  }
}

describe('the wrap-up post', () => {
  test('prints the anchor of the record whole, last', () => {
    expect(text(busy).split('\n').at(-1)).toBe(`record up to here: ${anchorOf('demo', head)}`)
  })

  test('what was laid and welded, what still stands open, each with its number or its place', () => {
    const said = text(busy)
    expect(said.split('\n')[0]).toMatch(/^△ wrap-up, demo, 4 May 2026: \d+ still open$/)
    expect(said).toContain('laid 120 m² · welded: robot 60 m, hand 12 m')
    expect(said).toContain('✕ void 1: course 4, end joint, at 3.2 m, 40 mm long, open')
    expect(said).toContain('✕ void 2: course 4, end joint, at 3.2 m, 40 mm long, repaired, probe again')
    expect(said).not.toContain('void 3')
    expect(said).toMatch(/^✕ robot: 24 m on hold/m)
    expect(said).toContain('? night seal: not stated')
    expect(said).toContain('? test square on insulation board: none today')
  })

  test('a day on which nothing was done has nothing open', () => {
    expect(text().split('\n').slice(0, 2)).toEqual(['✓ wrap-up, demo, 4 May 2026: nothing left open', 'nothing laid today'])
  })

  test('tonight by the forecast; without one it says so', () => {
    expect(text({ forecast: weatherOf((hour) => (hour > iso('2026-05-04T23:00:00Z') ? { airC: 3, gustKmh: 44 } : {}), at) })).toMatch(
      /^Tonight: air 3 °C to 18 °C · gust up to 44 km\/h · chance of rain up to 0 %/m
    )
    expect(text({ forecast: null })).toContain('Tonight: no forecast that can be used')
  })

  test('is due at the end of the working hours', () => {
    expect(wrapUp.time(demoSite)).toBe('18:00')
    expect(wrapUp.time({ ...demoSite, hours: '07:00-15:30' })).toBe('15:30')
  })

  test('inside the limits of a message in every language and unit, with names at their worst', () => {
    const many = Array.from({ length: 40 }, (_, n) => aVoid(n + 1, 'open'))
    const unsettled = Object.fromEntries(many.map(({ number }) => [number, 'open'] as const))
    const worst: Partial<PostOn> = {
      ...busy,
      site: `<!channel> *${'x'.repeat(300)} https://a.b`,
      settings: { ...demoSite, substrate: `<@U1>${'y'.repeat(100)}` },
      memory: { ...memory, ...busy.memory, site: { ...emptySite, voids: { highest: 40, total: 40, passed: 0, unsettled } } },
      record: { ...emptyRecord, head, voids: many, welders: [] }
    }
    for (const how of hows) {
      const spoken = speakWrapUp(postOn(at, worst), how)
      expect(blockProblems(spoken)).toEqual([])
      expect(spoken.text.split('\n')[0]).toContain(' 45 ')
      expect(spoken.text).not.toMatch(/<!channel>|<@U1>/)
      expect(spoken.text).toContain(`:12:${head.hash}`)
    }
  })
})
