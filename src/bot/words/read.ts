import { commandLexicon, voidWords } from './command-words.js'
import { grammars } from './commands.js'
import { atEnd, find, rawAt } from './cursor.js'
import { withFacts } from './facts.js'
import { fold } from './fold.js'
import { takeItems } from './items.js'
import { matchAt } from './match.js'
import { withOffer } from './offer.js'
import { nearestTwo, type PlainAsked, readPlain } from './plain/plain.js'
import { atNumber } from './quantity.js'
import { readQuestion, skipFillers } from './questions.js'
import { mendedByWords, Refused } from './refused.js'
import type { Reader, Reading, Said } from './said.js'
import { lexiconOf } from './vocabulary.js'
import type { Grammar, Walk } from './walk.js'

const maxCharacters = 2000
const none = lexiconOf({})
const nameAt = /(?:@?seamhand(?![\p{L}\p{M}\p{N}_-])|<@[UW][A-Z0-9]{1,20}(?:\|[^<>]{0,80})?>)/iuy

function startWalk(text: string, reader: Reader): Walk {
  return { text, pos: 0, reader, fields: {}, understood: [], at: null, lexicon: none, items: 0, numbered: null }
}

/** Over a leading `/`, and the bot's own name once. */
function skipName(walk: Walk): void {
  for (let count = 0; count < 2 && !atEnd(walk); count += 1) {
    if (walk.text[walk.pos] === '/') walk.pos += 1
    walk.pos += matchAt(nameAt, walk.text, walk.pos)?.[0].length ?? 0
  }
  if (!atEnd(walk) && walk.text[walk.pos] === '/') walk.pos += 1
}

/** A void is spoken of by its number, without the command: `void 2 fixed`. Never in a question, which must not take a step. */
const voids = lexiconOf({ void: { words: voidWords, read: () => {} } })

function takeVoid(walk: Walk): string | null {
  const start = walk.pos
  const found = /[?¿]/.test(walk.text) ? null : find(walk, voids)
  walk.pos = found?.end ?? start
  if (found && !atEnd(walk) && atNumber(walk)) return 'probe'
  walk.pos = start
  return null
}

/** `air20 rh 50`: the one command that is also a label of its number. */
function takeGluedAir(walk: Walk): string | null {
  const glued = matchAt(/\p{L}{3,4}(?=[-−]?\d)/uy, walk.text, walk.pos)?.[0]
  if (glued === undefined || commandLexicon.index.get(fold(glued))?.label !== 'air') return null
  walk.pos += glued.length
  return 'air'
}

/** The command that a message begins with, or asks for in plain words. */
function takeCommand(walk: Walk): Grammar {
  skipName(walk)
  if (atEnd(walk)) throw new Refused('empty', null)
  const found = find(walk, commandLexicon)
  if (found) {
    walk.pos = found.end
    skipFillers(walk, found.label)
  }
  const grammar = grammars[found?.label ?? takeVoid(walk) ?? takeGluedAir(walk) ?? readQuestion(walk) ?? '']
  if (grammar) return grammar
  throw new Refused('unknown-command', rawAt(walk.text, walk.pos), { nearest: nearestTwo(walk) })
}

function readCommand(walk: Walk, grammar: Grammar): Said {
  const whole = grammar.whole?.(walk)
  if (whole) return whole
  walk.lexicon = grammar.lexicon(walk)
  takeItems(walk)
  return grammar.build(walk)
}

/** The plain question that a message is, where its words are not those of a command, or would be taken for free text. */
function plainOf(text: string, reader: Reader, read: Reading): PlainAsked | null {
  if (read.ok ? read.said.command !== 'punch add' || !/[?¿]/.test(text) : !mendedByWords.has(read.refusal.code)) return null
  const walk = startWalk(text, reader)
  skipName(walk)
  const plain = atEnd(walk) ? null : readPlain(walk)
  return plain === null || (read.ok && plain.message !== 'punch list') ? null : plain
}

/**
 * Reads a message: what was said in JSON units, or the first thing that was not understood with what was. The words of a command
 * come first; a plain question is read only where they do not apply. Pure; `reader` brings units, zone and clock.
 */
export function readWords(text: string, reader: Reader): Reading {
  const read = readCommandWords(text, reader)
  const plain = plainOf(text, reader, read)
  if (plain === null)
    return withFacts(
      text,
      withOffer(text, read, (message) => readCommandWords(message, reader))
    )
  const again = readCommandWords(plain.message, reader)
  if (!again.ok) return again
  if (again.said.command === 'kit' && plain.kit !== null) return { ...again, said: { ...again.said, about: plain.kit } }
  return plain.asks === null ? again : { ...again, asks: plain.asks }
}

function readCommandWords(text: string, reader: Reader): Reading {
  const walk = startWalk(text, reader)
  let command: string | null = null
  try {
    if (text.length > maxCharacters && Array.from(text).length > maxCharacters) throw new Refused('too-long', null, { max: maxCharacters })
    const grammar = takeCommand(walk)
    command = grammar.command
    const said = readCommand(walk, grammar)
    return { ok: true, said, at: walk.at, understood: walk.understood }
  } catch (thrown) {
    if (!(thrown instanceof Refused)) throw thrown
    const { code, word, detail } = thrown
    return { ok: false, command, refusal: { code, word, understood: walk.understood, detail, ref: null } }
  }
}
