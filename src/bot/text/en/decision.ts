import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const decision: Pick<Text, 'decision'> = {
  decision: {
    takeReading: 'take a reading',
    group: (name, said) => `${name} ${said}`,
    toState: (count) => `${counted('en', count, { one: 'to state', other: 'to state' })}`,
    toRead: (count) => `${counted('en', count, { one: 'reading to take', other: 'readings to take' })}`,
    atLeast: (amount) => `at least ${amount}`,
    atMost: (amount) => `at most ${amount}`,
    below: (amount) => `must be below ${amount}`,
    limit: (amount) => `limit ${amount}`,
    days: (count) => counted('en', count, { one: 'day', other: 'days' }),
    tooOld: 'last one too old',
    forecast: 'forecast',
    model: 'estimate',
    tooClose: 'too close to call',
    tightest: (finding) => `tightest: ${finding}`,
    toSayStill: (words) => `still to say: ${words}`,
    changes: (at) => `likely to change about ${at}`,
    closeUp: 'Rain is coming: close up now.',
    overridden: (reason) => `A supervisor goes ahead against the decision, it is in the record: ${reason}`,
    numbers: {
      airC: 'air',
      rhPct: 'humidity',
      dewPointC: 'dew point',
      frostPointC: 'frost point',
      wetBulbC: 'wet bulb',
      substrateC: 'substrate',
      dewMarginK: 'dew margin',
      kitColdC: 'kit, coldest',
      kitHotC: 'kit, hottest',
      windKmh: 'mean wind',
      gustKmh: 'gust',
      rainChancePct: 'chance of rain',
      heatIndexC: 'heat index',
      windChillC: 'wind chill',
      daylightMin: 'daylight after closing up',
      wbgtC: 'WBGT',
      openTimeS: 'open time',
      reachM: 'reach of a run',
      stopEveryM: 'stop and roll every',
      sheetC: 'sheet',
      dropPct: 'voltage drop'
    }
  }
}
