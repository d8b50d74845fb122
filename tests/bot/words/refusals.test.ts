import { describe, expect, test } from 'vitest'
import { readWords } from '../../../src/bot/words/read.js'
import { metric, refused, said } from './reader.js'

describe('codes', () => {
  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['/', 'empty'],
    ['?!', 'empty'],
    ['seamhand', 'empty'],
    ['/seamhand', 'empty'],
    ['<@U123>', 'empty'],
    ['«»', 'empty'],
    ['x'.repeat(2001), 'too-long'],
    [`spray override ${'🙂'.repeat(2000)}`, 'too-long'],
    ['sprai', 'unknown-command'],
    ['hello', 'unknown-command'],
    ['can we', 'unknown-command'],
    ['can we fly?', 'unknown-command'],
    ['20', 'unknown-command'],
    ['<!channel>', 'unknown-command'],
    ['day 2026-02-30', 'bad-number'],
    ['day today tomorrow', 'duplicate'],
    ['day 3', 'unknown-word'],
    ['roofs 24x36', 'unknown-command'],
    ['help xyzzy', 'unknown-command'],
    ['\u0000', 'unknown-command'],
    ['seamhandspray', 'unknown-command'],
    ['can we maybe spray', 'unknown-command'],
    ['can we spray weld', 'unknown-word'],
    ['spray foo', 'unknown-word'],
    ['spray 20', 'unknown-word'],
    ['spray air 20 <@U123>', 'unknown-word'],
    ['spray *dry*', 'unknown-word'],
    ['spray dry/clean', 'unknown-word'],
    ['spray K7', 'unknown-word'],
    ['spray no air', 'unknown-word'],
    ['spray no wet', 'unknown-word'],
    ['spray no', 'unknown-word'],
    ['spray air twenty', 'unknown-word'],
    ['air 20 dry', 'unknown-word'],
    ['weld robot air 20', 'unknown-word'],
    ['undo 12', 'unknown-word'],
    ['undo last', 'unknown-word'],
    ['me lang de', 'unknown-word'],
    ['laid 40 m2 kit K', 'unknown-word'],
    ['weld robot charts', 'unknown-word'],
    ['strip 2 m 4x', 'duplicate'],
    ['spray air', 'missing'],
    ['spray air dry', 'missing'],
    ['spray air @07:30', 'missing'],
    ['spray intakes', 'missing'],
    ['spray intakes dry', 'missing'],
    ['spray open', 'missing'],
    ['spray rain none', 'missing'],
    ['spray fleece', 'missing'],
    ['spray kit', 'missing'],
    ['spray kit dry', 'missing'],
    ['spray exp', 'missing'],
    ['spray exp dry', 'missing'],
    ['spray override', 'missing'],
    ['spray override   ', 'missing'],
    ['strip', 'missing'],
    ['strip gap 6', 'missing'],
    ['probe', 'missing'],
    ['probe 40 mm', 'missing'],
    ['probe course 4', 'missing'],
    ['probe course 4 3 m', 'missing'],
    ['probe fixed', 'missing'],
    ['probe void 3', 'missing'],
    ['laid', 'missing'],
    ['laid robot 40 m', 'missing'],
    ['weld 41 mm film', 'missing'],
    ['weld film 41', 'missing'],
    ['weld restart', 'missing'],
    ['weld robot warm', 'missing'],
    ['weld robot cut', 'missing'],
    ['weld robot chart film', 'inconsistent'],
    ['weld robot chart restart', 'inconsistent'],
    ['weld robot thick 1.5 restart', 'inconsistent'],
    ['weld robot released 0 m', 'out-of-range'],
    ['laid 40 m2 R2', 'missing'],
    ['laid 40 m2 R2 10 R2 12', 'duplicate'],
    ['weld robot by Ana', 'missing'],
    ['weld robot by', 'missing'],
    ['weld lead 50 m', 'missing'],
    ['weld lead', 'missing'],
    ['kit lot', 'missing'],
    ['kit K7 used', 'missing'],
    ['me lang', 'missing'],
    ['laid 40 kit', 'missing'],
    ['air 1.2.3', 'bad-number'],
    ['spray exp 2026-02-30', 'bad-number'],
    ['spray exp 2025-02-29', 'bad-number'],
    ['spray exp 04/05/2026', 'bad-number'],
    ['spray exp 2026-13-01', 'bad-number'],
    ['spray @25:00', 'bad-number'],
    ['spray @2026-05-04T06:00:00', 'bad-number'],
    ['spray @2026-02-30T06:00:00Z', 'bad-number'],
    ['spray @7', 'bad-number'],
    ['probe 3.5 fixed', 'bad-number'],
    ['kit K7 ٢٥', 'bad-number'],
    ['air 1,250', 'ambiguous-number'],
    ['laid 1.250 m2', 'ambiguous-number'],
    ['air 20 %', 'wrong-unit'],
    ['strip 2 m gap 6 C', 'wrong-unit'],
    ['probe course 4 m', 'wrong-unit'],
    ['probe course 4 40 C', 'wrong-unit'],
    ['laid 40 m', 'wrong-unit'],
    ['weld robot 230 V', 'wrong-unit'],
    ['foam 45 m', 'wrong-unit'],
    ['probe 3 mm fixed', 'inconsistent'],
    ['air 61', 'out-of-range'],
    ['air rh 0', 'out-of-range'],
    ['probe 0 fixed', 'out-of-range'],
    ['spray @10:06', 'out-of-range'],
    ['spray @2026-05-04T08:05:01Z', 'out-of-range'],
    ['air wind 10 gust 9', 'inconsistent'],
    ['air gust 9 wind 10', 'inconsistent'],
    ['air 20 dew 21', 'inconsistent'],
    ['spray dry wet', 'inconsistent'],
    ['spray dry fleece wet', 'inconsistent'],
    ['spray clean dirty', 'inconsistent'],
    ['spray intakes none intakes open', 'inconsistent'],
    ['spray rolled relaxed', 'inconsistent'],
    ['spray mixed no mixed', 'inconsistent'],
    ['spray tight leak', 'inconsistent'],
    ['air rain no rain', 'inconsistent'],
    ['air rain rain 10', 'inconsistent'],
    ['spray compatible contact', 'inconsistent'],
    ['weld robot film parted 40', 'inconsistent'],
    ['weld robot restart off', 'inconsistent'],
    ['weld robot set 400 speed 2', 'inconsistent'],
    ['weld robot 41 mm film restart', 'inconsistent'],
    ['weld robot restart by Ana', 'inconsistent'],
    ['probe course 4 lap end 40 mm', 'inconsistent'],
    ['probe list 3 fixed', 'inconsistent'],
    ['probe 3 fixed passed', 'inconsistent'],
    ['probe 3 fixed course 4', 'inconsistent'],
    ['kit box store', 'inconsistent'],
    ['kit mixed no mixed', 'inconsistent'],
    ['air air 20 air 21', 'duplicate'],
    ['air 20 air 21', 'duplicate'],
    ['air rh 50 60', 'duplicate'],
    ['air rain 10 rain 20', 'duplicate'],
    ['spray kit K7 kit K8', 'duplicate'],
    ['kit 25 26', 'duplicate'],
    ['kit K7 K8', 'duplicate'],
    ['weld robot hand', 'duplicate'],
    ['strip 2 m 3 m', 'duplicate'],
    ['probe course 4 course 5 40 mm', 'duplicate'],
    ['probe course 4 40 mm 50 mm', 'duplicate'],
    ['spray @07:00 @08:00', 'duplicate'],
    ['foam 30 40', 'duplicate'],
    ['kit lot A1 lot A2', 'duplicate'],
    ['spray exp today exp tomorrow', 'duplicate'],
    ['help weld spray', 'duplicate']
  ])('%j: %s', (text, code) => {
    expect(refused(text).code).toBe(code)
  })

  test('the same label twice with the same value is fine', () => {
    expect(said('air 20 air 20 air 68 F rain 10 no rain rain 10 %')).toEqual({
      command: 'air',
      reading: { airC: 20 },
      statement: { rainFalling: false, rainChancePct: 10 }
    })
    expect(said('spray dry dry no leak tight kit 25 iso 25')).toMatchObject({ statement: { tight: true }, kit: { data: { isoC: 25 } } })
  })
})

