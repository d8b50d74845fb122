import type { Ask } from '../ask.js'
import type { Ports } from '../context.js'
import type { Form, Phrase } from '../forms/form.js'
import { replyOnly } from '../handle.js'

/** A form as it was sent: what its fields said, and the block ids that it was shown with. */
interface Sent {
  readonly form: Form
  readonly phrases: readonly Phrase[]
  readonly fields: readonly string[]
}

/** A word that was refused, or none, and why. */
interface Mistake {
  readonly word: string | null
  readonly message: string
}

/** The message that the fields of a form make. */
export function wordsOf(form: Form, phrases: readonly Phrase[]): string {
  return [form.command, ...phrases.map(({ words }) => words)].join(' ')
}

/**
 * What is wrong, by the field it is wrong in: words are refused one at a time, so each refused field is taken out of the way and the
 * rest asked again, logging nothing, until nothing more is refused. A mistake of no field stands at the first.
 */
export async function mistakesIn(sent: Sent, first: Mistake, ask: Ask, ports: Ports): Promise<Readonly<Record<string, string>>> {
  const { form, phrases, fields } = sent
  const errors: Record<string, string> = {}
  let mistake: Mistake | null = first
  for (let count = 0; mistake !== null && count < fields.length; count += 1) {
    const block = blockOf(mistake.word, withoutRefused(sent, errors))
    if (block === null || block in errors || !fields.includes(block)) break
    errors[block] = mistake.message
    const rest = wordsOf(form, withoutRefused({ form, phrases, fields }, errors))
    mistake = (await replyOnly({ ...ask, text: rest, log: false, claim: null }, ports)).error
  }
  return Object.keys(errors).length > 0 ? errors : { [fields[0] ?? 'form']: first.message }
}

/** What the fields said, but of the refused ones only words that are always good, where something must be said. */
function withoutRefused({ form, phrases }: Sent, errors: Readonly<Record<string, string>>): readonly Phrase[] {
  const kept = phrases.map(({ block, words }): Phrase => ({ block, words: block in errors ? (form.sound?.[block] ?? '') : words }))
  return kept.filter(({ words }) => words !== '')
}

/** The field that a refused word was typed in: as a word of its own first, else as a part of one. */
function blockOf(word: string | null, phrases: readonly Phrase[]): string | null {
  if (word === null) return null
  const wanted = word.toLowerCase()
  const whole = phrases.find(({ words }) =>
    words
      .toLowerCase()
      .split(/[\s,]+/)
      .includes(wanted)
  )
  return (whole ?? phrases.find(({ words }) => words.toLowerCase().includes(wanted)))?.block ?? null
}
