import { en, type RoomWords, type WordName } from './en.js'
import { es } from './es.js'
import { fr } from './fr.js'

export type { RoomWords, WordName } from './en.js'

export const roomWords = { en, es, fr } as const satisfies Readonly<Record<string, RoomWords>>
export type RoomLang = keyof typeof roomWords

/** The language of a word such as the page sends; `otherwise` for any other. */
export function langOf(word: unknown, otherwise: RoomLang): RoomLang {
  return word === 'en' || word === 'es' || word === 'fr' ? word : otherwise
}

/** A sentence of the room with its blanks filled. */
export function roomSays(lang: RoomLang, name: WordName, values: Readonly<Record<string, string | number>> = {}): string {
  return roomWords[lang][name].replace(/\{(\w+)\}/g, (blank, key: string) => String(values[key] ?? blank))
}
