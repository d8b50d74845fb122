import { fold } from '../fold.js'
import { allForms, type Words } from '../forms.js'
import { littleWords } from './little-words.js'
import { siteWords } from './site-words.js'
import { workWords } from './work-words.js'

export const conceptWords = { ...littleWords, ...workWords, ...siteWords } as const satisfies Record<string, Words>
export type Concept = keyof typeof conceptWords

/** Parts of a word or phrase, folded: apostrophes and hyphens part them, so that `can't` and `peut-on` are two. */
export function partsOf(phrase: string): readonly string[] {
  return fold(phrase)
    .split(/[\s'-]+/)
    .filter((part) => part !== '')
}

/** The longest phrase in parts. */
export const longest = 6

/** Concepts by phrase. A word that two lists hold has the first one's meaning, so that fillers give way to things said later. */
const index: ReadonlyMap<string, Concept> = (() => {
  const map = new Map<string, Concept>()
  const ordered = (Object.entries(conceptWords) as [Concept, Words][]).sort(([a], [b]) => rank(a) - rank(b))
  for (const [concept, words] of ordered) {
    for (const form of allForms(words)) {
      const key = partsOf(form).join(' ')
      if (!map.has(key)) map.set(key, concept)
    }
  }
  return map
})()

function rank(concept: Concept): number {
  return concept === 'filler' ? 1 : 0
}

export function conceptOf(parts: readonly string[]): Concept | null {
  return index.get(parts.join(' ')) ?? null
}
