import { describe, expect, it } from 'vitest'
import type { FindingId } from '../../../src/bot/answer.js'
import { texts } from '../../../src/bot/text/index.js'
import { findingLine } from '../../../src/bot/views/finding.js'
import type { Finding } from '../../../src/core/finding.js'
import { finding, metric } from '../../support/answers.js'

function line(rule: FindingId, part: Partial<Finding<FindingId>>): string {
  return findingLine(finding(rule, part), metric, texts.en)
}

describe('findingLine', () => {
  it.each([
    [
      'below a floor',
      'dew-margin',
      { value: 2.4, unit: 'K', limit: 3, margin: -0.6, fix: 'wait:dew' },
      '✕ dew margin 2.4 °C, at least 3 °C → wait until the surface is clear of the dew point'
    ],
    ['above a ceiling', 'wind-mean', { value: 30, unit: 'km/h', limit: 25, margin: -5, fix: null }, '✕ mean wind 30 km/h, at most 25 km/h'],
    [
      'inside a ceiling',
      'wind-mean',
      { outcome: 'caution', value: 20, unit: 'km/h', limit: 25, margin: 5, fix: 'shield:wind' },
      '△ mean wind 20 km/h, at most 25 km/h → screen the wind'
    ],
    ['on a floor', 'dew-margin', { outcome: 'caution', value: 3, unit: 'K', limit: 3, margin: 0 }, '△ dew margin 3 °C, at least 3 °C'],
    ['on a bound with two sides', 'kit-temperature', { outcome: 'caution', value: 32, unit: 'C', limit: 32, margin: 0 }, '△ kit 32 °C, limit 32 °C'],
    [
      'a chance on its bound is too much',
      'rain-coming',
      { value: 50, unit: '%', limit: 50, margin: 0 },
      '✕ rain until closed up 50 %, must be below 50 %'
    ],
    [
      'heat by WBGT, not by the heat index',
      'heat',
      {
        outcome: 'caution',
        value: 24,
        unit: 'C',
        limit: 39.4,
        margin: 15.4,
        fix: 'rest:shade',
        because: { of: 'wbgt', value: 25.2, unit: 'C', limit: 22.98, margin: -2.22, spread: 1, origin: 'forecast' }
      },
      '△ WBGT 25.2 °C (forecast), at most 23 °C → water, shade, rests'
    ],
    [
      'an estimate too near',
      'wind-gust',
      { outcome: 'unknown', value: 33, unit: 'km/h', limit: 35, margin: 2, spread: 8, origin: 'forecast', fix: 'read:gust' },
      '? gust 33 km/h (forecast, too close to call), at most 35 km/h → read the gust on the roof'
    ],
    ['missing', 'humidity', { outcome: 'unknown', fix: 'read:humidity' }, '? humidity: not known → read the humidity'],
    [
      'too old',
      'substrate-dry',
      { outcome: 'unknown', stale: true, fix: 'state:dry' },
      '? substrate dry: not stated (last one too old) → check and state: dry'
    ],
    ['stated', 'rain-now', { value: true, fix: 'wait:rain' }, '✕ rain falling → wait for the rain to pass, close up'],
    ['days', 'adhesive-date', { outcome: 'caution', value: 1, unit: 'd' }, '△ adhesive left before expiry 1 day'],
    ['past', 'adhesive-date', { value: -3, unit: 'd', fix: 'change:kit' }, '✕ adhesive past its expiry → change the kit'],
    ['a lapsed welder, not its width', 'coupon', { value: 41, unit: 'mm', fix: 'weld:coupon' }, '✕ welder not cleared → weld a coupon'],
    [
      'go says no fix',
      'dew-margin',
      { outcome: 'go', value: 6, unit: 'K', limit: 3, margin: 3, fix: 'wait:dew' },
      '✓ dew margin 6 °C, at least 3 °C'
    ],
    ['ice', 'ice', { outcome: 'caution', value: 1, unit: 'C', fix: 'watch:ice' }, '△ ice possible, 1 °C → watch for ice'],
    ['voids', 'open-voids', { value: 2, fix: 'repair:void' }, '✕ voids not passed: 2 → repair the open voids'],
    [
      'sun down',
      'daylight',
      { value: 700, unit: 'min', origin: 'model', fix: 'wait:daylight' },
      '✕ not enough daylight to close up → close up what is open, go on in daylight'
    ]
  ] as const)('%s', (_what, rule, part, shown) => {
    expect(line(rule, part)).toBe(shown)
  })
})
