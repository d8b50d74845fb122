import type { GuideWords } from '../guide-words.js'

export const guide: GuideWords = {
  title: 'guía de la cuadrilla',
  sections: {
    before: 'Antes del trabajo',
    foam: 'Juegos y espuma',
    weld: 'Soldaduras',
    strips: 'Tiras cubrejunta',
    evening: 'Al final de la jornada',
    always: 'En todo momento'
  },
  ask: 'O pregunte con sus palabras; una pregunta por sí sola no anota nada:',
  questions: ['¿ya está seco el techo?', '¿cuándo están listos los juegos?', '¿cuántas tiras para 4 juntas de 2 m?', '¿quién tiene fallas abiertas?'],
  examples: { undo: '/seamhand deshacer', fire: '/seamhand fire', help: '/seamhand help weld' }
}
