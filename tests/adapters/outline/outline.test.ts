import { describe, expect, it } from 'vitest'
import { readOutline } from '../../../src/adapters/outline/index.js'
import { localPlane } from '../../../src/core/sheets/local-plane.js'
import { outlineOf, outlineProblem } from '../../../src/core/sheets/outline.js'
import type { ReadOutline } from '../../../src/core/sheets/outline-file.js'
import { polygonAreaMm2 } from '../../../src/core/sheets/polygon.js'

const bytes = (text: string) => new TextEncoder().encode(text)
const read = (text: string, unit: 'm' | 'ft' = 'm') => readOutline(bytes(text), unit)

/** Area of what was read, m², as it would be laid out. */
function areaOf(seen: ReadOutline): number {
  if (!seen.ok) throw new Error(`${seen.problem.what} ${seen.problem.word}`)
  const polygon = outlineOf(
    seen.outer.map(({ at }) => at),
    seen.openings.map((ring) => ring.map(({ at }) => at))
  )
  expect(outlineProblem(polygon)).toBeNull()
  return polygonAreaMm2(polygon) / 1e6
}

const refused = (seen: ReadOutline) => (seen.ok ? null : seen.problem)

describe('CSV', () => {
  it.each([
    ['0,0\n24,0\n24,36\n0,36\n', 864],
    ['0;0\r\n24,5;0\r\n24,5;36\r\n0;36\r\n', 882],
    ['x\ty\n0\t0\n24\t0\n24\t36\n', 432],
    ['\uFEFFxMm,yMm\n0,0\n24000,0\n24000,36000\n0,36000', 864],
    ['x (ft),y (ft)\n0,0\n100,0\n100,100\n0,100\n', 929.0304],
    ['# survey\neast,north # m\n0,0\n24,0\n24,36\n0,36\n0,0\n', 864],
    ['y,x\n0,0\n0,24\n36,24\n36,0\n', 864],
    ['0 0\n24 0\n24 36\n0 36', 864],
    ['0,0\n24,0\n24,36\n0,36\n\n5,9\n7,9\n7,10.2\n5,10.2\n', 861.6],
    ['x,y,ring\n0,0,1\n24,0,1\n5,9,2\n24,36,1\n7,9,2\n0,36,1\n7,10.2,2\n5,10.2,2\n', 861.6],
    ['"0","0"\n"24","0"\n"24","36"\n', 432]
  ])('%j is %d m²', (text, area) => {
    expect(areaOf(read(text))).toBeCloseTo(area, 6)
  })

  // The international foot, by definition.
  it('takes bare numbers in what the person works in', () => {
    expect(areaOf(read('0,0\n100,0\n100,100\n0,100', 'ft'))).toBeCloseTo(929.0304, 6)
  })

  it.each([
    ['', 'no-outline', ''],
    ['name,width\nroof,24', 'bad-number', '1: name'],
    ['x,width\n0,24', 'no-outline', 'x width'],
    ['0,0\n24,abc\n24,36', 'bad-number', '2: abc'],
    ['0,0\n24\n24,36', 'bad-number', '2: '],
    ['0,0\n24,0x10\n', 'bad-number', '2: 0x10'],
    ['0,0\n1,0\n1,1\n\n5,5\n9,5\n9,9\n5,9\n', 'several-outlines', '1: 0 0']
  ])('%j: %s at %j', (text, what, word) => {
    expect(refused(read(text))).toEqual({ what, word })
  })
})

const ring = (...corners: readonly (readonly [number, number])[]) => [...corners, corners[0] as readonly [number, number]]
const square = ring([0, 0], [24, 0], [24, 36], [0, 36])
const hole = ring([5, 9], [7, 9], [7, 10.2], [5, 10.2])
const polygon = { type: 'Polygon', coordinates: [square, hole] }
const feature = (geometry: unknown, properties = {}) => ({ type: 'Feature', properties, geometry })

