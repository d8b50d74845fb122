import type { Units } from '../../../src/bot/answer.js'

/** A number that may be said in a command. Words and ranges by outside contract §5; where it gives none, the program's own. */
export interface Item {
  /** Where the number stands in what was read. */
  readonly path: string
  readonly words: readonly string[]
  /** JSON unit; `none` for a count. */
  readonly unit: string
  /** Unit of a bare number. */
  readonly bare: Readonly<Record<Units, string>>
  readonly min: number
  readonly max: number
  /** Only with a unit: bare it would be something else. */
  readonly unitNeeded?: readonly string[]
}

const bares: Readonly<Record<string, Readonly<Record<Units, string>>>> = {
  C: { metric: 'C', us: 'F' },
  'km/h': { metric: 'km/h', us: 'mph' },
  mm: { metric: 'mm', us: 'in' },
  m: { metric: 'm', us: 'ft' },
  m2: { metric: 'm2', us: 'ft2' },
  'm/min': { metric: 'm/min', us: 'ft/min' },
  N: { metric: 'N', us: 'lbf' }
}

function item(path: string, words: string, unit: string, min: number, max: number, unitNeeded?: readonly string[]): Item {
  const bare = bares[unit] ?? { metric: unit, us: unit }
  const all = words === '' ? [''] : words.split(' ').map((word) => word.replaceAll('_', ' '))
  return { path, words: all, unit, bare, min, max, ...(unitNeeded === undefined ? {} : { unitNeeded }) }
}

const air = item('reading.airC', 'air aire', 'C', -60, 60)
const readings = [
  air,
  item('reading.substrateC', 'deck substrate cubierta sustrato soporte support', 'C', -60, 100),
  item('reading.sheetC', 'sheet lámina feuille', 'C', -60, 100),
  item('reading.rhPct', 'rh humidity hr humedad humidité', '%', 0.1, 100),
  item('reading.dewPointC', 'dew rocío rosée', 'C', -60, 40),
  item('reading.windKmh', 'wind viento vent', 'km/h', 0, 300),
  item('reading.gustKmh', 'gust racha rafale', 'km/h', 0, 300),
  item('reading.sunWm2', 'sun sol soleil', 'W/m2', 0, 1500),
  item('statement.rainChancePct', 'rain lluvia pluie', '%', 0, 100)
]

/** A command as it may be said: what comes first, then any of the items in any order, then what must stand last. */
export interface Form {
  readonly name: string
  readonly heads: readonly string[]
  readonly needed: readonly Item[]
  readonly any: readonly Item[]
  readonly tails: readonly string[]
  /** Several widths in a row, a unit behind the last covering all. */
  readonly widths?: true
}

const kitTemperatures = [item('kit.data.isoC', 'iso', 'C', -40, 80), item('kit.data.resinC', 'resin resina résine', 'C', -40, 80)]
const lead = [item('statement.lead.leadM', 'lead cable rallonge', 'm', 0.1, 1000), item('statement.lead.areaMm2', '', 'mm2', 0.1, 120, ['mm2'])]

