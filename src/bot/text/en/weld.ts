import { counted } from '../plural.js'
import type { WeldWords } from '../weld-words.js'

export const weld: WeldWords = {
  metres: (cleared, onHold, released) => `welded: ${cleared} cleared, ${onHold} on hold, ${released} released`,
  onHold: (metres) => `${metres} on hold`,
  newOnHold: (metres) => `${metres} of it by this message`,
  toRelease: 'to release: probe all, cut back until two are good, patch the cuts',
  cuts: (good, needed) => `good pieces in a row: ${good} of ${needed}`,
  probed: 'all probed',
  notProbed: 'not probed yet',
  release: 'patch the cuts, then: weld NAME released',
  goodCut: 'good piece cut out',
  badCut: 'bad piece cut out',
  coupons: (count) => `from ${counted('en', count, { one: 'coupon', other: 'coupons' })}`,
  tooFew: (count, least) => `too few coupons for the chance of a short one: ${count} of ${least}`,
  falling: 'widths are falling from coupon to coupon',
  low: 'the last widths are lower than chance allows',
  shortIn: (coupons) => `at this rate short in ${counted('en', coupons, { one: 'coupon', other: 'coupons' })}`,
  checkDrift: 'check nozzle, roller, overlap, voltage at the tool before a coupon fails',
  tool: (volts, heat) => `at the tool ${volts}, heat left ${heat}`,
  generator: (watts) => `generator for this tool: at least ${watts} continuous`,
  section: (area, most) => `a lead of ${area} keeps the drop at ${most} or less`
}
