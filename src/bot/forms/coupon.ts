import { choiceField, numberField, textField, ticksField } from './fields.js'
import { type Form, labelled, type Phrase, textOf, ticked } from './form.js'

/** A weld coupon, cooled and pulled apart. */
export const coupon: Form = {
  command: 'weld',
  blocks: ({ fields: f }, units) => [
    choiceField(
      'welder',
      f.welder,
      [
        ['robot', f.robot],
        ['hand', f.hand]
      ],
      false
    ),
    textField('widths', `${f.widths}, ${units === 'us' ? 'in' : 'mm'}`, false),
    choiceField(
      'peel',
      f.peel,
      peels.map((peel) => [peel, f[peel]]),
      false
    ),
    ticksField('warm', f.warm, [['warm', f.warmYes]]),
    numberField('set', units === 'us' ? '°F' : '°C')
  ],
  phrases: (values) => [
    { block: 'welder', words: textOf(values, 'welder') },
    { block: 'widths', words: textOf(values, 'widths') },
    { block: 'peel', words: textOf(values, 'peel') },
    ...ticked(values, 'warm').map((words): Phrase => ({ block: 'warm', words })),
    ...labelled(values, 'set', 'set')
  ]
}

const peels = ['film', 'parted', 'scorched', 'glossy', 'uneven', 'wrinkled'] as const
