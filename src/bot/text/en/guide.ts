import type { GuideWords } from '../guide-words.js'

export const guide: GuideWords = {
  title: 'crew guide',
  sections: {
    before: 'Before the work',
    foam: 'Kits and foam',
    weld: 'Seams',
    strips: 'Cover strips',
    evening: 'In the evening',
    always: 'At any time'
  },
  ask: 'Or ask in plain words; a question logs nothing by itself:',
  questions: ['is the roof dry yet?', 'how long till the kits are warm?', 'how many strips for 4 joints of 2 m?', 'who has open voids?'],
  examples: { undo: '/seamhand undo', fire: '/seamhand fire', help: '/seamhand help weld' }
}
