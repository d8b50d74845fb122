import { describe, expect, test } from 'vitest'
import type { Outcome } from '../../../src/core/outcome.js'
import type { Quarter } from '../../../src/core/plan/quarters.js'
import { bandsOf, windowsOf } from '../../../src/core/plan/windows.js'
import type { RuleId } from '../../../src/core/rules/index.js'
import { finding } from '../../support/answers.js'

const letters: Readonly<Record<string, Outcome>> = { g: 'go', c: 'caution', u: 'unknown', n: 'no-go' }

/** A day drawn in letters, a quarter of an hour each; what is not go is bound by `rule`. */
function day(drawn: string, rule: RuleId = 'wind-gust'): readonly Quarter[] {
  return [...drawn].map((letter, index) => {
    const outcome = letters[letter] as Outcome
    const found = finding(rule, { outcome }) as Quarter['binding']
    return { at: index * 900, outcome, binding: outcome === 'go' ? null : found, toRead: [] }
  })
}

/** Windows as "from-to outcome", in quarters. */
function windows(drawn: string, minMin = 60): readonly string[] {
  return windowsOf(day(drawn), minMin).map(({ from, to, outcome }) => `${from / 900}-${to / 900} ${outcome}`)
}

describe('windows', () => {
  test('bands are cut where the outcome changes', () => {
    expect(bandsOf(day('nngggc')).map(({ from, to, outcome }) => `${from / 900}-${to / 900} ${outcome}`)).toEqual([
      '0-2 no-go',
      '2-5 go',
      '5-6 caution'
    ])
    expect(bandsOf([])).toEqual([])
  })

  test('an hour is four quarters: one less is none', () => {
    expect(windows('nggggn')).toEqual(['1-5 go'])
    expect(windows('ngggn')).toEqual([])
    expect(windows('ggg', 45)).toEqual(['0-3 go'])
    expect(windows('ggg', 46)).toEqual([])
    expect(windows('n', 0)).toEqual([])
    expect(windows('g', 0)).toEqual(['0-1 go'])
  })

  test('the better part that is long enough stands by itself, the rest too when it is', () => {
    expect(windows('ccccggggggcc')).toEqual(['0-4 caution', '4-10 go'])
    expect(windows('ggggccccgggg')).toEqual(['0-4 go', '4-8 caution', '8-12 go'])
  })

  test('good quarters too short by themselves count as the worse ones beside them', () => {
    expect(windows('cgcgcg')).toEqual(['0-6 caution'])
    expect(windows('ugcgug')).toEqual(['0-6 unknown'])
    expect(windows('uuccccuuuu')).toEqual(['2-6 caution', '6-10 unknown'])
  })

  test('no-go is in no window', () => {
    expect(windows('nnnnnnnn')).toEqual([])
    expect(windows('ccncc')).toEqual([])
  })

  test('what opens and closes is the rule that stands against it beside', () => {
    const [window] = windowsOf(day('nggggc', 'rain-now'), 60)
    expect(window).toMatchObject({ opens: 'rain-now', closes: 'rain-now' })
    expect(windowsOf(day('gggg'), 60)[0]).toMatchObject({ opens: null, closes: null })
    // What follows is better: nothing closes it.
    expect(windowsOf(day('ccccgggg'), 60)[0]).toMatchObject({ outcome: 'caution', closes: null })
  })

  test('windows never overlap, come in order and hold nothing worse than they say', () => {
    const order = { go: 0, caution: 1, unknown: 2, 'no-go': 3 }
    let seed = 7
    for (let round = 0; round < 300; round += 1) {
      const drawn = Array.from({ length: 40 }, () => {
        seed = (seed * 1103515245 + 12345) % 2 ** 31
        return 'gggccun'[Math.floor(seed / 65536) % 7]
      }).join('')
      const quarters = day(drawn)
      let last = 0
      for (const { from, to, outcome } of windowsOf(quarters, 60)) {
        expect(from).toBeGreaterThanOrEqual(last)
        expect(to - from).toBeGreaterThanOrEqual(3600)
        const inside = quarters.filter(({ at }) => at >= from && at < to).map((quarter) => order[quarter.outcome])
        expect(Math.max(...inside)).toBe(order[outcome])
        last = to
      }
    }
  })
})
