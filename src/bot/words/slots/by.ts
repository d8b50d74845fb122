import { takeToken } from '../take.js'
import { type Heard, type Meaning, note, put, type Walk } from '../walk.js'

/** A name of letters, `@` before it or not, or a mention of the chat. */
const person = /^(?:<@[UW][A-Z0-9]{1,20}(?:\|[^<>]{0,80})?>|@?[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}.'’_-]{0,39})$/u

/** Takes a person here; of a mention only the id is kept, of a name what comes after `@`. */
export function takePerson(walk: Walk, heard: Heard): string {
  const typed = takeToken(walk, heard, person)
  return /^<@([A-Z0-9]+)/.exec(typed)?.[1] ?? typed.replace(/^@/, '')
}

/** `by WHO`. */
export const by: Meaning = {
  words: { en: 'by', es: 'por', fr: 'par' },
  read: (walk, heard) => {
    const name = takePerson(walk, heard)
    put(walk, heard, 'by', name)
    note(walk, heard.label, name)
  }
}
