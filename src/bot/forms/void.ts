import { choiceField, numberField, photosField, ticksField } from './fields.js'
import { type Form, labelled, type Phrase, photosOf, textOf, ticked } from './form.js'

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
    numberField('distance', `${f.distance}, ${units === 'us' ? 'ft' : 'm'}`),
    numberField('length', `${f.length}, ${units === 'us' ? 'in' : 'mm'}`),
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
    ...labelled(values, 'distance', 'at', units === 'us' ? 'ft' : 'm'),
    ...labelled(values, 'length', 'long', units === 'us' ? 'in' : 'mm'),
    ...ticked(values, 'cause').map((words): Phrase => ({ block: 'cause', words })),
    ...photosOf(values)
  ]
}
