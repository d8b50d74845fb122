import type { Text } from '../text.js'

export const dayPicture: Text['dayPicture'] = {
  inventedWeek: 'semana inventada',
  activities: { spray: 'rociar', lay: 'colocar', weld: 'soldar', people: 'gente' },
  lines: { airC: 'aire', dewPointC: 'rocío', substrateC: 'sustrato', windKmh: 'viento', gustKmh: 'racha' },
  rain: 'lluvia',
  chance: 'prob.',
  now: (time) => `ahora ${time}`,
  title: (site, date) => `El día de ${site}, ${date}`,
  at: (amount, time) => `${amount} a las ${time}`,
  notJudged: 'sin evaluar',
  notKnown: 'sin dato',
  noRain: 'sin lluvia',
  sunrise: (time) => `salida del sol ${time}`,
  sunset: (time) => `puesta del sol ${time}`,
  sunUp: 'el sol no se pone',
  sunDown: 'el sol no sale'
}
