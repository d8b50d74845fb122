import { fromIso } from '../../core/instant.js'
import type { Refusal, Spoken, Understood } from '../answer.js'
import { hintIds } from '../text/hint-words.js'
import { texts } from '../text/index.js'
import { type LabelId, labelIds } from '../text/labels.js'
import type { Text, Wrong } from '../text/text.js'
import { isCommandName } from '../text/usages.js'
import { commandLexicon } from '../words/command-words.js'
import { type FactId, factIds } from '../words/facts.js'
import { fold } from '../words/fold.js'
import { amount } from './amount.js'
import { clock } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { numeral } from './number.js'
import { layOut } from './page.js'
import { whoAll } from './who.js'

const wordMax = 60
const offerMax = 200
const mostUnderstood = 20
const usageMax = 400
const reasonMax = 300

/** What of the question the refusal depends on beside its words. */
interface AskedHow {
  /** Somebody may be hurt. */
  readonly hurt: boolean
  /** Asked at the terminal, where a site is named by an option. */
  readonly terminal: boolean
}

const inChat: AskedHow = { hurt: false, terminal: false }

/** Help first where somebody may be hurt; then what was wrong, that nothing was logged, what was understood, and what to write instead. */
export function speakRefusal(
  refusal: Refusal,
  command: string | null,
  usage: string,
  how: How,
  asked: AskedHow = inChat
): Spoken & { readonly message: string } {
  const text = texts[how.lang]
  const { refusal: words, help } = text
  const message = refusalMessage(refusal, how)
  const people = Array.isArray(refusal.detail.people) ? (refusal.detail.people as readonly string[]) : []
  const own = refusal.code === 'no-site' && asked.terminal ? words.nameSite : words.next[refusal.code]
  const next = people.length > 0 ? text.begin.askOne(whoAll(people)) : (hintOf(refusal, text) ?? own)
  const facts = factsOf(refusal)
  // What logs the fact is the next step: every command there is would only bury it.
  const told = facts.length > 0 && command === null
  const example = isCommandName(command) ? [help.example(text.usages[command].example)] : []
  const lines = [
    ...(asked.hurt ? [text.cautions.hurt] : []),
    ...factLines(facts, text),
    words.nothingLogged,
    ...understoodLine(refusal.understood, how, text),
    ...nearestLine(refusal, text),
    ...(next === null || told ? [] : [next]),
    ...(usage === '' || told ? [] : [help.usage(escapeText(usage, usageMax))]),
    ...example
  ]
  return { ...layOut({ head: headOf(message, facts, command, text), lines, details: [], notes: [] }, how.lang), message }
}

/** What helps with a slip of this kind; null where nothing more than the usage does. */
function hintOf({ detail, word }: Refusal, { hints, frame }: Text): string | null {
  const id = hintIds.find((one) => one === detail.hint)
  const said = Array.isArray(detail.said) ? listed(detail.said as readonly string[], frame.or) : (word ?? '')
  return id === undefined ? null : hints[id](escapeText(said, wordMax))
}

function factsOf({ detail }: Refusal): readonly FactId[] {
  return Array.isArray(detail.facts) ? factIds.filter((id) => (detail.facts as readonly string[]).includes(id)) : []
}

/** Off the roof comes before anything about words; else what was heard rather than which word was not known. */
function headOf(message: string, facts: readonly FactId[], command: string | null, { cautions, facts: words }: Text): string {
  if (facts.includes('thunder')) return cautions.thunder
  return facts.length === 0 || command !== null ? message : words.notLogged(namesOf(facts, words))
}

/** The very words that log what was stated, and those that log that it is not so. */
function factLines(facts: readonly FactId[], { facts: words, frame }: Text): readonly string[] {
  if (facts.length === 0) return []
  const heard = facts.includes('thunder') ? [words.notLogged(namesOf(facts, words))] : []
  const say = facts.flatMap((id) => words.topics[id].say.map(([so, message]) => `${so}${frame.colon}${message}`))
  return [...heard, words.write, ...say]
}

function namesOf(facts: readonly FactId[], { topics }: Text['facts']): string {
  return facts.map((id) => topics[id].name).join(', ')
}

/** The same in one line. */
export function refusalMessage(refusal: Refusal, how: How): string {
  const text = texts[how.lang]
  return text.refusal.codes[refusal.code](wrongOf(refusal, how, text))
}

/** Of these things a refusal names the step by its label, not by the word as typed. */
const stepped: ReadonlySet<unknown> = new Set(['void', 'punch', 'fire', 'welder', 'released', 'time'])

/** The word that was wrong: as typed, or a label of ours in the language. */
function wordOf({ code, word, detail }: Refusal, text: Text): string | null {
  if (word === null) return null
  const ours = detail.label === word || (stepped.has(detail.label) && (code === 'wrong-state' || code === 'out-of-range'))
  return ours && code !== 'missing' ? labelWords(word, text) : escapeText(word, wordMax)
}

