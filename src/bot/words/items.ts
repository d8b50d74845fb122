import { atEnd, find, rawAt, unknownWord } from './cursor.js'
import { fold } from './fold.js'
import { matchAt } from './match.js'
import { negations } from './negation.js'
import { atNumber, takeQuantity } from './quantity.js'
import { Refused } from './refused.js'
import type { Heard, Walk } from './walk.js'
import { readInstant } from './when.js'

function takeAt(walk: Walk): void {
  const typed = (/^@(\S+)/.exec(walk.text.slice(walk.pos, walk.pos + 60))?.[1] ?? '').replace(/[,;:!?.=…»]+$/, '')
  const at = readInstant(typed, walk.reader)
  if (walk.at !== null && walk.at !== at) throw new Refused('duplicate', `@${typed}`, { label: 'time' })
  walk.at = at
  walk.pos += typed.length + 1
}

/** `no`, `sin`, `sans` and the flag after it; false when no negation stands here. */
function takeNegated(walk: Walk): boolean {
  const no = find(walk, negations)
  if (!no || find(walk, walk.lexicon)) return false
  const start = walk.pos
  walk.pos = no.end
  const flag = atEnd(walk) ? null : find(walk, walk.lexicon)
  if (!flag?.meaning.negated) throw unknownWord(walk, walk.text.slice(start, flag?.end ?? walk.pos + rawAt(walk.text, walk.pos).length).trim())
  walk.pos = flag.end
  flag.meaning.negated(walk, { raw: walk.text.slice(start, flag.end), label: flag.label })
  return true
}

/** A number that no label and no place of the command takes. */
function strayNumber(walk: Walk, numbered: Heard | null): Refused {
  const { raw } = takeQuantity(walk)
  return numbered === null ? unknownWord(walk, raw) : new Refused('duplicate', numbered.raw, { label: numbered.label })
}

/** `@07:30`; false when no time stands here. */
function takeTime(walk: Walk): boolean {
  if (!/^@\d/.test(walk.text.slice(walk.pos, walk.pos + 2))) return false
  takeAt(walk)
  return true
}

/** A word of the command and what belongs to it; false when none stands here. */
function takeWord(walk: Walk): boolean {
  const found = find(walk, walk.lexicon)
  if (!found) return false
  walk.pos = found.end
  found.meaning.read(walk, { raw: found.raw, label: found.label })
  return true
}

const lettersAt = /[\p{L}\p{M}]+(?=[-−]?\d)/uy
/** What a digit behind the word may be a name of. */
const namedByNumber: ReadonlySet<string> = new Set(['kit', 'lot', 'photo', 'by', 'operator'])

/** `air20`, `deck18C`: a label with its number glued to it, where that is no name; false when none stands here. */
function takeGlued(walk: Walk): boolean {
  const raw = matchAt(lettersAt, walk.text, walk.pos)?.[0]
  const found = raw === undefined ? undefined : walk.lexicon.index.get(fold(raw))
  if (raw === undefined || found === undefined || namedByNumber.has(found.label)) return false
  walk.pos += raw.length
  found.meaning.read(walk, { raw, label: found.label })
  return true
}

function takeItem(walk: Walk): void {
  const { numbered } = walk
  walk.numbered = null
  if (takeTime(walk) || takeNegated(walk) || takeWord(walk) || walk.lexicon.other(walk) || takeGlued(walk)) return
  throw atNumber(walk) ? strayNumber(walk, numbered) : unknownWord(walk)
}

/** Reads every item to the end of the message. Each item moves on or throws. */
export function takeItems(walk: Walk): void {
  while (!atEnd(walk)) {
    takeItem(walk)
    walk.items += 1
  }
}
