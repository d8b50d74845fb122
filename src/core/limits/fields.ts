import { cylinderRanges } from '../kits/cylinder.js'
import { type LimitName, limitScales, type ScaleName, scales } from './names.js'

/** How a field of a section may be filled: a number of some scale within a range, a whole number, a yes or no, or a list of rows. */
export interface Field {
  readonly metric: string
  readonly us: string
  readonly kind: ScaleName | 'plain' | 'whole' | 'boolean' | 'rows'
  /** Range in metric units, ends included. */
  readonly low: number
  readonly high: number
  readonly rows: readonly Field[]
  /** In metric units: what holds where no sheet says it. Null: some sheet must. A kept sheet stays as it was when fields are added. */
  readonly otherwise: number | null
}

export type SystemName = 'metric' | 'us'

function field(metric: string, us: string, kind: Field['kind'], low = 0, high = 1e6): Field {
  return { metric, us, kind, low, high, rows: [], otherwise: null }
}

/** A field with the same key in both systems. */
function same(key: string, kind: 'plain' | 'whole' | 'boolean' | 'percent' | 'minutes' = 'plain', low = 0, high = 1e6): Field {
  return field(key, key, kind, low, high)
}

function rows(key: string, fields: readonly Field[]): Field {
  return { ...same(key), kind: 'rows', rows: fields }
}

/** A field that a sheet may leave out. */
function optional(of: Field, otherwise: number): Field {
  return { ...of, otherwise }
}

/** A property of the body of a kit, which has the same unit in both systems, in the range of the formulas. */
function ofBody(key: 'rhoKgM3' | 'cJKgK' | 'kWMK'): Field {
  const [low, high] = cylinderRanges[key]
  return same(key, 'plain', low, high)
}

const ages = ['air', 'rh', 'dew', 'wind', 'gust', 'rain', 'sun', 'substrate', 'substrateNearSunrise', 'sheet', 'kit', 'dry', 'clean', 'lapClean']
const tiny = 1e-6

export const substrateFields: readonly Field[] = [
  same('absorptance', 'plain', 0, 1),
  same('emissivity', 'plain', 0, 1),
  field('filmMaxMm', 'filmMaxIn', 'length', 0, 100),
  rows('layers', [
    field('thicknessM', 'thicknessFt', 'distance', tiny, 10),
    same('rhoKgM3', 'plain', tiny),
    same('cJKgK', 'plain', tiny),
    same('kWMK', 'plain', tiny)
  ])
]

/** Every section of a sheet but limits and substrates, with the keys of both systems and what they measure. */
export const sectionFields = {
  maxAgeMin: ages.map((age) => same(age, 'plain', 0)),
  changed: [
    field('airK', 'airF', 'difference'),
    field('sheetK', 'sheetF', 'difference'),
    field('windKmh', 'windMph', 'speed'),
    same('cloudLowPct', 'percent', 0, 100),
    same('cloudHighPct', 'percent', 0, 100)
  ],
  spread: [
    field('airK', 'airF', 'difference'),
    same('rhPct', 'percent', 0, 100),
    field('windKmh', 'windMph', 'speed'),
    field('gustKmh', 'gustMph', 'speed'),
    field('gustEstimatedKmh', 'gustEstimatedMph', 'speed')
  ],
  sheet: [
    field('widthM', 'widthFt', 'distance', tiny),
    field('rollM', 'rollFt', 'distance', tiny),
    field('lapMm', 'lapIn', 'length'),
    field('thicknessMm', 'thicknessIn', 'length', tiny),
    field('endGapMm', 'endGapIn', 'length'),
    same('relaxMin', 'minutes'),
    same('relaxColdMin', 'minutes'),
    same('patchFromLayers', 'whole', 2, 20)
  ],
  strip: [
    field('widthMm', 'widthIn', 'length', tiny),
    field('pastLapMm', 'pastLapIn', 'length'),
    field('cornerRadiusMm', 'cornerRadiusIn', 'length')
  ],
  foam: [
    rows('openTime', [field('c', 'f', 'temperature', -60, 100), same('s', 'plain', tiny)]),
    same('nozzlesPerKit', 'plain', 0),
    same('nozzleGelS', 'plain', 0),
    field('yieldM2PerKit', 'yieldFt2PerKit', 'area', tiny),
    // Times and rates of a run: invented, a company sets its own.
    optional(same('handOverS', 'plain', 0, 3600), 5),
    optional(same('rollInS', 'plain', 0, 3600), 10)
  ],
  kit: [
    field('radiusM', 'radiusFt', 'distance', ...cylinderRanges.radiusM),
    field('heightM', 'heightFt', 'distance', ...cylinderRanges.heightM),
    ofBody('rhoKgM3'),
    ofBody('cJKgK'),
    ofBody('kWMK'),
    same('mixing', 'plain', 1, 1000),
    // Below 1 W/m²K the sun would warm a kit beyond what the formulas take; still air gives 5 and more.
    same('hWM2K', 'plain', 1, cylinderRanges.hWM2K[1]),
    same('exposedEnds', 'whole', 0, 2),
    same('expirySoonDays', 'whole', 0),
    same('mixedMaxMin', 'minutes'),
    optional(same('cartonM2KW', 'plain', 0, 10), 0)
  ],
  site: [same('closeUpMin', 'minutes'), same('minWindowMin', 'minutes'), same('heatPlan', 'boolean')],
  power: [same('volts', 'plain', tiny), same('watts', 'plain', tiny)],
  crew: [
    same('gangs', 'whole', 1, 20),
    field('sprayM2H', 'sprayFt2H', 'area', tiny),
    field('rollM2H', 'rollFt2H', 'area', tiny),
    field('weldRobotMMin', 'weldRobotFtMin', 'distance', tiny),
    field('weldHandMMin', 'weldHandFtMin', 'distance', tiny),
    same('tieInMin', 'minutes', 0, 1440),
    optional(field('gunMMin', 'gunFtMin', 'distance', tiny, 600), 60),
    optional(field('fanMm', 'fanIn', 'length', tiny, 5000), 300),
    optional(field('unrollMMin', 'unrollFtMin', 'distance', tiny, 600), 40),
    optional(same('lagS', 'plain', 0, 3600), 10)
  ],
  takeoff: [
    field('bareBackRollM', 'bareBackRollFt', 'distance', tiny),
    same('foamFieldPct', 'percent', 0, 1000),
    same('foamPerimeterPct', 'percent', 0, 1000),
    same('foamCornerPct', 'percent', 0, 1000),
    same('foamWastePct', 'percent', 0, 100),
    field('cleanerMPerL', 'cleanerFtPerL', 'distance', tiny),
    same('cleanerCanL', 'plain', tiny),
    field('fastenerMm', 'fastenerIn', 'length', 1, 10_000),
    same('fastenersPerBox', 'whole', 1),
    field('barM', 'barFt', 'distance', tiny),
    same('sheetKgM2', 'plain', 0),
    same('kitKg', 'plain', 0),
    field('stagingM2', 'stagingFt2', 'area', tiny)
  ]
} as const satisfies Record<string, readonly Field[]>

export type SectionName = keyof typeof sectionFields
export const limitNames = Object.keys(limitScales) as readonly LimitName[]

/** The key of a limit in a system: `kitTemperatureC`, `kitTemperatureF`. */
export function limitKey(name: LimitName, system: SystemName): string {
  return name + scales[limitScales[name]][system].ending
}
