import type { ContextBlock, HeaderBlock, KnownBlock, SectionBlock } from '@slack/types'
import type { Lang, Spoken } from '../answer.js'
import { clip, withoutEntities } from './escape.js'

/** A message before it is laid out: lines, each already escaped. Empty parts are left out. */
export interface Page {
  /** First line: the answer in words. */
  readonly head: string
  /** What everyone reads. */
  readonly lines: readonly string[]
  /** For those who look closer: blocks only. */
  readonly details: readonly string[]
  /** Small print, the last line last. */
  readonly notes: readonly string[]
}

/** Limits of the chat service: text and one section 3,000 characters, a header 150, a context line as a section. */
const textMax = 3000
const headerMax = 150
const noteMax = 1000
const blocksMax = 50

/** One column, short lines. Buttons and pictures will stand between details and notes. */
export function layOut(page: Page, lang: Lang): Spoken {
  const set = (line: string) => typeset(line, lang)
  const head = set(page.head)
  const lines = page.lines.map(set)
  const details = page.details.map(set)
  const notes = page.notes.map((note) => clip(set(note), noteMax))
  const blocks: KnownBlock[] = [header(head)]
  if (lines.length > 0) blocks.push(section(wholeLines(lines, textMax)))
  if (details.length > 0) blocks.push({ type: 'divider' }, section(wholeLines(details, textMax)))
  for (const note of notes) blocks.push(context(note))
  return { text: fitText(head, lines, notes), blocks }
}

/** What was laid out with one more note, already escaped, at its foot: what stands above gives way to it. */
export function withNote({ text, blocks }: Spoken, note: string, lang: Lang): Spoken {
  const foot = clip(typeset(note, lang), noteMax)
  return { text: `${clip(text, textMax - [...foot].length - 1)}\n${foot}`, blocks: [...blocks.slice(0, blocksMax - 1), context(foot)] }
}

/** The notes stay whole, among them what was logged; the lines give way. */
function fitText(head: string, lines: readonly string[], notes: readonly string[]): string {
  const foot = notes.length === 0 ? '' : `\n${notes.join('\n')}`
  const room = textMax - [...foot].length
  return `${wholeLines([head, ...lines], room)}${foot}`
}

/** As many whole lines as there is room for. */
export function wholeLines(lines: readonly string[], max: number): string {
  const kept: string[] = []
  let left = max - 2
  for (const line of lines) {
    left -= [...line].length + 1
    if (left < 0) return clip([...kept, '…'].join('\n'), max)
    kept.push(line)
  }
  return kept.join('\n')
}

/** In a header plain text is shown as it is: entities are turned back, and nothing in it is read as markup. */
function header(text: string): HeaderBlock {
  return { type: 'header', text: { type: 'plain_text', text: clip(withoutEntities(text), headerMax), emoji: false } }
}

/** `verbatim`: the chat service looks for no links, names or channels in it. */
export function section(text: string): SectionBlock {
  return { type: 'section', text: { type: 'mrkdwn', text, verbatim: true } }
}

function context(text: string): ContextBlock {
  return { type: 'context', elements: [{ type: 'mrkdwn', text, verbatim: true }] }
}

/** French sets a space that does not break before : ; ? ! and inside « ». */
function typeset(line: string, lang: Lang): string {
  if (lang !== 'fr') return line
  return line.replace(/ ([:;?!»])/g, '\u00a0$1').replace(/« /g, '«\u00a0')
}
