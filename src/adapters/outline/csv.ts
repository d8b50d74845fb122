import { type FileCorner, type FileRing, nested, open, type ReadOutline, shortWord } from '../../core/sheets/outline-file.js'
import { type FileUnit, mmPer, NotAnOutline } from './text.js'

interface Columns {
  readonly x: number
  readonly y: number
  readonly ring: number
  readonly xMm: number
  readonly yMm: number
}

const head = /^(x|y|e|n|east|north|easting|northing|ring)[ _]*\(?(mm|cm|m|ft|in)?\)?$/i

/**
 * Corners line by line: x, y and, if there are several rings, the ring; without such a column an empty line begins the next. A head
 * may name the columns with their units (`xM,yM` or `x (ft),y (ft)`). Commas, semicolons or tabs; `#` begins a remark.
 */
export function readCsv(text: string, unit: FileUnit): ReadOutline {
  const lines = text.split(/\r\n|\r|\n/).map((line, index) => ({ cells: line.replace(/#.*/, '').trim(), number: index + 1 }))
  const first = lines.find(({ cells }) => cells !== '')
  if (first === undefined) throw new NotAnOutline('no-outline', '')
  const separator = [';', '\t', ','].find((each) => first.cells.includes(each)) ?? /\s+/
  const split = (cells: string) => cells.split(separator).map((cell) => cell.replace(/^"(.*)"$/, '$1').trim())
  const titles = split(first.cells)
  const titled = titles.some((title) => head.test(title))
  const columns = titled ? columnsOf(titles, unit) : { x: 0, y: 1, ring: 2, xMm: mmPer[unit], yMm: mmPer[unit] }
  const rings = new Map<string, FileCorner[]>()
  let part = 0
  for (const { cells, number } of lines) {
    if (cells === '') part += 1
    if (cells === '' || (titled && number === first.number)) continue
    const row = split(cells)
    const named = row[columns.ring]
    const key = named === undefined || named === '' ? `part ${part}` : `ring ${named}`
    const ring = rings.get(key) ?? []
    ring.push(cornerOf(row, columns, number, separator === ','))
    rings.set(key, ring)
  }
  return nested([...rings.values()].map((ring): FileRing => open(ring)))
}

function columnsOf(titles: readonly string[], unit: FileUnit): Columns {
  const find = (names: string) => titles.findIndex((title) => names.split(' ').includes(head.exec(title)?.[1]?.toLowerCase() ?? ''))
  const [x, y, ring] = [find('x e east easting'), find('y n north northing'), find('ring')]
  if (x < 0 || y < 0) throw new NotAnOutline('no-outline', titles.join(' '))
  const mm = (column: number) => mmPer[(head.exec(titles[column] ?? '')?.[2]?.toLowerCase() ?? unit) as keyof typeof mmPer]
  return { x, y, ring: ring < 0 ? Number.MAX_SAFE_INTEGER : ring, xMm: mm(x), yMm: mm(y) }
}

function cornerOf(row: readonly string[], { x, y, xMm, yMm }: Columns, line: number, commas: boolean): FileCorner {
  const number = (column: number): number => {
    const cell = row[column] ?? ''
    const written = commas ? cell : cell.replace(',', '.')
    if (!/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d+)?$/i.test(written)) throw new NotAnOutline('bad-number', `${line}: ${cell}`)
    return Number(written)
  }
  return { at: [number(x) * xMm, number(y) * yMm], word: shortWord(`${line}: ${row.slice(0, 3).join(' ')}`) }
}
