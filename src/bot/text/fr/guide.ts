import type { GuideWords } from '../guide-words.js'

export const guide: GuideWords = {
  title: 'guide de l’équipe',
  sections: {
    before: 'Avant le travail',
    foam: 'Trousses et mousse',
    weld: 'Soudures',
    strips: 'Bandes de recouvrement',
    evening: 'En fin de journée',
    always: 'À tout moment'
  },
  ask: 'Ou posez la question telle quelle ; une question seule n’enregistre rien :',
  questions: [
    'le toit est-il sec ?',
    'quand est-ce que les trousses seront prêtes ?',
    'combien de bandes pour 4 joints de 2 m ?',
    'qui a des défauts ouverts ?'
  ],
  examples: { undo: '/seamhand annuler', fire: '/seamhand fire', help: '/seamhand help weld' }
}
