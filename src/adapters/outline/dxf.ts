import { type FileRing, nested, open, type ReadOutline, shortWord } from '../../core/sheets/outline-file.js'
import { chained, type Side } from './chain.js'
import { type Entity, type Group, readDrawing } from './dxf/pairs.js'
import { type FileUnit, mmPer, NotAnOutline } from './text.js'

/** $INSUNITS of the header that a roof may be drawn in. */
const units: Readonly<Record<number, keyof typeof mmPer>> = { 1: 'in', 2: 'ft', 4: 'mm', 5: 'cm', 6: 'm' }
const curves: readonly string[] = ['ARC', 'CIRCLE', 'ELLIPSE', 'SPLINE']

/** Closed polylines of the drawing, or its lines chained into rings; one roof and the openings in it. */
export function readDxf(text: string, unit: FileUnit): ReadOutline {
  const drawing = readDrawing(text)
  if (drawing === null) throw new NotAnOutline('not-dxf', '')
  const entities = withCorners(drawing.entities).filter(isShown)
  const mm = mmPer[unitOf(drawing.units, unit)]
  const rings = entities.filter(({ type }) => type === 'LWPOLYLINE' || type === 'POLYLINE').map((each) => ringOf(each, mm))
  if (rings.length > 0) return nested(rings)
  const lines = entities.filter(({ type }) => type === 'LINE')
  if (lines.length === 0) throw new NotAnOutline(entities.some(({ type }) => curves.includes(type)) ? 'curve' : 'no-outline', entities[0]?.type ?? '')
  return nested(chained(lines.map((line) => sideOf(line, mm))))
}

/** An old polyline has its corners in entities of their own that follow it: here they stand in it, as in a new one. */
function withCorners(entities: readonly Entity[]): readonly Entity[] {
  const whole: { readonly type: string; readonly groups: Group[] }[] = []
  let old: Group[] | null = null
  for (const { type, groups } of entities) {
    if (type === 'VERTEX') old?.push(...groups.filter(({ code }) => code === 10 || code === 20 || code === 42))
    if (type === 'VERTEX' || type === 'SEQEND') continue
    // Its own place is a dummy.
    const own = type === 'POLYLINE' ? groups.filter(({ code }) => code !== 10 && code !== 20) : [...groups]
    whole.push({ type, groups: own })
    old = type === 'POLYLINE' ? own : null
  }
  return whole
}

/** Not on the paper beside the drawing, and not switched off. */
function isShown({ groups }: Entity): boolean {
  return !groups.some(({ code, value }) => (code === 67 || code === 60) && Number(value) !== 0)
}

function unitOf(said: number | null, unit: FileUnit): keyof typeof mmPer {
  if (said === null || said === 0) return unit
  const known = units[said]
  if (known === undefined) throw new NotAnOutline('unit', `$INSUNITS ${said}`)
  return known
}

function firstOf({ groups }: Entity, code: number): string | undefined {
  return groups.find((group) => group.code === code)?.value
}

function wordOf(entity: Entity): string {
  return shortWord([entity.type, firstOf(entity, 8), firstOf(entity, 5)].filter((part) => part !== undefined && part !== '').join(' '))
}

function ringOf(line: Entity, mm: number): FileRing {
  const word = wordOf(line)
  if (line.groups.some(({ code, value }) => code === 42 && !(Math.abs(Number(value)) <= 1e-9))) throw new NotAnOutline('curve', word)
  const corners = cornersOf(line, 10, 20, mm)
  const ring = open(corners)
  const closed = (Number(firstOf(line, 70) ?? 0) & 1) === 1
  if (!closed && ring.length === corners.length) throw new NotAnOutline('not-closed', word)
  return ring
}

function sideOf(line: Entity, mm: number): Side {
  const [from] = cornersOf(line, 10, 20, mm)
  const [to] = cornersOf(line, 11, 21, mm)
  if (from === undefined || to === undefined) throw new NotAnOutline('bad-number', wordOf(line))
  return { from, to }
}

/** Every x with its y, in mm. */
function cornersOf(line: Entity, xCode: number, yCode: number, mm: number): FileRing {
  const word = wordOf(line)
  const along = (wanted: number) => line.groups.filter(({ code }) => code === wanted).map(({ value }) => numberOf(value, word) * mm)
  const [xs, ys] = [along(xCode), along(yCode)]
  if (xs.length !== ys.length) throw new NotAnOutline('bad-number', word)
  return xs.map((x, i) => ({ at: [x, ys[i] as number], word }))
}

function numberOf(value: string, word: string): number {
  if (!/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d{1,3})?$/i.test(value) || !Number.isFinite(Number(value))) throw new NotAnOutline('bad-number', word)
  return Number(value)
}
