import { numberField } from './fields.js'
import { type Form, labelled } from './form.js'
import { inUnit } from './parts/scale.js'

/** Readings taken on the roof; an empty field is not read. */
export const readings: Form = {
  command: 'spray',
  blocks: ({ talk: { fields: f } }, { units }) => [
    numberField('air', inUnit(f.air, 'temperature', units)),
    numberField('deck', inUnit(f.deck, 'temperature', units)),
    numberField('rh', f.humidity),
    numberField('wind', inUnit(f.wind, 'wind', units)),
    numberField('gust', inUnit(f.gust, 'wind', units)),
    numberField('rain', f.rainChance),
    numberField('iso', inUnit(f.iso, 'temperature', units)),
    numberField('resin', inUnit(f.resin, 'temperature', units))
  ],
  phrases: (values) => ['air', 'deck', 'rh', 'wind', 'gust', 'rain', 'iso', 'resin'].flatMap((label) => labelled(values, label, label))
}
