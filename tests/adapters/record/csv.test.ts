import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { toCsv } from '../../../src/adapters/record/csv.js'

const text = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)

describe('a table as CSV', () => {
  // RFC 4180 §2: CRLF after each record, fields with commas, quotes or breaks in quotes, quotes doubled.
  test('is written as RFC 4180 has it, with the mark that spreadsheets know UTF-8 by', () => {
    const csv = text(
      toCsv({
        head: ['a', 'b'],
        rows: [
          ['x,y', 'say "hi"'],
          ['two\nlines', 5],
          [null, true]
        ]
      })
    )
    expect(csv).toBe('\uFEFFa,b\r\n"x,y","say ""hi"""\r\n"two\nlines",5\r\n,true\r\n')
  })

  test.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx'])('%j is no formula', (cell) => {
    const [row] = parse(text(toCsv({ head: ['a'], rows: [[cell]] })), { bom: true, from: 2, relax_column_count: true }) as string[][]
    expect(row?.[0]).toBe(`'${cell}`)
  })

  test('numbers stay numbers, below zero too', () => {
    expect(text(toCsv({ head: ['a'], rows: [[-1.5]] }))).toContain('\r\n-1.5\r\n')
  })

  // Oracle: csv-parse, a general CSV reader.
  test('whatever is in it, a general reader reads it back', () => {
    const cell = fc.string({ unit: 'grapheme', maxLength: 12 }).filter((value) => !/^[=+\-@\t\r]/.test(value))
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const read = parse(text(toCsv({ head: ['a', 'b'], rows })), { bom: true, from: 2, skip_empty_lines: false }) as string[][]
        expect(read).toEqual(rows)
      }),
      { numRuns: 150 }
    )
  })
})
