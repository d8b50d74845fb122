import type { KnownBlock } from '@slack/types'
import type { Lang, Units } from '../answer.js'
import type { FormValues } from '../talk/talk.js'
import type { Text } from '../text/text.js'
import type { Known } from './parts/known.js'

/** Words that a field says, with the block id of the field: so that a refused word finds its field again. */
export interface Phrase {
  readonly block: string
  readonly words: string
}

/** Where and how a form was opened. */
export interface Opened {
  readonly site: string
  readonly channel: string | null
  readonly lang: Lang
  readonly units: Units
  /** What it was filled with. */
  readonly was: FormValues
}

/**
 * A form is another way to type a message: its fields become words, and the words go through the same dispatcher.
 * What a form cannot say, nobody can say.
 */
export interface Form {
  /** The command that its words begin with. */
  readonly command: string
  blocks(text: Text, known: Known): KnownBlock[]
  /** What is known already, by block id. */
  fills?(known: Known): FormValues
  phrases(values: FormValues, opened: Opened): readonly Phrase[]
  /** Words that are always good, by block id, of what must be said: they stand in for refused ones, so that the rest can be read. */
  readonly sound?: Readonly<Record<string, string>>
}

/** One text of a form, or '' where it was left empty. */
export function textOf(values: FormValues, block: string): string {
  const value = values[block]
  return typeof value === 'string' ? value.trim() : ''
}

/** Ticked values. */
export function ticked(values: FormValues, block: string): readonly string[] {
  const value = values[block]
  if (value === null || value === undefined) return []
  return typeof value === 'string' ? [value] : value
}

/** Photos that were picked: `photo F0123` each. */
export function photosOf(values: FormValues): readonly Phrase[] {
  return ticked(values, 'photos').map((file) => ({ block: 'photos', words: `photo ${file}` }))
}

/** `label value` where the field was filled. */
export function labelled(values: FormValues, block: string, label: string, unit = ''): readonly Phrase[] {
  const value = textOf(values, block)
  return value === '' ? [] : [{ block, words: `${label} ${value}${unit === '' ? '' : ` ${unit}`}` }]
}

/** `label value`, with the unit of the field where only a number was typed: `40` is mm there, `4 cm` and `1 1/2 in` say it themselves. */
export function measured(values: FormValues, block: string, label: string, unit: string): readonly Phrase[] {
  const bare = /^[-−]?[\d.,/⁄\s¼½¾⅐-⅞]+$/u.test(textOf(values, block))
  return labelled(values, block, label, bare ? unit : '')
}

/** The words that were typed or chosen, as they are. */
export function chosen(values: FormValues, block: string): readonly Phrase[] {
  const words = textOf(values, block)
  return words === '' ? [] : [{ block, words }]
}

/** Every ticked word. */
export function allTicked(values: FormValues, block: string): readonly Phrase[] {
  return ticked(values, block).map((words) => ({ block, words }))
}

/** Whether a field holds something else than it was filled with. */
export function changed(values: FormValues, was: FormValues, block: string): boolean {
  return [...ticked(values, block)].sort().join('\n') !== [...ticked(was, block)].sort().join('\n')
}
