import fc from 'fast-check'
import { readOutline } from '../../../src/adapters/outline/index.js'
import { layOut } from '../../../src/core/sheets/lay-out.js'
import { outlineOf, outlineProblem, sheetsAbout } from '../../../src/core/sheets/outline.js'
import { type Change, type Cut, changes, cuts, cutText, mutated, polluted } from './mutate.js'

export interface OutlineFile {
  readonly kind: 'geojson' | 'dxf' | 'csv'
  readonly points: readonly (readonly [number, number])[]
  readonly opening: boolean
  readonly changes: readonly Change[]
  readonly cuts: readonly Cut[]
  readonly bytes: readonly number[]
}

const coordinate = fc.oneof(
  fc.integer({ min: -60, max: 60 }),
  fc.double({ min: -60, max: 60, noNaN: true }),
  fc.constantFrom(0, -0, 1e-9, 1e9, 1e300, Number.NaN, Number.POSITIVE_INFINITY)
)

/** Outlines that cross themselves, have no area, lie nowhere, and files of them that were cut, changed and spoilt. */
export const outlineFiles: fc.Arbitrary<OutlineFile> = fc.record({
  kind: fc.constantFrom('geojson', 'dxf', 'csv'),
  points: fc.oneof(
    fc.array(fc.tuple(coordinate, coordinate), { maxLength: 12 }),
    fc.constant<readonly (readonly [number, number])[]>([
      [0, 0],
      [24, 0],
      [24, 12],
      [10, 12],
      [10, 30],
      [0, 30]
    ])
  ),
  opening: fc.boolean(),
  changes: fc.oneof(fc.constant([]), changes),
  cuts,
  bytes: fc.oneof({ weight: 6, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.array(fc.integer({ min: 0, max: 255 }), { maxLength: 8 }) })
})

const hole: readonly (readonly [number, number])[] = [
  [2, 2],
  [4, 2],
  [4, 4],
  [2, 4]
]

function ringsOf({ points, opening }: OutlineFile): readonly (readonly (readonly [number, number])[])[] {
  return opening ? [points, hole] : [points]
}

function geoJson(file: OutlineFile): string {
  const rings = ringsOf(file).map((ring) => [...ring, ...ring.slice(0, 1)])
  return JSON.stringify(mutated({ type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates: rings } }, file.changes))
}

function csv(file: OutlineFile): string {
  const rows = ringsOf(file).flatMap((ring, i) => ring.map(([x, y]) => [x, y, i]))
  const table = mutated(rows, file.changes)
  return `x,y,ring\n${(Array.isArray(table) ? table : [table]).map((row) => (Array.isArray(row) ? row.join(',') : String(row))).join('\n')}\n`
}

function dxf(file: OutlineFile): string {
  const rings = mutated(ringsOf(file), file.changes)
  const lines = ['0', 'SECTION', '2', 'ENTITIES']
  for (const ring of Array.isArray(rings) ? rings : []) {
    const corners = Array.isArray(ring) ? ring : []
    lines.push('0', 'LWPOLYLINE', '8', 'roof', '90', String(corners.length), '70', '1')
    for (const corner of corners)
      lines.push('10', String(Array.isArray(corner) ? corner[0] : corner), '20', String(Array.isArray(corner) ? corner[1] : 0))
  }
  return [...lines, '0', 'ENDSEC', '0', 'EOF', ''].join('\n')
}

function outlineBytes(file: OutlineFile): Uint8Array {
  const text = { geojson: geoJson, csv, dxf }[file.kind](file)
  return Buffer.concat([Buffer.from(cutText(text, file.cuts)), Buffer.from(file.bytes)])
}

const sizes = { widthMm: 2000, rollMm: 20_000, lapMm: 80, endGapMm: 6, stripWidthMm: 150, pastLapMm: 75, cornerRadiusMm: 25, patchFromLayers: 4 }

/** What is wrong with how a file was read, and laid out where it can be; null: nothing. */
export function outlineFault(file: OutlineFile): string | null {
  try {
    const read = readOutline(outlineBytes(file), 'm')
    if (polluted()) return 'a prototype was changed'
    if (!read.ok) return read.problem.word.length > 80 ? 'a word that is too long' : null
    const rings = [read.outer, ...read.openings].map((ring) => ring.map(({ at }) => at))
    const [outer = [], ...holes] = rings
    if (outlineProblem({ outer, holes }) !== null) return null
    if (rings.flat(2).some((value) => !Number.isFinite(value))) return 'a corner that is no place'
    const outline = outlineOf(outer, holes)
    if (sheetsAbout(outline, sizes) > 300) return null
    layOut(outline, sizes, null)
    return null
  } catch (error) {
    return `threw ${error instanceof Error ? error.stack : String(error)}`
  }
}
