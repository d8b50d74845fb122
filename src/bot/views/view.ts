import type { Answer } from '../answer.js'
import type { Caution, Text } from '../text/text.js'
import { cautionFor } from './caution.js'
import type { How } from './how.js'
import { notesOf } from './notes.js'
import { headline } from './outcome.js'
import type { Page } from './page.js'
import { groupsLine, reasonLines, restLines } from './reasons.js'

/** One kind of answer in words. */
export type View = (answer: Answer, how: How, text: Text) => Page

/** What an answer is about, and what it says of its numbers. */
export interface Part {
  readonly about: string
  readonly lines: readonly string[]
  readonly details?: readonly string[]
  readonly caution?: Caution | null
}

/** The frame of every answer: outcome, numbers, groups, reasons, what to do, small print. */
export function pageOf(answer: Answer, part: Part, how: How, text: Text): Page {
  const { outcome, outcomes, findings } = answer
  const caution = part.caution === undefined ? cautionFor(answer) : part.caution
  return {
    head: headline(outcome, part.about, findings, text),
    lines: [...(outcomes === null ? [] : [groupsLine(outcomes, findings, text)]), ...part.lines, ...reasonLines(answer, how, text)],
    details: [...restLines(answer, how, text), ...(part.details ?? [])],
    notes: notesOf(answer, caution, how, text)
  }
}
