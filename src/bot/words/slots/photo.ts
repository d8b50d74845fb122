import { Refused } from '../refused.js'
import { takeToken } from '../take.js'
import { type Meaning, note } from '../walk.js'

/** A file's id as the chat service gives it. */
const fileId = /^F[A-Za-z0-9]{1,30}$/
const mostPhotos = 5

/** `photo F0123`: a photo that came with the message; forms and photo messages add the words by themselves. */
export const photo: Meaning = {
  words: { en: 'photo(,s)', es: 'foto(,s)', fr: 'photo(,s)' },
  read: (walk, heard) => {
    const id = takeToken(walk, heard, fileId).toUpperCase()
    const files = [...new Set([...(walk.fields.files ?? []), id])]
    if (files.length > mostPhotos) throw new Refused('out-of-range', id, { label: 'photo', max: mostPhotos })
    walk.fields.files = files
    note(walk, 'photo', id)
  }
}