function wrongOf(refusal: Refusal, how: How, text: Text): Wrong {
  const { detail, ref } = refusal
  const word = wordOf(refusal, text)
  const label = typeof detail.label === 'string' ? labelWords(detail.label, text) : null
  const unit = typeof detail.unit === 'string' && detail.unit !== '' ? detail.unit : null
  const bound = (value: unknown) => (typeof value === 'number' ? amount(value, unit, how) : typeof value === 'string' ? timeOf(value, how) : null)
  const asked = typeof detail.who === 'string' ? detail.who : null
  return {
    word: word === null ? reasonOf(detail) : text.frame.quote(word),
    label,
    other: typeof detail.other === 'string' ? labelWords(detail.other, text) : null,
    from: bound(detail.min),
    to: bound(detail.max),
    who: asked === null ? null : (text.refusal.who[asked] ?? escapeText(asked, wordMax)),
    state: typeof detail.state === 'string' ? stateSince(detail, detail.state, how, text) : null,
    ref: ref === null ? null : escapeText(ref, wordMax),
    ...bothReadings(refusal.word, how)
  }
}

/** Why the outside failed, in its own words, on one line: which file, which setting. */
function reasonOf({ reason }: Refusal['detail']): string | null {
  if (typeof reason !== 'string') return null
  return escapeText(
    reason
      .trim()
      .replace(/\s*\n\s*/g, '; ')
      .replace(/\.$/, ''),
    reasonMax
  )
}

/** A bound that is an instant, as a time of the site. */
function timeOf(iso: string, how: How): string | null {
  const at = fromIso(iso)
  return at === null ? null : clock(at, at, how)
}

/** `1,250` read both ways: 1250 and 1.25. */
function bothReadings(word: string | null, how: How): Pick<Wrong, 'whole' | 'decimal'> {
  const found = /(\d{1,3})[.,](\d{3})(?!\d)/.exec(word ?? '')
  if (found === null) return { whole: null, decimal: null }
  const [, head, tail] = found as unknown as readonly [string, string, string]
  return { whole: `${head}${tail}`, decimal: numeral(Number(`${head}.${tail}`), 3, how) }
}

/** A label of ours in the language, any other as it is. */
function labelWords(label: string, text: Text): string {
  return (labelIds as readonly string[]).includes(label) ? text.labels[label as LabelId] : escapeText(label, wordMax)
}

/** A state, since when, and until when where that is known: of two who did the same at once each sees the other's time. */
function stateSince({ since, until }: Refusal['detail'], state: string, how: How, text: Text): string {
  const words = stateWords(state, text)
  const [from, to] = [since, until].map((each) => (typeof each === 'string' ? timeOf(each, how) : null))
  if (typeof to === 'string') return `${words} (${to})`
  return typeof from === 'string' ? text.closing.since(words, from) : words
}

function stateWords(state: string, text: Text): string {
  if (Object.hasOwn(text.probe.states, state)) return text.probe.states[state as 'open']
  if (Object.hasOwn(text.refusal.states, state)) return text.refusal.states[state] as string
  return escapeText(state, wordMax)
}

function understoodLine(understood: readonly Understood[], how: How, text: Text): readonly string[] {
  if (understood.length === 0) return []
  const parts = understood.slice(0, mostUnderstood).map((each) => understoodWords(each, how, text))
  const more = understood.length > mostUnderstood ? [text.frame.more(understood.length - mostUnderstood)] : []
  return [text.refusal.understood([...parts, ...more].join(' · '))]
}

function understoodWords({ label, value, unit }: Understood, how: How, text: Text): string {
  const name = labelWords(label, text)
  if (typeof value === 'number') return `${name} ${amount(value, unit, how)}`
  if (typeof value === 'boolean') return value ? name : `${name}${text.frame.colon}${text.frame.no}`
  return `${name} ${labelWords(value, text)}`
}

function nearestLine({ code, detail }: Refusal, text: Text): readonly string[] {
  const { nearest, offer, known } = detail
  if (typeof offer === 'string') return [text.refusal.nearest(escapeText(offer, offerMax))]
  if (code === 'not-found' && detail.label === 'person' && Array.isArray(known)) return [text.begin.known(whoAll(known as readonly string[]))]
  const near = typeof nearest === 'string' ? [nearest] : Array.isArray(nearest) ? (nearest as readonly string[]) : []
  if (near.length === 0) return []
  const words = near.slice(0, 10).map((word) => escapeText(word, wordMax))
  if (code === 'unknown-command') return [text.refusal.nearest(listed(words, text.frame.or)), ...near.flatMap((word) => whatItDoes(word, text))]
  return [code === 'no-site' ? text.refusal.sites(words.join(', ')) : text.refusal.nearest(listed(words, text.frame.or))]
}

/** A command by any of its names, what it does, and one example to copy. */
function whatItDoes(word: string, text: Text): readonly string[] {
  const command = commandLexicon.index.get(fold(word))?.label ?? null
  if (!isCommandName(command)) return []
  return [`${command}${text.frame.colon}${text.commands[command]} · ${text.usages[command].example}`]
}

function listed(words: readonly string[], or: string): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${or} ${words.at(-1)}`
}
