import { choiceField, numberField, photosField, textField, ticksField } from './fields.js'
import { type Form, labelled, type Phrase, photosOf, textOf, ticked } from './form.js'

const methods = ['tape', 'foam', 'mastic', 'welded', 'weighed'] as const

/** The night seal; 0 open edge needs no method. */
export const seal: Form = {
  command: 'seal',
  blocks: ({ talk: { fields: f } }, { units }) => [
    numberField('edge', `${f.edge}, ${units === 'us' ? 'ft' : 'm'}`),
    choiceField(
      'method',
      f.method,
      methods.map((method) => [method, f[method]]),
      true
    ),
    ticksField('checks', f.checks, [
      ['drains open', f.drainsOpen],
      ['rolled', f.rolled]
    ]),
    textField('by', f.by, true),
    photosField(f.photos)
  ],
  phrases: (values, { units }) => [
    ...labelled(values, 'edge', 'edge', units === 'us' ? 'ft' : 'm'),
    ...(textOf(values, 'method') === '' ? [] : [{ block: 'method', words: textOf(values, 'method') }]),
    ...ticked(values, 'checks').map((words): Phrase => ({ block: 'checks', words })),
    ...labelled(values, 'by', 'by'),
    ...photosOf(values)
  ]
}
