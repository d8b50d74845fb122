import { choiceField, dateField, ticksField } from './fields.js'
import { allTicked, chosen, type Form, labelled } from './form.js'

/** Everything that a crew states before it sprays: the values of the fields are the words. */
export const checklist: Form = {
  command: 'spray',
  blocks: ({ talk: { fields: f } }) => [
    ticksField('surfaces', f.surfaces, [
      ['deck dry', f.dry],
      ['fleece dry', f.fleeceDry],
      ['clean', f.clean],
      ['relaxed', f.relaxed]
    ]),
    ticksField('weather', f.weather, [
      ['no rain', f.noRain],
      ['no thunder', f.noThunder]
    ]),
    choiceField(
      'intakes',
      f.intakes,
      [
        ['none', f.intakesNone],
        ['shut', f.intakesShut],
        ['open', f.intakesOpen]
      ],
      true
    ),
    choiceField(
      'contact',
      f.contact,
      [
        ['compatible', f.compatible],
        ['contact', f.touches],
        ['ask', f.askMaker]
      ],
      true
    ),
    ticksField('kit', f.kit, [['mixed', f.mixed]]),
    dateField('expiry', f.expiry),
    ticksField('startUp', f.startUp, [
      ['tight', f.tight],
      ['purged', f.purged],
      ['nozzle', f.nozzle],
      ['tested', f.tested]
    ])
  ],
  fills: ({ kit, compatibility }) => ({ expiry: kit?.expiresOn ?? null, contact: compatibility }),
  phrases: (values) => [
    ...['surfaces', 'weather', 'kit', 'startUp'].flatMap((block) => allTicked(values, block)),
    ...labelled(values, 'intakes', 'intakes'),
    ...chosen(values, 'contact'),
    ...labelled(values, 'expiry', 'exp')
  ]
}
