import type { Asks } from '../../topics.js'
import { commandLexicon } from '../command-words.js'
import { rawAt } from '../cursor.js'
import { fold } from '../fold.js'
import { langOf } from '../message-lang.js'
import { nearest } from '../vocabulary.js'
import type { Walk } from '../walk.js'
import { type Heard, hear, type Part } from './heard.js'
import { sheetsMessage, stripMessage } from './quantities.js'
import { type Rule, rules } from './rules.js'
import { topicsOf } from './topics-of.js'

/** What a plain question asks for: a message in the words of a command, and the kit it names, which is not logged. */
export interface Plain {
  readonly message: string
  readonly kit: string | null
}

/** The same with what it asks of by name; null: of nothing. */
export interface PlainAsked extends Plain {
  readonly asks: Asks | null
}

/**
 * A plain question, read as a whole: every word of it is known, every topic belongs to one command, numbers are those the command takes, and nothing
 * stands in it that could be a fact. Null: it is none, or not clear.
 */
export function readPlain(walk: Walk): PlainAsked | null {
  const heard = hear(walk)
  if (heard === null || !heard.asks) return null
  for (const rule of rules) {
    if (!fits(rule, heard)) continue
    const plain = asked(rule, heard)
    if (plain !== null) return { ...plain, asks: topicsOf(heard.concepts) }
  }
  return null
}

function fits(rule: Rule, { concepts, unknown }: Heard): boolean {
  const needed = rule.needs.every((group) => group.some((concept) => concepts.has(concept)))
  if (!needed || unknown.length > 0) return false
  const known = new Set([...rule.needs.flat(), ...rule.may])
  return [...concepts].every((concept) => known.has(concept))
}

function asked(rule: Rule, heard: Heard): Plain | null {
  const { parts } = heard
  if (rule.takes === 'strip') return of(stripMessage(heard))
  if (rule.takes === 'sheets') return of(sheetsMessage(heard))
  if (rule.takes === 'kit') return kitAsked(parts)
  if (rule.takes === 'kit name') return parts.some(({ kind }) => kind === 'name') ? kitAsked(parts) : null
  const names = parts.flatMap((part) => (part.kind === 'name' ? [part.name] : []))
  if (parts.some(({ kind }) => kind === 'number') || names.length > (rule.takes === 'welder' ? 1 : 0)) return null
  const [name = heard.concepts.has('hand') ? 'hand' : 'robot'] = names
  if (rule.to.includes('NAME')) return of(rule.to.replace('NAME', name))
  return of(names.length === 0 ? rule.to : `weld ${name}`)
}

function of(message: string | null): Plain | null {
  return message === null ? null : { message, kit: null }
}

/** `kit 3` is K3: in a question no number is a temperature. */
function kitAsked(parts: readonly Part[]): Plain | null {
  const said = parts.filter(({ kind }) => kind === 'number' || kind === 'name')
  const [one] = said
  if (one === undefined) return { message: 'kit', kit: null }
  if (said.length > 1) return null
  if (one.kind === 'name') return { message: 'kit', kit: one.name }
  const before = parts[parts.indexOf(one) - 1]
  const counts = one.kind === 'number' && one.unit === null && !one.times && /^\d{1,3}$/.test(one.raw)
  return counts && before?.kind === 'concept' && before.concept === 'kit' ? { message: 'kit', kit: `K${one.raw}` } : null
}

/**
 * The two commands nearest to what was said: the one whose word was missed by a single slip, by its topics, by the spelling of the first
 * word that means nothing (“podemos” is no slip of a command), else the two most asked.
 */
export function nearestTwo(walk: Walk): readonly string[] {
  const heard = hear(walk)
  const byTopic = heard === null ? [] : rules.map((rule) => ({ command: commandOf(rule), score: score(rule, heard) }))
  const topics = byTopic.filter(({ score }) => score > 0).sort((a, b) => b.score - a.score)
  const said = topics.map(({ command }) => command)
  const typed = heard?.unknown[0] ?? rawAt(walk.text, walk.pos)
  const lang = langOf(walk)
  const slip = nearest(typed, commandLexicon.spelled, 1, 1, lang)
  const spelled = nearest(typed, commandLexicon.spelled, 3, commandLexicon.spelled.length, lang)
  const near = heard !== null && heard.words > 2 ? [...slip, ...said, ...spelled] : [...spelled, ...said]
  const byCommand = new Map<string, string>()
  for (const word of [...near, 'spray', 'help']) {
    const command = commandLexicon.index.get(fold(word))?.label ?? word
    if (!byCommand.has(command)) byCommand.set(command, word)
  }
  return [...byCommand.values()].slice(0, 2)
}

function commandOf({ to }: Rule): string {
  return to.split(' ')[0] as string
}

const littleTopics: ReadonlySet<string> = new Set([
  'aux',
  'can',
  'what',
  'when',
  'howLong',
  'howMuch',
  'show',
  'filler',
  'not',
  'need',
  'left',
  'today',
  'part'
])

/** How many of the topics of a rule are there; those that do not belong to it weigh half. */
function score({ needs, may }: Rule, { concepts }: Heard): number {
  const topics = [...concepts].filter((concept) => !littleTopics.has(concept))
  const needed = new Set(needs.flat())
  const hits = topics.filter((topic) => needed.has(topic)).length
  const strange = topics.filter((topic) => !needed.has(topic) && !may.includes(topic)).length
  return hits === 0 ? 0 : hits - strange / 2
}
