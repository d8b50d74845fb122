import { counted } from '../plural.js'
import type { SheetsWords } from '../sheets-words.js'

export const sheets: SheetsWords = {
  courses: (count) => counted('en', count, { one: 'course', other: 'courses' }),
  rolls: (count) => counted('en', count, { one: 'roll', other: 'rolls' }),
  area: (amount) => `roof ${amount}`,
  along: { x: 'sheets along x, first course at the low side y = 0', y: 'sheets along y, first course at the low side x = 0' },
  waste: (percent) => `${percent} of what is bought is offcut`,
  leastRolls: (count) => `these sheets need ${counted('en', count, { one: 'roll', other: 'rolls' })} at least`,
  joints: (count) => counted('en', count, { one: 'end joint', other: 'end joints' }),
  strips: (count, total) => `${counted('en', count, { one: 'cover strip', other: 'cover strips' })}, together ${total}`,
  lengths: (list) => `cut strips: ${list}`,
  land: (amount) => `least land of a strip ${amount}`,
  patches: (count) => counted('en', count, { one: 'patch', other: 'patches' }),
  noPatches: 'no patches',
  handPress: (count) => `${counted('en', count, { one: 'place', other: 'places' })} to press by hand, where a strip steps over a lap`,
  weld: (robot, hand, laps) => `weld: robot ${robot}, of it side laps ${laps}; hand ${hand}`,
  kits: (kits, nozzles) =>
    `${counted('en', kits, { one: 'adhesive kit', other: 'adhesive kits' })}, ${counted('en', nozzles, { one: 'nozzle', other: 'nozzles' })}`,
  fasteners: (count) => `${counted('en', count, { one: 'fastener', other: 'fasteners' })} at the bases`,
  zones: (standard, list) => `zones by ${standard}: ${list}`,
  standards: { en: 'EN 1991-1-4', asce: 'ASCE 7-22', nbcc: 'NBCC' },
  noZones: {
    shape: 'zones: ask the engineer, the roof is no rectangle',
    height: 'zones: ask the engineer, too high for the standard',
    unknown: 'zones: say the height of the roof: height 8 m'
  },
  pattern: "The pattern for each zone is the maker's or the engineer's.",
  roll: (numbers, cuts, left) => `${numbers}: ${cuts}; left ${left}`,
  cutList: 'rolls, cut in this order',
  place: (number, x, y) => `${number} at ${x}, ${y}`,
  patchPlaces: 'patches, from 0,0',
  pressPlaces: 'press by hand, strip and place from 0,0'
}
