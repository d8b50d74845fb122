import type { Slot } from '../slot.js'

type Scale = Pick<Slot, 'unit' | 'metric' | 'us'>

const temperature = { unit: 'C', metric: 'C', us: 'F' } as const satisfies Scale
const percent = { unit: '%', metric: '%', us: '%' } as const satisfies Scale
const speed = { unit: 'km/h', metric: 'km/h', us: 'mph' } as const satisfies Scale
const small = { unit: 'mm', metric: 'mm', us: 'in' } as const satisfies Scale
const long = { unit: 'm', metric: 'm', us: 'ft' } as const satisfies Scale
const area = { unit: 'm2', metric: 'm2', us: 'ft2' } as const satisfies Scale
const newtons = { unit: 'N', metric: 'N', us: 'lbf' } as const satisfies Scale
const count = { unit: null, metric: null, us: null } as const satisfies Scale

/** Every number that may be said: units and ranges; where the trade gives no range, one that no roof reaches. */
export const slots = {
  air: { label: 'air', ...temperature, min: -60, max: 60 },
  substrate: { label: 'substrate', ...temperature, min: -60, max: 100 },
  sheet: { label: 'sheet', ...temperature, min: -60, max: 100 },
  rh: { label: 'rh', ...percent, min: 0, max: 100, above: true },
  dew: { label: 'dew', ...temperature, min: -60, max: 40 },
  wind: { label: 'wind', ...speed, min: 0, max: 300 },
  gust: { label: 'gust', ...speed, min: 0, max: 300 },
  sun: { label: 'sun', unit: 'W/m2', metric: 'W/m2', us: 'W/m2', min: 0, max: 1500 },
  rain: { label: 'rain', ...percent, min: 0, max: 100 },
  kit: { label: 'kit', ...temperature, min: -40, max: 80 },
  iso: { label: 'iso', ...temperature, min: -40, max: 80 },
  resin: { label: 'resin', ...temperature, min: -40, max: 80 },
  place: { label: 'place', ...temperature, min: -60, max: 100 },
  left: { label: 'left', ...percent, min: 0, max: 100 },
  used: { label: 'used', ...area, min: 0, max: 100_000, above: true },
  lead: { label: 'lead', ...long, min: 0, max: 1000, above: true },
  leadArea: { label: 'lead area', unit: 'mm2', metric: 'mm2', us: 'AWG', min: 0, max: 120, above: true },
  volts: { label: 'volts', unit: 'V', metric: 'V', us: 'V', min: 0, max: 1000, above: true },
  watts: { label: 'watts', unit: 'W', metric: 'W', us: 'W', min: 0, max: 100_000, above: true },
  width: { label: 'width', ...small, min: 0, max: 300, above: true },
  set: { label: 'set', ...temperature, min: 0, max: 700 },
  weldSpeed: { label: 'speed', unit: 'm/min', metric: 'm/min', us: 'ft/min', min: 0, max: 30 },
  thick: { label: 'thick', ...small, min: 0, max: 10 },
  stripWidth: { label: 'width', ...long, min: 0, max: 10, above: true },
  gap: { label: 'gap', ...small, min: -100, max: 150 },
  off: { label: 'off', ...small, min: -150, max: 150 },
  edge: { label: 'edge', ...small, min: 0, max: 10_000 },
  roofSide: { label: 'size', ...long, min: 0, max: 1000, above: true },
  corner: { label: 'corner', ...long, min: -1000, max: 1000 },
  height: { label: 'height', ...long, min: 0, max: 300, above: true },
  lap: { label: 'lap', ...small, min: 0, max: 10_000 },
  roll: { label: 'roll', ...long, min: 0, max: 1000, above: true },
  sheets: { label: 'sheets', ...count, min: 1, max: 100, whole: true },
  times: { label: 'x', ...count, min: 1, max: 10_000, whole: true },
  course: { label: 'course', ...count, min: 1, max: 10_000, whole: true },
  distance: { label: 'distance', ...long, min: 0, max: 1000 },
  length: { label: 'length', ...small, min: 0, max: 10_000, above: true },
  void: { label: 'void', ...count, min: 1, max: 999_999_999, whole: true },
  gel: { label: 'seconds', unit: 's', metric: 's', us: 's', min: 1, max: 600 },
  area: { label: 'area', ...area, min: 0, max: 100_000, above: true },
  robot: { label: 'robot', ...long, min: 0, max: 10_000 },
  hand: { label: 'hand', ...long, min: 0, max: 10_000 },
  welded: { label: 'welder', ...long, min: 0, max: 10_000 },
  released: { label: 'released', ...long, min: 0, max: 100_000, above: true },
  force: { label: 'force', ...newtons, min: 0, max: 1_000_000, above: true },
  square: { label: 'square', ...small, min: 10, max: 3000 },
  openEdge: { label: 'edge', ...long, min: 0, max: 10_000 },
  wetFleece: { label: 'wet', ...long, min: 0, max: 10_000 },
  watch: { label: 'watch', unit: 'min', metric: 'min', us: 'min', min: 1, max: 1440 },
  punch: { label: 'number', ...count, min: 1, max: 999_999_999, whole: true }
} as const satisfies Record<string, Slot>
