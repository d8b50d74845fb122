import { fold } from './fold.js'
import { matchAt } from './match.js'
import { langOf } from './message-lang.js'
import { Refused } from './refused.js'
import { nearest } from './vocabulary.js'
import type { Lexicon, Meaning, Walk } from './walk.js'

const punctuation = ',;:=!?¡¿…«».'
const wordAt = /[\p{L}\p{M}\p{N}_×]+(?:['’‘-][\p{L}\p{M}\p{N}_]+)*/uy
const chunkAt = /\S+/y

/** Over spaces and punctuation, but not over a point or comma that begins a number (`.5` is a bad number, never 5). */
export function skip(walk: Walk): void {
  while (walk.pos < walk.text.length) {
    const char = walk.text[walk.pos] as string
    if (/\s/.test(char)) walk.pos += 1
    else if (!punctuation.includes(char)) return
    else if ((char === '.' || char === ',') && matchAt(/[.,]\p{Nd}/uy, walk.text, walk.pos)) return
    else walk.pos += 1
  }
}

export function atEnd(walk: Walk): boolean {
  skip(walk)
  return walk.pos >= walk.text.length
}

/** The word or, where none begins, the run of characters at a place; empty at the end. */
export function rawAt(text: string, pos: number): string {
  return matchAt(wordAt, text, pos)?.[0] ?? matchAt(chunkAt, text, pos)?.[0] ?? ''
}

export interface Found {
  readonly raw: string
  readonly end: number
  readonly label: string
  readonly meaning: Meaning
}

/** Ends of the words that stand here with only spaces between them, three at most. */
function wordEnds(text: string, from: number): readonly number[] {
  const ends: number[] = []
  let pos = from
  for (let count = 0; count < 3; count += 1) {
    const word = matchAt(wordAt, text, pos)
    if (!word) break
    const end = pos + word[0].length
    ends.push(end)
    pos = end + (matchAt(/\s{1,3}/y, text, end)?.[0].length ?? 0)
    if (pos === end) break
  }
  return ends
}

/** The longest run of up to three words here that a lexicon knows; null when there is none. Moves nothing. */
export function find(walk: Walk, lexicon: Lexicon): Found | null {
  const word = matchAt(wordAt, walk.text, walk.pos)?.[0]
  if (word === undefined) return null
  const folded = fold(word)
  const ends = lexicon.heads.has(folded) ? wordEnds(walk.text, walk.pos).slice(1).reverse() : []
  for (const end of ends) {
    const raw = walk.text.slice(walk.pos, end)
    const known = lexicon.index.get(fold(raw).replace(/\s+/g, ' '))
    if (known) return { raw, end, ...known }
  }
  const known = lexicon.index.get(folded)
  return known ? { raw: word, end: walk.pos + word.length, ...known } : null
}

/** The next run of characters without the punctuation around it; empty at the end. Moves past it. */
export function takeChunk(walk: Walk): string {
  skip(walk)
  const chunk = matchAt(chunkAt, walk.text, walk.pos)?.[0] ?? ''
  walk.pos += chunk.length
  let end = chunk.length
  while (end > 0 && punctuation.includes(chunk[end - 1] as string)) end -= 1
  return chunk.slice(0, end)
}

/** The word here is not one of the command's: named, with the nearest one that is. */
export function unknownWord(walk: Walk, raw = rawAt(walk.text, walk.pos)): Refused {
  const [near] = nearest(raw, walk.lexicon.spelled, 2, 1, langOf(walk))
  return new Refused('unknown-word', raw, near === undefined ? {} : { nearest: near })
}

/** No value after a label: an unknown word there is named, else the label misses its value. */
export function noValue(walk: Walk, typed: string, label: string): Refused {
  if (atEnd(walk) || walk.text[walk.pos] === '@' || find(walk, walk.lexicon)) return new Refused('missing', typed, { label })
  return unknownWord(walk)
}
