import { choiceField, numberField, photosField, textField, ticksField } from './fields.js'
import { allTicked, chosen, type Form, labelled, photosOf } from './form.js'
import { inUnit, scale } from './parts/scale.js'

const methods = ['tape', 'foam', 'mastic', 'welded', 'weighed'] as const

/** The night seal; 0 open edge needs no method. */
export const seal: Form = {
  command: 'seal',
  blocks: ({ talk: { fields: f } }, { units }) => [
    numberField('edge', inUnit(f.edge, 'long', units)),
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
    ...labelled(values, 'edge', 'edge', scale[units].long),
    ...chosen(values, 'method'),
    ...allTicked(values, 'checks'),
    ...labelled(values, 'by', 'by'),
    ...photosOf(values)
  ]
}
