import { matchAt } from '../match.js'
import { nameNotUnit } from '../names.js'
import { numberStartsAt } from '../number.js'
import { takeQuantity } from '../quantity.js'
import { Refused } from '../refused.js'
import { readUnit } from '../unit.js'
import type { Walk } from '../walk.js'
import { type Concept, conceptOf, longest, partsOf } from './concepts.js'

/** A question taken apart: what it speaks of, its numbers and names where they stand, and what is not known. */
export interface Heard {
  readonly parts: readonly Part[]
  readonly concepts: ReadonlySet<Concept>
  readonly unknown: readonly string[]
  readonly words: number
  /** It ends in a question mark, begins with an inverted one, or begins as questions do. */
  readonly asks: boolean
}

export type Part =
  | { readonly kind: 'concept'; readonly concept: Concept }
  | { readonly kind: 'unknown'; readonly word: string }
  | { readonly kind: 'number'; readonly raw: string; readonly unit: string | null; readonly times: boolean }
  | { readonly kind: 'name'; readonly name: string }

const skipAt = /[\s,;:!?¡¿…«»."“”()'’‘–-]+/uy
const wordAt = /[\p{L}\p{M}]+/uy
const namedAt = /[A-Za-z]{1,10}\d{1,4}(?![\p{L}\p{N}])/uy
const timesAt = /[x×]\s{0,2}(\d{1,4})(?![\p{L}\p{N}]|[.,]\d)/iuy
/** A list that is asked for by its name: `lista de pendientes`. */
const listAt = /[\s«¡]*list[ae]?(?!\p{L})/iuy
const openers: ReadonlySet<Concept> = new Set(['aux', 'can', 'what', 'when', 'howLong', 'howMuch', 'show', 'over'])

type Piece = Exclude<Part, { kind: 'concept' | 'unknown' }> | { readonly kind: 'part'; readonly part: string }

/** Null: it holds something that no plain question does. */
export function hear(walk: Walk): Heard | null {
  const pieces = piecesOf(walk)
  if (pieces === null || pieces.length === 0 || pieces.length > 60) return null
  const parts = joined(pieces)
  const concepts = new Set(parts.flatMap((part) => (part.kind === 'concept' ? [part.concept] : [])))
  const unknown = parts.flatMap((part) => (part.kind === 'unknown' ? [part.word] : []))
  const [first] = parts
  const begins = first?.kind === 'concept' && openers.has(first.concept)
  const asks = begins || /[?¿]/.test(walk.text) || matchAt(listAt, walk.text, walk.pos) !== null
  return { parts, concepts, unknown, words: pieces.length, asks }
}

function piecesOf(walk: Walk): readonly Piece[] | null {
  const { text } = walk
  const pieces: Piece[] = []
  let pos = walk.pos
  while (pos < text.length) {
    const skipped = matchAt(skipAt, text, pos)?.[0].length ?? 0
    pos += skipped
    if (pos >= text.length) break
    const piece = pieceAt(walk, pos)
    if (piece === null) return null
    pieces.push(...piece.pieces)
    pos = piece.end
  }
  return pieces
}

function pieceAt(walk: Walk, pos: number): { readonly pieces: readonly Piece[]; readonly end: number } | null {
  const { text } = walk
  const times = matchAt(timesAt, text, pos)
  if (times) {
    const { unit, end } = readUnit(text, pos + times[0].length)
    return { pieces: [{ kind: 'number', raw: times[1] as string, unit, times: true }], end }
  }
  const named = matchAt(namedAt, text, pos)?.[0]
  const name = named === undefined ? null : nameNotUnit(named)
  if (named !== undefined && name !== null) return { pieces: [{ kind: 'name', name }], end: pos + named.length }
  if (numberStartsAt(text, pos)) return numberAt(walk, pos)
  const word = matchAt(wordAt, text, pos)?.[0]
  return word === undefined ? null : { pieces: partsOf(word).map((part) => ({ kind: 'part', part })), end: pos + word.length }
}

function numberAt(walk: Walk, pos: number): ReturnType<typeof pieceAt> {
  const at: Walk = { ...walk, pos }
  try {
    const { raw, unit } = takeQuantity(at)
    return { pieces: [{ kind: 'number', raw, unit, times: false }], end: at.pos }
  } catch (thrown) {
    if (thrown instanceof Refused) return null
    throw thrown
  }
}

/** Words joined into the longest phrases that mean something. */
function joined(pieces: readonly Piece[]): readonly Part[] {
  const parts: Part[] = []
  for (let at = 0; at < pieces.length; ) {
    const piece = pieces[at] as Piece
    if (piece.kind !== 'part') {
      parts.push(piece)
      at += 1
      continue
    }
    const found = phraseAt(pieces, at)
    parts.push(found === null ? { kind: 'unknown', word: piece.part } : { kind: 'concept', concept: found.concept })
    at += found?.count ?? 1
  }
  return parts
}

function phraseAt(pieces: readonly Piece[], at: number): { readonly concept: Concept; readonly count: number } | null {
  const run: string[] = []
  for (const piece of pieces.slice(at, at + longest)) {
    if (piece.kind !== 'part') break
    run.push(piece.part)
  }
  for (let count = run.length; count > 0; count -= 1) {
    const concept = conceptOf(run.slice(0, count))
    if (concept !== null) return { concept, count }
  }
  return null
}
