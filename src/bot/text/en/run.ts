import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const run: Text['run'] = {
  ways: { stop: 'stop, unroll and cover', follow: 'unroll behind the gun', flop: 'half the sheet folded back' },
  reach: (list) => `reach: ${list}`,
  noLimit: 'no limit',
  none: 'The foam does not stay open long enough to stop and cover: unroll behind the gun, or wait until the substrate is cooler.',
  gels: (stop, gel) => `a stop takes ${stop}, foam sets in the nozzle after ${gel}: a new nozzle after each stop`,
  short: (needed, perKit) =>
    `Nozzles run out before foam: about ${counted('en', needed, { one: 'nozzle', other: 'nozzles' })} needed for a kit, ${perKit} come with it.`,
  shortest: (openTime, every) => `shortest open time ${openTime}: stop and roll every ${every}`
}
