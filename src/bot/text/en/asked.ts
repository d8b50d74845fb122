import type { AskedWords } from '../asked-words.js'

export const asked: AskedWords = {
  deck: {
    dry: '✓ roof: stated dry',
    likelyDry: '? roof: dry by the forecast, not stated: touch it, then state dry or wet',
    wet: '✕ roof: wet',
    wetEarly: '✕ roof: wet early by the forecast',
    unknown: '? roof: not known whether dry: touch it, then state dry or wet',
    driesAt: (at) => `dry about ${at}`,
    startsDry: '? roof: dry by the forecast'
  },
  rain: {
    falling: '✕ rain: falling now',
    none: '✓ rain: none in the forecast',
    from: (at) => `△ rain: forecast from about ${at}`,
    unknown: '? rain: not known'
  },
  noThunder: '✓ thunder: none in the forecast',
  byForecast: 'if there is no thunder'
}
