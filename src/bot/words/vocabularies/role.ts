import type { PersonRole } from '../../answer.js'
import { takeChunk, unknownWord } from '../cursor.js'
import type { Words } from '../forms.js'
import type { Said } from '../said.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'

const roles: Readonly<Record<PersonRole, Words>> = {
  supervisor: { en: 'supervisor(,s)', es: 'supervisor(,a,es,as)', fr: 'superviseur(,s) chef_de_chantier chef responsable' },
  crew: { en: 'crew', es: 'cuadrilla', fr: 'équipe' },
  inspector: { en: 'inspector(,s)', es: 'inspector(,a,es,as)', fr: 'inspecteur(,s) inspectrice contrôleur(,s)' }
}

export const roleVocabulary: Vocabulary = meaningsOf(roles, (role) => ({
  read: (walk, heard) => {
    put(walk, { raw: heard.raw, label: 'role' }, 'role', role)
    note(walk, role, true)
  }
}))

/** A person: a mention as the chat service writes it, or the id that it knows. */
function other(walk: Walk): boolean {
  const before = walk.pos
  const typed = takeChunk(walk)
  const id = /^<@([A-Z0-9]{1,20})(?:\|[^<>]{0,80})?>$/.exec(typed)?.[1] ?? /^@?([A-Za-z0-9][A-Za-z0-9._-]{0,39})$/.exec(typed)?.[1]
  if (id === undefined) {
    walk.pos = before
    throw unknownWord(walk, typed || undefined)
  }
  // After somebody was named, a word that is no mention was meant as the role.
  if (walk.fields.person !== undefined && walk.fields.person !== id && !/^<?@/.test(typed)) {
    walk.pos = before
    throw unknownWord(walk, typed)
  }
  put(walk, { raw: typed, label: 'person' }, 'person', id)
  note(walk, 'person', id)
  return true
}

const lexicon = lexiconOf(roleVocabulary, other)

/** Whose role, and which; without a role the one they have, without a person who the supervisors are. */
export const role: Grammar = {
  command: 'role',
  lexicon: () => lexicon,
  build: ({ fields }): Said => ({ command: 'role', person: fields.person ?? null, role: fields.role ?? null })
}
