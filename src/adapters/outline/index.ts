import type { ReadOutline } from '../../core/sheets/outline-file.js'
import { readCsv } from './csv.js'
import { readDxf } from './dxf.js'
import { readGeoJson } from './geojson.js'
import { type FileUnit, NotAnOutline, textOf } from './text.js'

type Reader = (text: string, unit: FileUnit) => ReadOutline

/** Every format, known by how its text begins; what is neither is a table. A new one is a file and a line here. */
const readers: readonly { readonly begins: RegExp; readonly read: Reader }[] = [
  { begins: /^\s*[{[]/, read: readGeoJson },
  { begins: /^\s*(0[^\S\r\n]*[\r\n]\s*SECTION|999[^\S\r\n]*[\r\n])/, read: readDxf },
  { begins: /^/, read: readCsv }
]

/** A file of one outline, or why it is none. `unit`: what its numbers are in where it does not say. */
export function readOutline(bytes: Uint8Array, unit: FileUnit): ReadOutline {
  const decoded = textOf(bytes)
  if ('refused' in decoded) return decoded.refused
  const { text } = decoded
  try {
    return readers.find(({ begins }) => begins.test(text))?.read(text, unit) ?? { ok: false, problem: { what: 'no-outline', word: '' } }
  } catch (problem) {
    if (problem instanceof NotAnOutline) return { ok: false, problem: problem.problem }
    throw problem
  }
}
