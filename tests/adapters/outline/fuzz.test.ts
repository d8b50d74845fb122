import { createRequire } from 'node:module'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readDxf } from '../../../src/adapters/outline/dxf.js'
import { readOutline } from '../../../src/adapters/outline/index.js'
import { outlineFault, outlineFiles } from '../../support/fuzz/outline.js'
import { roofs } from '../../support/sheets/roofs.js'

/** A general reader of drawings, from the registry: what it reads of a whole file, ours reads too. */
const DxfParser = createRequire(import.meta.url)('dxf-parser') as new () => {
  parseSync(text: string): { readonly entities: readonly { readonly vertices: readonly { readonly x: number; readonly y: number }[] }[] }
}

describe('outline files, cut and changed', () => {
  it('are refused by name, or laid out', () => {
    fc.assert(
      fc.property(outlineFiles, (file) => {
        expect(outlineFault(file)).toBeNull()
      }),
      { numRuns: 150 }
    )
  })
})

// Shrunk: what was said back of a roof outside another was as long as its line.
it.each([
  ['a table', `x,y,ring\n0,0,0\n24,0,0\n24,12,0\n90,90,${'x'.repeat(5000)}\n91,90,${'x'.repeat(5000)}\n91,91,${'x'.repeat(5000)}\n`],
  ['a drawing', drawing([...square('roof', 0, 24), ...square('x'.repeat(5000), 90, 1)])]
])('the word of a problem in %s is short', (_, text) => {
  const read = readOutline(Buffer.from(text), 'm')
  expect(read).toMatchObject({ ok: false, problem: { what: 'several-outlines' } })
  expect(read.ok ? 0 : read.problem.word.length).toBe(80)
})

function square(layer: string, at: number, side: number): readonly string[] {
  const corners = [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side]
  ].flatMap(([x = 0, y = 0]) => ['10', String(at + x), '20', String(at + y)])
  return ['0', 'LWPOLYLINE', '8', layer, '90', '4', '70', '1', ...corners]
}

// A reader that looks for its format, or for a number, anew from every place does not end on a file of 2 MB. Here it would not either.
it.each([
  ['line ends after a code', `0${'\n'.repeat(1_000_000)}x`, 'bad-number'],
  ['a remark of spaces', `999${' '.repeat(1_000_000)}x`, 'no-outline'],
  ['digits without end', `x,y\n${'1'.repeat(1_000_000)}x,0\n`, 'bad-number']
])('%s are read through once', (_, text, what) => {
  expect(readOutline(Buffer.from(text), 'm')).toMatchObject({ ok: false, problem: { what } })
})

it.each([
  ['0\nSECTION', true],
  [' \n 0 \r\n\r\n  SECTION', true],
  ['999\nremark', true],
  ['999 \r\nremark', true],
  ['0 SECTION', false],
  ['999 9', false]
])('begins as a drawing: %j %s', (head, drawn) => {
  const read = readOutline(Buffer.from(`${head}\n`), 'm')
  expect(!read.ok && read.problem.what === 'not-dxf').toBe(drawn)
})

function drawing(entities: readonly string[]): string {
  return ['0', 'SECTION', '2', 'ENTITIES', ...entities, '0', 'ENDSEC', '0', 'EOF', ''].join('\n')
}

describe('drawings', () => {
  it('are read as a general reader reads them', () => {
    for (const { outline } of fc.sample(roofs, { numRuns: 20 })) {
      const corners = outline.outer.flatMap(([x, y]) => ['10', String(x), '20', String(y)])
      const text = drawing(['0', 'LWPOLYLINE', '8', 'roof', '90', String(outline.outer.length), '70', '1', ...corners])
      const theirs = new DxfParser().parseSync(text).entities[0]?.vertices.map(({ x, y }) => [x * 1000, y * 1000])
      const ours = readDxf(text, 'm')
      expect(ours.ok && ours.outer.map(({ at }) => at)).toEqual(theirs)
    }
  })

  // Shrunk: three files of a few lines over which that reader never ended.
  it.each([
    ['a corner that lost its y', ['0', 'LWPOLYLINE', '90', '2', '70', '1', '10', '1', '999', 'x', '10', '2', '20', '2']],
    ['an old polyline without its end', ['0', 'POLYLINE', '70', '1', '0', 'LINE', '10', '0', '20', '0', '11', '1', '21', '1']],
    ['a count of corners that is none', ['0', 'LWPOLYLINE', '90', '1e9', '70', '1', '10', '1', '20', '1']]
  ])('%s ends, without a roof', (_, entities) => {
    const read = readOutline(Buffer.from(drawing(entities)), 'm')
    expect(read.ok ? read.outer.length : 0).toBeLessThan(3)
  })

  it('old polylines hold the corners that follow them', () => {
    const vertex = (x: number, y: number) => ['0', 'VERTEX', '8', 'roof', '10', String(x), '20', String(y), '30', '0']
    const text = drawing([
      ...['0', 'POLYLINE', '8', 'roof', '66', '1', '10', '0', '20', '0', '30', '0', '70', '1'],
      ...vertex(0, 0),
      ...vertex(24, 0),
      ...vertex(24, 12),
      ...['0', 'SEQEND']
    ])
    const read = readDxf(text, 'm')
    expect(read.ok && read.outer.map(({ at }) => at)).toEqual([
      [0, 0],
      [24_000, 0],
      [24_000, 12_000]
    ])
  })

  it('what lies on the paper or is switched off is passed over', () => {
    const square = (extra: readonly string[]) => [
      '0',
      'LWPOLYLINE',
      ...extra,
      '70',
      '1',
      ...['10', '0', '20', '0', '10', '9', '20', '0', '10', '9', '20', '9']
    ]
    expect(readDxf(drawing([...square([]), ...square(['67', '1']), ...square(['60', '1'])]), 'm')).toMatchObject({ ok: true, openings: [] })
  })
})