describe('GeoJSON', () => {
  it.each([
    ['a polygon', polygon],
    ['a feature', feature(polygon)],
    [
      'a collection with a point beside it',
      { type: 'FeatureCollection', features: [feature({ type: 'Point', coordinates: [1, 2] }), feature(polygon)] }
    ],
    ['one of many', { type: 'MultiPolygon', coordinates: [[square, hole]] }],
    ['heights too', { type: 'Polygon', coordinates: [square.map(([x, y]) => [x, y, 8.5]), hole] }]
  ])('%s', (_, json) => {
    expect(areaOf(read(JSON.stringify(json)))).toBeCloseTo(861.6, 6)
  })

  // WGS 84: a degree of latitude at 45° is 111 131.75 m and of longitude 78 846.81 m, from memory.
  it('in degrees, as RFC 7946 has it', () => {
    const [perLat, perLon] = [111_131.75, 78_846.81]
    const [east, north] = [24 / perLon, 36 / perLat]
    const degrees = ring([8, 45], [8 + east, 45], [8 + east, 45 + north], [8, 45 + north])
    expect(areaOf(read(JSON.stringify({ type: 'Polygon', coordinates: [degrees] })))).toBeCloseTo(864, 1)
  })

  it('lengths of a degree: equator and pole by WGS 84, from memory', () => {
    const lengthM = (a: readonly [number, number], b: readonly [number, number]) => {
      const [[x1, y1], [x2, y2]] = localPlane([a, b]) as [readonly [number, number], readonly [number, number]]
      return Math.hypot(x2 - x1, y2 - y1) / 1000
    }
    expect(lengthM([0, -0.0005], [0, 0.0005]) * 1000).toBeCloseTo(110_574.3, 0)
    expect(lengthM([0, 0], [0.001, 0]) * 1000).toBeCloseTo(111_319.5, 0)
    expect(lengthM([0, 59.9995], [0, 60.0005]) * 1000).toBeCloseTo(111_412.2, 0)
  })

  it.each([
    [{ type: 'Polygon', coordinates: [square.slice(0, -1)] }, 'not-closed', 'ring 0'],
    [{ type: 'MultiPolygon', coordinates: [[square], [hole]] }, 'several-outlines', '2'],
    [{ type: 'FeatureCollection', features: [feature(polygon), feature(polygon)] }, 'several-outlines', '2'],
    [{ type: 'LineString', coordinates: square }, 'no-outline', ''],
    [{ type: 'Polygon', coordinates: [[['a', 0]]] }, 'bad-number', '0.0.0'],
    [{ type: 'Polygon', coordinates: [square, ring([50, 50], [51, 50], [51, 51])] }, 'several-outlines', 'ring 1, 0'],
    [[1, 2, 3], 'no-outline', '']
  ])('%j: %s', (json, what, word) => {
    expect(refused(read(JSON.stringify(json)))).toEqual({ what, word })
  })

  it('that is cut off is no JSON, and nesting does not end the program', () => {
    expect(refused(read('{"type":"Polygon","coordinates":'))).toEqual({ what: 'not-json', word: '' })
    const deep = `${'{"type":"GeometryCollection","geometries":['.repeat(2000)}${']}'.repeat(2000)}`
    expect(refused(read(deep))?.what).toBe('no-outline')
  })
})

/** A DXF (ASCII, group codes and values line by line) of some entities. */
function dxf(entities: readonly string[], units: number | null = 6): string {
  const header = units === null ? [] : ['0', 'SECTION', '2', 'HEADER', '9', '$INSUNITS', '70', String(units), '0', 'ENDSEC']
  return [...header, '0', 'SECTION', '2', 'ENTITIES', ...entities, '0', 'ENDSEC', '0', 'EOF', ''].join('\n')
}

function lwpolyline(corners: readonly (readonly [number, number])[], closed = true, layer = 'ROOF', bulge = 0): string {
  const vertices = corners.flatMap(([x, y]) => ['10', String(x), '20', String(y), ...(bulge === 0 ? [] : ['42', String(bulge)])])
  return ['0', 'LWPOLYLINE', '8', layer, '90', String(corners.length), '70', closed ? '1' : '0', ...vertices].join('\n')
}

