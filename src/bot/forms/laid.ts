import { numberField, textField } from './fields.js'
import { type Form, labelled, textOf } from './form.js'
import { inUnit, scale } from './parts/scale.js'

/** Area and metres of a while; filled with the kit that is in use. */
export const laid: Form = {
  command: 'laid',
  blocks: ({ talk: { fields: f } }, { units }) => [
    numberField('area', inUnit(f.areaLaid, 'area', units), false),
    numberField('sheets', f.sheets),
    numberField('course', f.course),
    textField('kitName', f.kitName, true),
    numberField('robotM', inUnit(f.byRobot, 'long', units)),
    numberField('handM', inUnit(f.byHand, 'long', units))
  ],
  fills: ({ kit }) => ({ kitName: kit?.name ?? null }),
  phrases: (values, { units }) => [
    { block: 'area', words: `${textOf(values, 'area')} ${scale[units].area}` },
    ...labelled(values, 'sheets', 'sheets'),
    ...labelled(values, 'course', 'course'),
    ...labelled(values, 'kitName', 'kit'),
    ...labelled(values, 'robotM', 'robot', scale[units].long),
    ...labelled(values, 'handM', 'hand', scale[units].long)
  ],
  sound: { area: '1 m2' }
}
