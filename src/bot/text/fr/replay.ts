import type { ReplayWords } from '../replay-words.js'

export const replay: ReplayWords = {
  same: (outcome) => `la même réponse, ${outcome}`,
  other: (now, differs) => `PAS la même : ${now === null ? 'impossible à décider de nouveau' : `maintenant ${now}`} ; diffère par ${differs}`,
  decided: (outcome, activity, at) => `Décidé : ${activity}, ${outcome}, ${at}`,
  engine: (now, recorded) => `moteur ${now}, noté par ${recorded}`,
  from: 'À partir de ses propres données et limites :'
}
