import type { ReplayWords } from '../replay-words.js'

export const replay: ReplayWords = {
  same: (outcome) => `la misma respuesta, ${outcome}`,
  other: (now, differs) => `NO es la misma: ${now === null ? 'no se puede decidir de nuevo' : `ahora ${now}`}; difiere en ${differs}`,
  decided: (outcome, activity, at) => `Decidido: ${activity}, ${outcome}, ${at}`,
  engine: (now, recorded) => `motor ${now}, anotada por ${recorded}`,
  from: 'Con sus propios datos y límites:'
}
