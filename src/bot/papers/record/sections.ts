import type { Finding } from '../../../core/finding.js'
import { fromIso } from '../../../core/instant.js'
import type { EntryType, JsonObject } from '../../../core/log/entry.js'
import { entryId } from '../../../core/log/entry.js'
import type { LoggedLine } from '../../../core/record/day-log.js'
import type { FindingId } from '../../answer.js'
import type { RecordSection } from '../../text/record-words.js'
import type { Text } from '../../text/text.js'
import { clock } from '../../views/clock.js'
import { findingWords } from '../../views/finding.js'
import type { How } from '../../views/how.js'
import type { DocumentPart } from '../document.js'
import type { Paper } from '../paper.js'
import { entryWords, plainText } from './entry-words.js'
import { type Gathered, timeOf } from './gathered.js'

type Part = DocumentPart<Paper>

/** Sections that list entries, in the order of the day; what has no section of its own comes last. */
const listed: readonly (readonly [RecordSection, readonly EntryType[]])[] = [
  ['said', ['reading', 'statement']],
  ['kits', ['kit']],
  ['welds', ['coupon', 'welder']],
  ['laid', ['laid']],
  ['voids', ['void', 'repair', 'probe']],
  ['closing', ['bond', 'seal', 'note']],
  ['other', ['setting']]
]

/** A heading and a table for each kind of entry that there is. */
export function entrySections(on: Gathered, how: How, text: Text): readonly Part[] {
  return listed.flatMap(([section, types]) => {
    const lines = on.lines.filter(({ entry }) => types.includes(entry.type))
    if (lines.length === 0) return []
    const { columns } = text.record
    const rows = lines.map((line) => [
      timeOf(line.entry.at, how.zone),
      nameOf(line, on),
      aboutOf(line, text),
      [entryWords(line.entry.type, line.data, how, text), ...notesOf(line, on, how, text)].filter((part) => part !== '').join(' · '),
      idOf(line)
    ])
    const head = [columns.time, columns.who, columns.about, columns.what, columns.entry]
    return [heading(section, text), { kind: 'table' as const, head, rows, shares: [8, 14, 14, 50, 14] }]
  })
}

/** What was decided on what, and where somebody went ahead against it. */
export function decisionSection(on: Gathered, how: How, text: Text): readonly Part[] {
  const lines = on.lines.filter(({ entry }) => entry.type === 'decision' || entry.type === 'override')
  if (lines.length === 0) return []
  const { columns } = text.record
  const head = [columns.time, columns.who, columns.activity, columns.outcome, columns.binds, columns.limits, columns.entry]
  const rows = lines.map((line) => (line.entry.type === 'override' ? overrideRow(line, on, how, text) : decisionRow(line, on, how, text)))
  return [heading('decisions', text), { kind: 'table', head, rows, shares: [7, 12, 10, 10, 33, 16, 12] }]
}

interface Recorded {
  readonly activity?: keyof Text['activities']
  readonly outcome?: keyof Text['outcomesWithin']
  readonly findings?: readonly (Omit<Finding<FindingId>, 'at' | 'ease'> & { readonly at: string | null })[]
  readonly limits?: { readonly id: string; readonly version: number }
  readonly engine?: string
}

function decisionRow(line: LoggedLine, on: Gathered, how: How, text: Text): readonly string[] {
  const { activity, outcome, findings = [], limits, engine = '' } = line.data as Recorded
  const [first] = findings
  const binds = first === undefined || first.outcome === 'go' ? '' : findingWords({ ...first, at: null, ease: null }, how, text)
  return [
    timeOf(line.entry.at, how.zone),
    nameOf(line, on),
    activity === undefined ? '' : text.activities[activity],
    outcome === undefined ? '' : text.outcomesWithin[outcome],
    [binds, ...notesOf(line, on, how, text)].filter((part) => part !== '').join(' · '),
    limits === undefined ? engine : `${plainText(limits.id)} v${limits.version}, ${plainText(engine)}`,
    idOf(line)
  ]
}

function overrideRow(line: LoggedLine, on: Gathered, how: How, text: Text): readonly string[] {
  const { outcome, reason, activity, decision } = line.data as JsonObject & Recorded & { reason?: string; decision?: string }
  const of = outcome === undefined ? '' : text.outcomesWithin[outcome]
  return [
    timeOf(line.entry.at, how.zone),
    nameOf(line, on),
    activity === undefined ? '' : text.activities[activity],
    text.record.types.override,
    [text.record.override(of, plainText(reason ?? '')), ...notesOf(line, on, how, text)].join(' · '),
    plainText(decision ?? ''),
    idOf(line)
  ]
}

/** Every entry, with its hash: what the other sections are taken from. */
export function logSection(on: Gathered, how: How, text: Text): readonly Part[] {
  const { columns, types, nothing } = text.record
  if (on.lines.length === 0) return [heading('log', text), { kind: 'words', text: nothing }]
  const rows = on.lines.map((line) => [
    idOf(line),
    timeOf(line.entry.at, how.zone),
    nameOf(line, on),
    types[line.entry.type],
    notesOf(line, on, how, text).join(' · '),
    line.hash
  ])
  const head = [columns.entry, columns.time, columns.who, columns.type, columns.notes, columns.hash]
  return [heading('log', text), { kind: 'table', head, rows, shares: [12, 7, 14, 13, 20, 34] }]
}

export function heading(section: RecordSection, text: Text): Part {
  return { kind: 'heading', text: text.record.sections[section] }
}

export function idOf({ entry }: LoggedLine): string {
  return entryId(entry.site, entry.seq)
}

export function nameOf({ entry }: LoggedLine, { names }: Gathered): string {
  return plainText(names.get(entry.author) ?? entry.author)
}

/** "welder robot", "void 3"; nothing where the entry is about the site or the day. */
function aboutOf({ entry }: LoggedLine, text: Text): string {
  const [kind = '', name = ''] = entry.subject.split(':')
  if (kind === 'site' || kind === 'day') return text.record.types[entry.type]
  const types: Readonly<Record<string, string>> = text.record.types
  return `${types[kind] ?? kind} ${plainText(name)}`
}

const lateS = 60

/** That an entry was undone or corrected, or logged at another time than it is dated. */
function notesOf({ entry, undoneBy, correctedBy }: LoggedLine, on: Gathered, how: How, text: Text): readonly string[] {
  const [at, loggedAt] = [fromIso(entry.at), fromIso(entry.loggedAt)]
  const late = at !== null && loggedAt !== null && Math.abs(loggedAt - at) > lateS
  return [
    ...(undoneBy === null ? [] : [text.record.undone(entryId(on.site, undoneBy))]),
    ...(correctedBy === null ? [] : [text.record.corrected(entryId(on.site, correctedBy))]),
    ...(late ? [text.record.loggedAt(clock(loggedAt, at, how))] : [])
  ]
}