describe('what a refusal tells', () => {
  test('the word as typed, the nearest word, and what was understood', () => {
    expect(readWords('/Spray air 68 F no thunder WND 10', metric)).toEqual({
      ok: false,
      command: 'spray',
      refusal: {
        code: 'unknown-word',
        word: 'WND',
        understood: [
          { label: 'air', value: 20, unit: 'C' },
          { label: 'thunder', value: false, unit: null }
        ],
        detail: { nearest: 'wind' },
        ref: null
      }
    })
  })

  test.each([
    ['spray dekc 17', 'deck'],
    ['spray gsut 20', 'gust'],
    ['pulvériser supoprt 16', 'support'],
    ['rociar vietno 9', 'viento']
  ])('%s: two letters swapped are one slip, so it is %s that was meant', (text, near) => {
    expect(refused(text).detail).toEqual({ nearest: near })
  })

  test('the nearest commands', () => {
    const read = readWords('wld robot 41', metric)
    expect(read).toMatchObject({
      ok: false,
      command: null,
      refusal: { code: 'unknown-command', word: 'wld', detail: { nearest: ['weld', 'spray'] } }
    })
    expect(refused('xyzzyxyzzy').detail).toEqual({ nearest: ['spray', 'help'] })
  })

  test('the part that is missing', () => {
    expect(refused('strip gap 6')).toMatchObject({ word: 'width', detail: { label: 'width' }, understood: [{ label: 'gap', value: 6, unit: 'mm' }] })
    expect(refused('probe course 4 lap')).toMatchObject({
      word: 'length',
      understood: [
        { label: 'course', value: 4 },
        { label: 'on', value: 'lap' }
      ]
    })
    expect(refused('spray aire')).toMatchObject({ word: 'aire', detail: { label: 'air' } })
  })

  test('a surface and its state; the English label of a second value', () => {
    expect(refused('rociar fieltro mojado hr 50 60')).toMatchObject({
      code: 'duplicate',
      word: 'hr',
      detail: { label: 'rh' },
      understood: [
        { label: 'fleece', value: 'wet', unit: null },
        { label: 'rh', value: 50, unit: '%' }
      ]
    })
  })

  test('a long word is cut, never in the middle of a character', () => {
    expect(refused(`spray ${'🙂'.repeat(100)}`).word).toBe('🙂'.repeat(60))
  })

  test('the bounds', () => {
    expect(refused('weld robot 301 mm').detail).toEqual({ label: 'width', min: 0, max: 300, unit: 'mm' })
    expect(refused('spray @12:00').detail).toEqual({ label: 'time', max: '2026-05-04T08:05:00Z' })
  })
})
