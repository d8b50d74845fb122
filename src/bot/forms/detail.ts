import { photosField, ticksField } from './fields.js'
import { allTicked, type Form, photosOf } from './form.js'

/** Kinds of detail that were looked at and are good; what is bad goes on the punch list. */
export const detail: Form = {
  command: 'detail',
  blocks: ({ talk: { fields: f } }) => [
    ticksField('details', f.details, [
      ['corners', f.corners],
      ['pipes', f.pipes],
      ['drains', f.drains],
      ['terminations', f.terminations],
      ['cut edges', f.cutEdges],
      ['t-steps', f.tSteps]
    ]),
    photosField(f.photos)
  ],
  phrases: (values) => [...allTicked(values, 'details'), ...photosOf(values)]
}
