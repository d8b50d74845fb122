import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'

const count = (kits: number): string => counted('en', kits, { one: 'kit', other: 'kits' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lot ${lot}: ${real} per kit (${count(kits)})`,
  day: (date, real, kits) => `${date}: ${real} per kit (${count(kits)})`,
  off: (amount) => `${amount} off the plan`,
  left: (iso, resin) => `left: iso ${iso}, resin ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} empties unevenly (iso ${iso}, resin ${resin} left): off ratio. Stop, check hoses, gun and both parts, change the nozzle, test spray`
}
