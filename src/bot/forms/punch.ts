import { readWords } from '../words/read.js'
import { photosField, textField } from './fields.js'
import { type Form, photosOf, textOf } from './form.js'

/** Something left to mend, in the crew's own words. */
export const punch: Form = {
  command: 'punch',
  blocks: ({ talk: { fields: f } }) => [textField('text', f.text, false), photosField(f.photos)],
  phrases: (values) => [{ block: 'text', words: asText(textOf(values, 'text')) }, ...photosOf(values)]
}

/** What begins like a step of an item ("3 pipes open") is a new item all the same: typed in this form it can be nothing else. */
function asText(typed: string): string {
  const read = readWords(`punch ${typed}`, { units: 'metric', zone: 'UTC', now: 0 })
  return typed === '' || (read.ok && read.said.command === 'punch add') ? typed : `· ${typed}`
}
