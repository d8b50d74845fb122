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
