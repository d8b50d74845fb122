import { type Lang, langs } from '../answer.js'
import { fold } from './fold.js'
import { allForms, formsOf, type Words } from './forms.js'
import type { Lexicon, Meaning, Vocabulary, Walk } from './walk.js'

/** Makes a vocabulary ready for reading. `other` reads what is none of its words. */
export function lexiconOf(vocabulary: Vocabulary, other: (walk: Walk) => boolean = () => false): Lexicon {
  const index = new Map<string, { label: string; meaning: Vocabulary[string] }>()
  for (const [label, meaning] of Object.entries(vocabulary)) {
    for (const word of allForms(meaning.words)) index.set(fold(word), { label, meaning })
  }
  const langsOf = langsByForm(Object.values(vocabulary).map(({ words }) => words))
  const words = [...langsOf.keys()]
  const spelled = words
    .filter((word) => !word.includes(' '))
    .map((written) => ({ written, folded: fold(written), langs: langsOf.get(written) as ReadonlySet<Lang> }))
  const heads = new Set(words.filter((word) => word.includes(' ')).map((phrase) => fold(phrase).split(' ')[0] as string))
  return { index, heads, spelled, other }
}

/** The languages that each form of the words belongs to. */
function langsByForm(all: readonly Words[]): ReadonlyMap<string, ReadonlySet<Lang>> {
  const langsOf = new Map<string, Set<Lang>>()
  for (const words of all) {
    for (const lang of langs) {
      for (const form of formsOf(words[lang])) langsOf.set(form, (langsOf.get(form) ?? new Set()).add(lang))
    }
  }
  return langsOf
}

/** A vocabulary of a closed list: a meaning for each value of it. */
export function meaningsOf<Value extends string>(
  list: Readonly<Record<Value, Words>>,
  meaning: (value: Value) => Omit<Meaning, 'words'>
): Readonly<Record<Value, Meaning>> {
  const meanings = (Object.entries(list) as [Value, Words][]).map(([value, words]) => [value, { words, ...meaning(value) }])
  return Object.fromEntries(meanings) as Record<Value, Meaning>
}

/** Choices by folded word, for the value after a label. */
export function choicesOf<Value>(choices: readonly (readonly [Value, Words])[]): ReadonlyMap<string, Value> {
  return new Map(choices.flatMap(([value, words]) => allForms(words).map((word) => [fold(word), value] as const)))
}

/** Edits (insert, delete, replace, two letters swapped) that turn one word into another, counted up to `limit`; more is `limit + 1`. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1
  let before: readonly number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? (before[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY
      next.push(Math.min(replaced, swapped, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1))
    }
    // A swap reaches back two rows: only when both are past the limit can nothing come back below it.
    if (Math.min(...next) > limit && Math.min(...row) > limit) return limit + 1
    before = row
    row = next
  }
  return Math.min(row[b.length] ?? limit + 1, limit + 1)
}

/** The words of a language, or of any (null), nearest to one that is not known, nearest first, within `limit` edits and half its letters. */
export function nearest(word: string, spelled: Lexicon['spelled'], limit: number, count: number, lang: Lang | null): readonly string[] {
  const folded = fold(word)
  if (folded.length > 30) return []
  const reach = Math.min(limit, Math.floor(folded.length / 2))
  return spelled
    .filter(({ langs }) => lang === null || langs.has(lang))
    .map((candidate) => ({ written: candidate.written, edits: editDistance(folded, candidate.folded, reach) }))
    .filter(({ edits }) => edits <= reach)
    .sort((a, b) => a.edits - b.edits)
    .slice(0, count)
    .map(({ written }) => written)
}
