import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'

export const roofPicture: Text['roofPicture'] = {
  title: (site) => `Roof of ${site}`,
  stripTitle: (sheets) => plural('en', sheets, { one: 'Cover strip', other: `Cover strip over ${sheets} sheets` }),
  size: (width, depth) => `${width} × ${depth}`,
  courses: (count, along) => `${many(count, 'course', 'courses')} along ${along}`,
  lowSide: 'low side',
  north: 'N',
  northUp: 'north up',
  rolls: (count) => many(count, 'roll', 'rolls'),
  joints: (count) => many(count, 'end joint', 'end joints'),
  strips: (count) => many(count, 'strip', 'strips'),
  patches: (count) => many(count, 'patch', 'patches'),
  handPress: (count) => `press by hand: ${many(count, 'place', 'places')}`,
  openings: (count) => many(count, 'opening', 'openings'),
  zones: (standard) => `wind zones ${standard}`,
  zone: (name, area, width) => (width === null ? `${name}: ${area}` : `${name}: ${area}, ${width} wide`),
  zonesEngineer: 'wind zones: ask the engineer',
  zonesUnknown: 'wind zones: height not said',
  patternEngineer: 'the pattern is the engineer’s',
  openVoids: (count) => many(count, 'open void', 'open voids'),
  voidAt: (number, x, y) => `void ${number} at ${x}, ${y}`,
  notNumbered: (count) => `${many(count, 'patch', 'patches')} without room for a number here`,
  cuts: 'on a sheet: its roll and the length to cut',
  notToScale: 'not to scale',
  gap: 'gap',
  land: 'land',
  least: 'least',
  off: 'off centre',
  pastLap: 'past the lap',
  toEdge: 'to the edge',
  radius: 'corners r',
  lap: 'lap',
  sheet: 'sheet',
  edge: 'edge',
  weld: 'weld all round'
}

function many(count: number, one: string, other: string): string {
  return counted('en', count, { one, other })
}
