import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'

const count = (kits: number): string => counted('en', kits, { one: 'kit', other: 'kits' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lot ${lot}: ${real} per kit (${count(kits)})`,
  day: (date, real, kits) => `${date}: ${real} per kit (${count(kits)})`,
  off: (amount, thin) => (thin ? `${amount} more than planned: too thin` : `${amount} less than planned: too thick, or foam lost`),
  left: (iso, resin) => `left: iso ${iso}, resin ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} empties unevenly (iso ${iso}, resin ${resin} left): off ratio. Stop, check hoses, gun and both parts, change the nozzle, test spray`,
  used: (area) => `laid with it: ${area}`,
  next: 'next kit: read and state it: kit K2 iso 24 resin 23 mixed',
  assumed: (name) => `kit ${name} (the one in use: none was named)`,
  wasEmpty: (name, at) => `kit ${name} was said to be empty at ${at}: counted with it all the same. Another kit? undo, and name it`,
  openTimeOfSheet: (amount) => `open time ${amount} by the limits sheet, not measured`
}
