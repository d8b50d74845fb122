import { describe, expect, test } from 'vitest'
import { kitNow } from '../../../src/bot/posts/kit-now.js'
import type { PostOn } from '../../../src/bot/posts/post.js'
import { texts } from '../../../src/bot/text/index.js'
import type { KitState } from '../../../src/core/log/states/kit.js'
import { emptyKit } from '../../../src/core/log/states/kit.js'
import { hows, metric } from '../../support/answers.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'

const now = iso('2026-05-04T03:30:00Z')

function on(c: number | null, learned: { readonly mixing: number; readonly pairs: number } | null, change: Partial<KitState> = {}): PostOn {
  const memory = emptyMemory()
  const part = c === null ? null : { value: c, at: now - 3600, seq: 1, mixedAt: now - 3600 }
  const place = { value: 'box' as const, at: now - 3600, seq: 1 }
  const kit = { ...emptyKit('K7'), isoC: part, resinC: part, place, placeC: 30, ...change }
  return {
    site: 'north',
    settings: memory.settings,
    memory: { ...memory, kit, site: learned === null ? memory.site : { ...memory.site, learned } },
    record: { kits: [], welders: [], voids: [], head: { seq: 0, hash: '' } },
    forecast: null,
    alerts: null,
    weatherLacks: null,
    sheet: sheet(),
    date: '2026-05-04',
    now
  }
}

describe('the kit of the morning', () => {
  test('while it warms: ready for certain and likely, and from how many readings', () => {
    const [line] = kitNow(on(15, { mixing: 7.25, pairs: 4 }), metric, texts.en)
    expect(line).toMatch(/^.*K7: .*ready by \d\d:\d\d at the latest, likely about \d\d:\d\d · mixing factor 7.3, learned from 4 pairs of readings$/)
    expect(kitNow(on(15, null), metric, texts.en)[0]).not.toContain('learned')
  })

  test('a higher factor makes it likely sooner, never certain sooner', () => {
    const line = (mixing: number) => kitNow(on(15, { mixing, pairs: 4 }), metric, texts.en)[0] ?? ''
    const times = (text: string) => [...text.matchAll(/\d\d:\d\d/g)].map(([time]) => time)
    const [slow, quick] = [times(line(1.5)), times(line(15))]
    expect(quick[0]).toBe(slow[0])
    expect((quick[1] as string) < (slow[1] as string)).toBe(true)
    expect((slow[1] as string) <= (slow[0] as string)).toBe(true)
  })

  test('nothing of one that is ready, never read, or empty', () => {
    for (const post of [on(25, null), on(null, null), on(15, null, { empty: true })]) expect(kitNow(post, metric, texts.en)).toEqual([])
  })

  test('is said in every language', () => {
    for (const how of hows) expect(kitNow(on(15, { mixing: 7, pairs: 3 }), how, texts[how.lang])[0]).toMatch(/3/)
  })
})
