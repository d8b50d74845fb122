import { expect, it } from 'vitest'
import { kitTemperature } from '../../../src/core/rules/kit-temperature.js'
import { check, gone, model, type Overrides, reading, shortly, tooOld } from '../../support/facts.js'
import { ruleTable } from '../../support/rule-table.js'

const both = (value: number): Overrides => ({ kit: { isoC: reading(value), resinC: reading(value) } })
const estimate = (value: number, spread: number): Overrides => ({ kit: { isoC: model(value, spread), resinC: model(value, spread) } })

// Source: common practice, no source.
ruleTable('kit-temperature: 21 … 32 °C, caution within 1 K of an end (common practice, no source)', kitTemperature, 'spray', [
  ['below the low bound', both(20.999999), 'no-go', 'warm:kit'],
  ['on the low bound', both(21), 'caution', 'warm:kit'],
  ['above the low bound', both(21.000001), 'caution', 'warm:kit'],
  ['below the low caution', both(21.999999), 'caution', 'warm:kit'],
  ['on the low caution', both(22), 'go', null],
  ['on the high caution', both(31), 'go', null],
  ['above the high caution', both(31.000001), 'caution', 'cool:kit'],
  ['on the high bound', both(32), 'caution', 'cool:kit'],
  ['above the high bound', both(32.000001), 'no-go', 'cool:kit'],
  ['within the rounding of six decimals', both(20.9999999), 'caution', 'warm:kit'],
  ['both missing', { kit: { isoC: gone, resinC: gone } }, 'unknown', 'read:kit'],
  ['one missing, the other good', { kit: { isoC: gone, resinC: reading(25) } }, 'unknown', 'read:kit'],
  ['one missing, the other too cold', { kit: { isoC: gone, resinC: reading(15) } }, 'no-go', 'warm:kit'],
  ['too old', { kit: { isoC: tooOld, resinC: tooOld } }, 'unknown', 'read:kit'],
  ['read while unmixed', { kit: { isoC: tooOld, resinC: tooOld, unmixed: true, mixed: gone } }, 'unknown', 'mix:kit'],
  ['read while unmixed, mixed since', { kit: { isoC: tooOld, resinC: tooOld, unmixed: true } }, 'unknown', 'read:kit'],
  ['iso colder than resin', { kit: { isoC: reading(20), resinC: reading(25) } }, 'no-go', 'warm:kit'],
  ['resin hotter than iso', { kit: { isoC: reading(25), resinC: reading(33) } }, 'no-go', 'cool:kit'],
  ['estimate clear of everything', estimate(26, 1), 'go', null],
  ['estimate across the low caution', estimate(23, 1), 'caution', 'warm:kit'],
  ['estimate across the low bound', estimate(22, 1), 'unknown', 'read:kit'],
  ['estimate across the high bound', estimate(31, 1), 'unknown', 'read:kit'],
  ['estimate across everything', estimate(26, 10), 'unknown', 'read:kit'],
  ['estimate clear below', estimate(19, 1), 'no-go', 'warm:kit']
])

it('shows the worse part, and of two alike the one with less margin', () => {
  expect(check(kitTemperature, 'spray', { kit: { isoC: reading(25), resinC: reading(22) } })).toMatchObject({ value: 22, limit: 21, margin: 1 })
  expect(check(kitTemperature, 'spray', { kit: { isoC: reading(23), resinC: reading(31) } })).toMatchObject({ value: 31, limit: 32, margin: 1 })
  expect(shortly(kitTemperature, 'spray', { kit: { isoC: reading(18), resinC: gone } })).toEqual(['no-go', 'warm:kit'])
})
