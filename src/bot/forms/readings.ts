import { numberField } from './fields.js'
import { type Form, labelled } from './form.js'

/** Readings taken on the roof; an empty field is not read. */
export const readings: Form = {
  command: 'spray',
  blocks: ({ talk: { fields: f } }, { units }) => {
    const degrees = units === 'us' ? '°F' : '°C'
    const speed = units === 'us' ? 'mph' : 'km/h'
    return [
      numberField('air', `${f.air}, ${degrees}`),
      numberField('deck', `${f.deck}, ${degrees}`),
      numberField('rh', f.humidity),
      numberField('wind', `${f.wind}, ${speed}`),
      numberField('gust', `${f.gust}, ${speed}`),
      numberField('rain', f.rainChance),
      numberField('iso', `${f.iso}, ${degrees}`),
      numberField('resin', `${f.resin}, ${degrees}`)
    ]
  },
  phrases: (values) => ['air', 'deck', 'rh', 'wind', 'gust', 'rain', 'iso', 'resin'].flatMap((label) => labelled(values, label, label))
}
