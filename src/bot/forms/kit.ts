import { choiceField, dateField, numberField, textField, ticksField } from './fields.js'
import { allTicked, changed, chosen, type Form, labelled, textOf } from './form.js'
import { inUnit, scale } from './parts/scale.js'

/** An adhesive kit: which one, its temperatures and what else is said of it; filled with the last one's name, lot and date. */
export const kit: Form = {
  command: 'kit',
  blocks: ({ talk: { fields: f } }, { units }) => [
    textField('name', f.kitName, true),
    numberField('iso', inUnit(f.iso, 'temperature', units)),
    numberField('resin', inUnit(f.resin, 'temperature', units)),
    ticksField('mixed', f.kit, [
      ['mixed', f.mixed],
      ['empty', f.empty]
    ]),
    choiceField(
      'place',
      f.place,
      [
        ['box', f.box],
        ['store', f.store],
        ['deck', f.onDeck]
      ],
      true
    ),
    numberField('placeT', inUnit(f.placeT, 'temperature', units)),
    dateField('expiry', f.expiry),
    textField('lot', f.lot, true),
    numberField('used', inUnit(f.used, 'area', units))
  ],
  fills: ({ kit: last }) => ({ name: last?.name ?? null, lot: last?.lot ?? null, expiry: last?.expiresOn ?? null }),
  phrases: (values, { units, was }) => {
    // Of the same kit it was said before; of another one it is news.
    const news = (block: string) => changed(values, was, 'name') || changed(values, was, block)
    const place = textOf(values, 'place')
    const warmth = textOf(values, 'placeT')
    return [
      ...chosen(values, 'name'),
      ...labelled(values, 'iso', 'iso', scale[units].temperature),
      ...labelled(values, 'resin', 'resin', scale[units].temperature),
      ...allTicked(values, 'mixed'),
      ...(place === '' ? [] : [{ block: 'place', words: warmth === '' ? place : `${place} ${warmth} ${scale[units].temperature}` }]),
      ...(news('expiry') ? labelled(values, 'expiry', 'exp') : []),
      ...(news('lot') ? labelled(values, 'lot', 'lot') : []),
      ...labelled(values, 'used', 'used', scale[units].area)
    ]
  }
}
