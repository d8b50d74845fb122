import type { Text } from '../text.js'

export const takeoff: Text['takeoff'] = {
  title: (site) => `Takeoff of ${site}`,
  items: {
    rolls: 'rolls',
    bareBack: 'bare-back rolls',
    kits: 'kits',
    nozzles: 'nozzles',
    patches: 'patches',
    cleaner: 'seam cleaner',
    fasteners: 'fasteners at bases',
    bars: 'bars at bases',
    weight: 'staged weight',
    pressure: 'staging load'
  },
  units: { piece: 'pieces', m: 'm', m2: 'm²', mm: 'mm', l: 'l', kg: 'kg', kPa: 'kPa', '%': '%', 'kg/m2': 'kg/m²', 'm/l': 'm/l', 'kN/kg': 'kN/kg' },
  heads: { item: 'item', amount: 'amount', unit: 'unit', sum: 'sum', packs: 'packs to buy', pack: 'in a pack', left: 'still to be laid' },
  zone: (name) => `zone ${name}`,
  base: (ring) => (ring === 0 ? 'edge of the roof' : `opening ${ring}`),
  waste: (percent) => `+ ${percent} waste`,
  roundedUp: 'up to whole',
  spaced: (spacing, first) => `every ${spacing} at most, first ${first} from the corner`,
  asCut: (count, least) => `as cut from rolls: ${count}, no plan needs fewer than ${least}`,
  limitNotSaid: 'The engineer’s limit for the deck was not said: unknown.',
  engineers: 'Patterns of zones, spacing of fasteners and the load on the deck are the engineer’s.',
  page: ['page', 'of'],
  plan: 'Plan',
  table: 'Takeoff'
}
