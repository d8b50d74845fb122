import type { Unit } from '../units.js'

/** How a quantity is written in a sheet: its unit and key ending, metric and US. */
export const scales = {
  temperature: { metric: { ending: 'C', unit: 'C' }, us: { ending: 'F', unit: 'F' } },
  difference: { metric: { ending: 'K', unit: 'K' }, us: { ending: 'F', unit: 'deltaF' } },
  speed: { metric: { ending: 'Kmh', unit: 'km/h' }, us: { ending: 'Mph', unit: 'mph' } },
  length: { metric: { ending: 'Mm', unit: 'mm' }, us: { ending: 'In', unit: 'in' } },
  distance: { metric: { ending: 'M', unit: 'm' }, us: { ending: 'Ft', unit: 'ft' } },
  area: { metric: { ending: 'M2', unit: 'm2' }, us: { ending: 'Ft2', unit: 'ft2' } },
  percent: { metric: { ending: 'Pct', unit: '%' }, us: { ending: 'Pct', unit: '%' } },
  minutes: { metric: { ending: 'Min', unit: 'min' }, us: { ending: 'Min', unit: 'min' } }
} as const satisfies Record<string, Record<'metric' | 'us', { ending: string; unit: Unit }>>

export type ScaleName = keyof typeof scales

/** Every limit that a sheet may set, and what it measures. Its key is the name with the ending of the sheet's units. */
export const limitScales = {
  kitTemperature: 'temperature',
  airSpray: 'temperature',
  airWeld: 'temperature',
  substrate: 'temperature',
  dewMarginSpray: 'difference',
  dewMarginWeld: 'difference',
  humidity: 'percent',
  rainChance: 'percent',
  rainAmount: 'length',
  windMeanSpray: 'speed',
  windMeanLay: 'speed',
  windMeanWeld: 'speed',
  windMeanPeople: 'speed',
  windGustSpray: 'speed',
  windGustLay: 'speed',
  windGustPeople: 'speed',
  daylight: 'minutes',
  heatIndex: 'temperature',
  heatIndexNoPlan: 'temperature',
  windChill: 'temperature',
  powerDrop: 'percent',
  seamWidthRobot: 'length',
  seamWidthHand: 'length',
  stripGap: 'length'
} as const satisfies Record<string, ScaleName>

export type LimitName = keyof typeof limitScales
