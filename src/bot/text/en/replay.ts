import type { ReplayWords } from '../replay-words.js'

export const replay: ReplayWords = {
  same: (outcome) => `the same answer, ${outcome}`,
  other: (now, differs) => `NOT the same: ${now === null ? 'not to be decided again' : `${now} now`}; differs in ${differs}`,
  decided: (outcome, activity, at) => `Decided: ${activity}, ${outcome}, ${at}`,
  engine: (now, recorded) => `engine ${now}, recorded by ${recorded}`,
  from: 'From its own inputs and limits:'
}