export const forms: readonly Form[] = [
  {
    name: 'spray',
    heads: ['spray', 'rociar', 'pulvériser'],
    needed: [],
    any: [...readings, ...kitTemperatures],
    tails: ['', 'mixed', 'dry clean', 'seco', 'propre']
  },
  { name: 'air', heads: ['air', 'aire'], needed: [], any: readings, tails: ['', 'no thunder', 'sin trueno'] },
  { name: 'weld', heads: ['weld', 'soldar', 'souder'], needed: [], any: readings, tails: ['', 'lap clean', 'dry'] },
  { name: 'weld lead', heads: ['weld'], needed: lead, any: [], tails: [''] },
  {
    name: 'coupon',
    heads: ['weld robot', 'weld K7', 'weld hand', 'souder main', 'soldar mano'],
    needed: [],
    any: [
      item('coupon.setC', 'set', 'C', 1, 700),
      item('coupon.speedMMin', 'speed', 'm/min', 0.1, 30),
      item('coupon.thicknessMm', 'thick', 'mm', 0.1, 10)
    ],
    tails: ['film', 'película', 'décollé'],
    widths: true
  },
  {
    name: 'strip',
    heads: ['strip', 'tira', 'bande'],
    needed: [item('strip.widthM', '', 'm', 0.01, 10)],
    any: [
      item('strip.gapMm', 'gap hueco écart', 'mm', -100, 150),
      item('strip.offMm', 'off descentrado décalage', 'mm', -150, 150),
      item('strip.edgeMm', 'edge borde bord', 'mm', 0, 10_000),
      item('strip.sheets', 'sheets', 'none', 1, 100),
      item('strip.rollM', 'roll rollo rouleau', 'm', 0.1, 1000)
    ],
    tails: ['']
  },
  {
    name: 'probe',
    heads: ['probe'],
    needed: [
      item('found.course', 'course hilera rang', 'none', 1, 9999),
      item('found.lengthMm', 'long largo', 'mm', 1, 10_000),
      item('found.distanceM', 'at a à', 'm', 0, 1000)
    ],
    any: [],
    tails: ['', 'end', 'parche', 'bande']
  },
  {
    name: 'probe bare',
    heads: ['probe'],
    needed: [
      item('found.course', 'course hilera rang', 'none', 1, 9999),
      // Behind feet a number would be their inches: the length first.
      item('found.lengthMm', '', 'mm', 1, 10_000, ['mm', 'cm', 'in']),
      item('found.distanceM', '', 'm', 0, 1000, ['m', 'ft'])
    ],
    any: [],
    tails: ['', 'cold']
  },
  {
    name: 'kit',
    heads: ['kit K3', 'kit'],
    needed: [],
    any: [...kitTemperatures, item('kit.data.usedM2', 'used usado utilisé', 'm2', 0.1, 100_000)],
    tails: ['', 'mixed']
  },
  {
    name: 'kit place',
    heads: ['kit K3'],
    needed: [item('kit.data.placeC', 'box store caja dépôt', 'C', -60, 100)],
    any: kitTemperatures,
    tails: ['', 'mixed']
  },
  { name: 'foam', heads: ['foam', 'espuma', 'mousse'], needed: [item('gelS', '', 's', 1, 600)], any: [], tails: ['', 'even'] },
  {
    name: 'laid',
    heads: ['laid'],
    needed: [item('laid.areaM2', '', 'm2', 0.1, 100_000)],
    any: [
      item('laid.sheets', 'sheets', 'none', 1, 100),
      item('laid.course', 'course hilera rang', 'none', 1, 9999),
      item('laid.robotM', 'robot', 'm', 0, 10_000),
      item('laid.handM', 'hand mano', 'm', 0, 10_000)
    ],
    tails: ['', 'kit K2']
  },
  {
    name: 'bond',
    heads: ['bond'],
    needed: [item('bond.forceN', '', 'N', 0.1, 1_000_000)],
    any: [item('bond.squareMm', 'square', 'mm', 10, 3000), item('bond.wantedN', 'wanted', 'N', 0.1, 1_000_000)],
    tails: ['', 'foam']
  },
  {
    name: 'seal',
    heads: ['seal'],
    needed: [item('seal.openEdgeM', 'edge', 'm', 0, 10_000)],
    any: [],
    tails: ['', 'tape']
  },
  {
    name: 'sheets',
    heads: ['sheets'],
    needed: [],
    any: [
      item('sheets.heightM', 'height altura hauteur', 'm', 0.1, 300),
      item('sheets.widthM', 'sheet', 'm', 0.01, 10),
      item('sheets.lapMm', 'lap', 'mm', 0, 10_000),
      item('sheets.rollM', 'roll', 'm', 0.1, 1000)
    ],
    tails: ['', 'along x', 'zones en']
  }
]
