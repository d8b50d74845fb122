import { choiceField, numberField, photosField, ticksField } from './fields.js'
import { allTicked, type Form, labelled, photosOf, textOf } from './form.js'
import { inUnit, scale } from './parts/scale.js'

const places = ['lap', 'end', 'strip', 'patch'] as const
const causes = ['wet', 'dirty', 'cold', 'scorched', 'wrinkled', 'uneven', 'foam'] as const

/** A failed probe spot. */
export const voidForm: Form = {
  command: 'probe',
  blocks: ({ talk: { fields: f } }, { units }) => [
    numberField('course', f.course),
    choiceField(
      'on',
      f.on,
      places.map((place) => [place, f[place]]),
      false
    ),
    numberField('distance', inUnit(f.distance, 'long', units)),
    numberField('length', inUnit(f.length, 'small', units)),
    ticksField(
      'cause',
      f.cause,
      causes.map((cause) => [cause, f[cause]])
    ),
    photosField(f.photos)
  ],
  phrases: (values, { units }) => [
    ...labelled(values, 'course', 'course'),
    { block: 'on', words: textOf(values, 'on') },
    ...labelled(values, 'distance', 'at', scale[units].long),
    ...labelled(values, 'length', 'long', scale[units].small),
    ...allTicked(values, 'cause'),
    ...photosOf(values)
  ],
  sound: { course: 'course 1', on: 'lap', length: 'long 40 mm' }
}
