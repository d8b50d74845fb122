import type { FirstWords } from '../first-words.js'

export const first: FirstWords = {
  glueNoMore: (substrates) => `glue no more: test square on ${substrates} failed`,
  otherwise: (headline) => `but for that: ${headline}`,
  noVoids: (welded) => `no voids logged; that ${welded} were probed does not stand in the log`,
  noWelds: 'no voids logged, and no welds: nothing known',
  stepsUnsaid: 'repair steps not said',
  passedWarm: 'passed warm',
  sameVoid: (n) => `same place as void ${n}: undo if it is the same one`,
  noCourse: (most) => `no such course: at most ${most} on a roof of this size`,
  beyondRoof: (side) => `beyond the roof: its longest side is ${side}`,
  sameLaid: (at) => `the same was logged at ${at}: undo if it is the same`,
  noHeat: 'nothing known of heat',
  heat: 'metres, coupons and repairs count as heat; of any other say fire heat, with its time: fire heat @14:30'
}
