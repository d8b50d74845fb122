import type { FormValues } from '../talk/talk.js'
import { choiceField, textField, ticksField } from './fields.js'
import { allTicked, changed, type Form, labelled, measured, type Opened, type Phrase, textOf } from './form.js'
import type { Known } from './parts/known.js'
import { fieldNumber, inUnit, scale } from './parts/scale.js'

const peels = ['film', 'parted', 'scorched', 'glossy', 'uneven', 'wrinkled'] as const
const mostWelders = 8

/** A weld coupon, cooled and pulled apart; filled with the welder of the last one and how it was set. */
export const coupon: Form = {
  command: 'weld',
  blocks: ({ talk: { fields: f } }, { units, welders }) => [
    choiceField('welder', f.welder, [['robot', f.robot], ['hand', f.hand], ...others(welders)], false),
    textField('widths', inUnit(f.widths, 'small', units), false),
    choiceField(
      'peel',
      f.peel,
      peels.map((peel) => [peel, f[peel]]),
      false
    ),
    ticksField('warm', f.warm, [['warm', f.warmYes]]),
    textField('set', inUnit(f.set, 'temperature', units), true),
    textField('speed', inUnit(f.speed, 'speed', units), true),
    textField('thick', inUnit(f.thick, 'small', units), true),
    textField('operator', f.operator, true)
  ],
  fills: ({ welders: [last], thicknessMm, units, lang }) => ({
    welder: last?.name ?? null,
    set: fieldNumber(last?.setC ?? null, 'temperature', units, lang),
    speed: fieldNumber(last?.speedMMin ?? null, 'speed', units, lang),
    thick: fieldNumber(last?.thicknessMm ?? thicknessMm, 'small', units, lang),
    operator: last?.by ?? null
  }),
  phrases: (values, opened) => [
    { block: 'welder', words: textOf(values, 'welder') },
    { block: 'widths', words: textOf(values, 'widths') },
    { block: 'peel', words: textOf(values, 'peel') },
    ...allTicked(values, 'warm'),
    ...settings(values, opened)
  ],
  sound: { welder: 'robot', widths: '40 mm', peel: 'film' }
}

function others(welders: Known['welders']): (readonly [string, string])[] {
  const named = welders.filter(({ name }) => name !== 'robot' && name !== 'hand').slice(0, mostWelders)
  return named.map(({ name }) => [name, name] as const)
}

/** How it was set. What was filled in for one welder says nothing of another that was chosen instead. */
function settings(values: FormValues, { was, units }: Opened): readonly Phrase[] {
  const another = was.welder != null && changed(values, was, 'welder')
  const phrases = [
    ...measured(values, 'set', 'set', scale[units].temperature),
    ...measured(values, 'speed', 'speed', scale[units].speed),
    ...measured(values, 'thick', 'thick', scale[units].small),
    ...labelled(values, 'operator', 'by')
  ]
  return phrases.filter(({ block }) => !another || block === 'thick' || changed(values, was, block))
}