function line([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): string {
  return ['0', 'LINE', '8', 'EDGE', '10', String(x1), '20', String(y1), '30', '0', '11', String(x2), '21', String(y2), '31', '0'].join('\n')
}

const corners = [
  [0, 0],
  [24, 0],
  [24, 36],
  [0, 36]
] as const
const opening = [
  [5, 9],
  [7, 9],
  [7, 10.2],
  [5, 10.2]
] as const
const scaled = (all: readonly (readonly [number, number])[], by: number) => all.map(([x, y]) => [x * by, y * by] as const)

describe('DXF', () => {
  it.each([
    ['closed polylines, metres', dxf([lwpolyline(corners), lwpolyline(opening)]), 861.6],
    ['the opening first', dxf([lwpolyline(opening), lwpolyline(corners)]), 861.6],
    ['mm', dxf([lwpolyline(scaled(corners, 1000))], 4), 864],
    ['inches', dxf([lwpolyline(scaled(corners, 1000 / 25.4))], 1), 864],
    ['feet', dxf([lwpolyline(scaled(corners, 1 / 0.3048))], 2), 864],
    ['no unit said: as the person works', dxf([lwpolyline(corners)], null), 864],
    ['not marked closed, but back where it began', dxf([lwpolyline([...corners, corners[0]], false)]), 864],
    ['loose lines in any order', dxf([line([24, 36], [24, 0]), line([0, 0], [24, 0]), line([0, 36], [0, 0]), line([0, 36], [24, 36])]), 864]
  ])('%s', (_, text, area) => {
    expect(areaOf(read(text))).toBeCloseTo(area, 4)
  })

  it.each([
    [
      'two roofs',
      dxf([
        lwpolyline(corners),
        lwpolyline(
          scaled(corners, 1).map(([x, y]) => [x + 50, y] as const),
          true,
          'ANNEX'
        )
      ]),
      'several-outlines',
      /ANNEX|ROOF/
    ],
    ['an open polyline', dxf([lwpolyline(corners, false)]), 'not-closed', /LWPOLYLINE ROOF/],
    ['an arc in the edge', dxf([lwpolyline(corners, true, 'ROOF', 0.5)]), 'curve', /LWPOLYLINE ROOF/],
    ['lines that do not meet', dxf([line([0, 0], [24, 0]), line([24, 0], [24, 36])]), 'not-closed', /LINE EDGE/],
    ['a circle alone', dxf([['0', 'CIRCLE', '8', '0', '10', '0', '20', '0', '40', '5'].join('\n')]), 'curve', /CIRCLE/],
    ['nothing', dxf([]), 'no-outline', /^$/],
    ['kilometres', dxf([lwpolyline(corners)], 7), 'unit', /7/]
  ])('%s', (_, text, what, word) => {
    expect(refused(read(text))).toMatchObject({ what, word: expect.stringMatching(word) })
  })

  it('cut off anywhere is refused or read, never thrown', () => {
    const whole = dxf([lwpolyline(corners), lwpolyline(opening)])
    for (let end = 0; end < whole.length; end += 7) expect(() => read(whole.slice(0, end))).not.toThrow()
  })
})

describe('files that are none', () => {
  it('other bytes, too many bytes, too many corners', () => {
    expect(refused(readOutline(new Uint8Array([0x89, 0x50, 0xff, 0xfe]), 'm'))?.what).toBe('not-text')
    expect(refused(readOutline(new Uint8Array(2 * 1024 * 1024 + 1), 'm'))?.what).toBe('too-large')
    const many = Array.from({ length: 10_001 }, (_, index) => `${Math.cos(index / 1592)},${Math.sin(index / 1592)}`).join('\n')
    expect(refused(read(many))).toEqual({ what: 'too-large', word: '10001' })
  })
})
