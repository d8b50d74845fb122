import type { FirstWords } from '../first-words.js'

export const first: FirstWords = {
  glueNoMore: (substrates) => `glue no more: test square on ${substrates} failed`,
  otherwise: (headline) => `but for that: ${headline}`,
  noVoids: (welded) => `no voids logged; that ${welded} were probed does not stand in the log`,
  noWelds: 'no voids logged, and no welds: nothing known',
  noHeat: 'nothing known of heat',
  heat: 'metres, coupons and repairs count as heat; of any other say fire heat, with its time: fire heat @14:30'
}
