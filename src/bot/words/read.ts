import { commandLexicon } from './command-words.js'
import { grammars } from './commands.js'
import { atEnd, find, rawAt } from './cursor.js'
import { takeItems } from './items.js'
import { matchAt } from './match.js'
import { readQuestion, skipFillers } from './questions.js'
import { Refused } from './refused.js'
import type { Reader, Reading, Said } from './said.js'
import { lexiconOf, nearest } from './vocabulary.js'
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

/** The command that a message begins with, or asks for in plain words. */
function takeCommand(walk: Walk): Grammar {
  skipName(walk)
  if (atEnd(walk)) throw new Refused('empty', null)
  const found = find(walk, commandLexicon)
  if (found) {
    walk.pos = found.end
    skipFillers(walk, found.label)
  }
  const grammar = grammars[found?.label ?? readQuestion(walk) ?? '']
  if (grammar) return grammar
  const raw = rawAt(walk.text, walk.pos)
  throw new Refused('unknown-command', raw, { nearest: nearest(raw, commandLexicon.spelled, 3, 2) })
}

function readCommand(walk: Walk, grammar: Grammar): Said {
  const whole = grammar.whole?.(walk)
  if (whole) return whole
  walk.lexicon = grammar.lexicon(walk)
  takeItems(walk)
  return grammar.build(walk)
}

/**
 * Reads a message: what was said in JSON units, or the first thing that was not understood with what was. Pure; `reader`
 * brings units, zone and clock.
 */
export function readWords(text: string, reader: Reader): Reading {
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
