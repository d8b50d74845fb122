import { takeToken } from '../take.js'
import { type Meaning, note, put } from '../walk.js'

const person = /^(?:<@[UW][A-Z0-9]{1,20}(?:\|[^<>]{0,80})?>|@?[\p{L}\p{N}][\p{L}\p{M}\p{N}_.'’-]{0,39})$/u

/** `by WHO`: an id of the chat service or a name. */
export const by: Meaning = {
  words: { en: 'by', es: 'por', fr: 'par' },
  read: (walk, heard) => {
    const typed = takeToken(walk, heard, person)
    const name = /^<@([UW][A-Z0-9]+)/.exec(typed)?.[1] ?? typed
    put(walk, heard, 'by', name)
    note(walk, heard.label, name)
  }
}
