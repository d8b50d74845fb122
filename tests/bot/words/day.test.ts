import { describe, expect, test } from 'vitest'
import { readWords } from '../../../src/bot/words/read.js'
import { metric, refused, said } from './reader.js'

describe('day', () => {
  test.each(['day', '/day', 'Day!', 'día', 'dia', 'jour', '/seamhand day', 'seamhand jour'])('%s is today', (text) => {
    expect(said(text)).toEqual({ command: 'day', date: null })
  })

  // 2026-05-04 in Berlin; the words of the grammar for dates.
  test.each([
    ['day today', '2026-05-04'],
    ['día hoy', '2026-05-04'],
    ["jour aujourd'hui", '2026-05-04'],
    ['day tomorrow', '2026-05-05'],
    ['día mañana', '2026-05-05'],
    ['jour demain ?', '2026-05-05'],
    ['day 2026-05-07', '2026-05-07'],
    ['day 2026-05-07 2026-05-07', '2026-05-07']
  ])('%s is %s', (text, date) => {
    expect(said(text)).toEqual({ command: 'day', date })
  })

  test('its start, its record and its table, in all three languages, of any date', () => {
    for (const words of ['day start', 'día inicio', 'jour début']) expect(said(words)).toEqual({ command: 'day start' })
    for (const words of ['day record', 'día registro', 'jour relevé'])
      expect(said(words)).toEqual({ command: 'day record', part: 'record', date: null })
    expect(said('day 2026-05-03 csv')).toEqual({ command: 'day record', part: 'csv', date: '2026-05-03' })
  })

  test.each([
    ['day record csv', 'duplicate', 'csv'],
    ['day start 2026-05-04', 'inconsistent', '2026-05-04'],
    ['day 2026-02-30', 'bad-number', '2026-02-30'],
    ['day 04/05/2026', 'bad-number', '04/05/2026'],
    ['day today 2026-05-05', 'duplicate', '2026-05-05']
  ])('%s is refused: %s', (text, code, word) => {
    expect(refused(text)).toMatchObject({ code, word })
  })

  test('what was understood is named beside what was not', () => {
    const read = readWords('day tomorrow soon', metric)
    expect(read).toMatchObject({ ok: false, command: 'day', refusal: { understood: [{ label: 'date', value: '2026-05-05', unit: null }] } })
  })
})

describe('a report, and yesterday', () => {
  test.each(['day report', 'día informe', 'día reporte', 'jour rapport', 'jour registre', 'jour relevé'])('%s is the record', (text) => {
    expect(said(text)).toEqual({ command: 'day record', part: 'record', date: null })
  })

  test.each(['day yesterday', 'día ayer', 'jour hier'])('%s', (text) => {
    expect(said(text)).toEqual({ command: 'day', date: '2026-05-03' })
    expect(said(text.replace(' ', ' csv '))).toEqual({ command: 'day record', part: 'csv', date: '2026-05-03' })
  })
})
