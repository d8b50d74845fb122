import { choiceField, numberField, photosField, textField, ticksField } from './fields.js'
import { allTicked, type Form, labelled, measured, photosOf, textOf } from './form.js'
import { inUnit, lengthHint, scale } from './parts/scale.js'

const places = ['lap', 'end', 'strip', 'patch'] as const
const causes = ['wet', 'dirty', 'cold', 'scorched', 'wrinkled', 'uneven', 'foam'] as const

/** A failed probe spot. */
export const voidForm: Form = {
  command: 'probe',
  blocks: ({ talk: { fields: f } }, { units, lang }) => [
    numberField('course', f.course, false),
    choiceField(
      'on',
      f.on,
      places.map((place) => [place, f[place]]),
      false
    ),
    textField('distance', inUnit(f.distance, 'long', units), true, lengthHint(units, 'long', lang)),
    textField('length', inUnit(f.length, 'small', units), false, lengthHint(units, 'small', lang)),
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
    ...measured(values, 'distance', 'at', scale[units].long),
    ...measured(values, 'length', 'long', scale[units].small),
    ...allTicked(values, 'cause'),
    ...photosOf(values)
  ],
  sound: { course: 'course 1', on: 'lap', length: 'long 40 mm' }
}
