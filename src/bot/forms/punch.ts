import { photosField, textField } from './fields.js'
import { type Form, photosOf, textOf } from './form.js'

/** Something left to mend, in the crew's own words. */
export const punch: Form = {
  command: 'punch',
  blocks: ({ talk: { fields: f } }) => [textField('text', f.text, false), photosField(f.photos)],
  phrases: (values) => [{ block: 'text', words: textOf(values, 'text') }, ...photosOf(values)]
}
