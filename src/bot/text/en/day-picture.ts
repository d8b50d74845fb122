import type { Text } from '../text.js'

export const dayPicture: Text['dayPicture'] = {
  inventedWeek: 'invented week',
  activities: { spray: 'spray', lay: 'lay', weld: 'weld', people: 'people' },
  lines: { airC: 'air', dewPointC: 'dew pt', substrateC: 'substrate', windKmh: 'wind', gustKmh: 'gust' },
  rain: 'rain',
  chance: 'chance',
  now: (time) => `now ${time}`,
  title: (site, date) => `The day of ${site}, ${date}`,
  at: (amount, time) => `${amount} at ${time}`,
  notJudged: 'not judged',
  notKnown: 'not known',
  noRain: 'no rain',
  sunrise: (time) => `sunrise ${time}`,
  sunset: (time) => `sunset ${time}`,
  sunUp: 'the sun stays up',
  sunDown: 'the sun stays down'
}
