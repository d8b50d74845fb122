import { createRequire } from 'node:module'
import type { IDxf, IEntity, ILineEntity, ILwpolylineEntity, IPolylineEntity } from 'dxf-parser'
import { type FileRing, nested, open, type ReadOutline } from '../../core/sheets/outline-file.js'
import { chained, type Side } from './chain.js'
import { type FileUnit, mmPer, NotAnOutline } from './text.js'

// Its module entry leaves out the endings of its files, so that Node finds none; the other one is the class itself, whatever its types say.
const DxfParser = createRequire(import.meta.url)('dxf-parser') as new () => { parseSync(text: string): IDxf | null }

/** $INSUNITS of the header that a roof may be drawn in. */
const units: Readonly<Record<number, keyof typeof mmPer>> = { 1: 'in', 2: 'ft', 4: 'mm', 5: 'cm', 6: 'm' }
const curves: readonly string[] = ['ARC', 'CIRCLE', 'ELLIPSE', 'SPLINE']

type Polyline = ILwpolylineEntity | IPolylineEntity

/** Closed polylines of the drawing, or its lines chained into rings; one roof and the openings in it. */
export function readDxf(text: string, unit: FileUnit): ReadOutline {
  const drawing = parsed(text)
  const entities = drawing.entities.filter(({ inPaperSpace, visible }) => inPaperSpace !== true && visible !== false)
  const mm = mmPer[unitOf(drawing.header?.$INSUNITS, unit)]
  const polylines = entities.filter(isPolyline)
  const rings = polylines.map((each) => ringOf(each, mm))
  if (rings.length > 0) return nested(rings)
  const lines = entities.filter(isLine)
  if (lines.length === 0) throw new NotAnOutline(entities.some(({ type }) => curves.includes(type)) ? 'curve' : 'no-outline', entities[0]?.type ?? '')
  return nested(chained(lines.map((line) => sideOf(line, mm))))
}

function parsed(text: string): IDxf {
  try {
    const drawing = new DxfParser().parseSync(text)
    if (drawing !== null && Array.isArray(drawing.entities)) return drawing
  } catch {
    // Said below: whatever it stumbled over, it is no drawing that can be read.
  }
  throw new NotAnOutline('not-dxf', '')
}

function unitOf(said: unknown, unit: FileUnit): keyof typeof mmPer {
  if (typeof said !== 'number' || said === 0) return unit
  const known = units[said]
  if (known === undefined) throw new NotAnOutline('unit', `$INSUNITS ${said}`)
  return known
}

function isPolyline(entity: IEntity): entity is Polyline {
  return entity.type === 'LWPOLYLINE' || entity.type === 'POLYLINE'
}

function isLine(entity: IEntity): entity is ILineEntity {
  return entity.type === 'LINE'
}

function wordOf({ type, layer, handle }: IEntity): string {
  return `${type} ${layer ?? ''} ${handle ?? ''}`.trim()
}

function ringOf(line: Polyline, mm: number): FileRing {
  const word = wordOf(line)
  if (line.vertices.some((vertex) => Math.abs(vertex.bulge ?? 0) > 1e-9)) throw new NotAnOutline('curve', word)
  const corners = line.vertices.map(({ x, y }) => cornerOf(x, y, mm, word))
  const ring = open(corners)
  if (!line.shape && ring.length === corners.length) throw new NotAnOutline('not-closed', word)
  return ring
}

function sideOf(line: ILineEntity, mm: number): Side {
  const [from, to] = line.vertices
  if (from === undefined || to === undefined) throw new NotAnOutline('bad-number', wordOf(line))
  return { from: cornerOf(from.x, from.y, mm, wordOf(line)), to: cornerOf(to.x, to.y, mm, wordOf(line)) }
}

function cornerOf(x: number, y: number, mm: number, word: string) {
  if (!Number.isFinite(x) || !Number.isFinite(y)) throw new NotAnOutline('bad-number', word)
  return { at: [x * mm, y * mm] as const, word }
}
