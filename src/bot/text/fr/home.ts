import type { HomeWords } from '../home-words.js'

export const home: HomeWords = {
  windowNow: (window) => `pour pulvériser : ${window}, créneau ouvert`,
  windowNext: (window) => `prochain créneau pour pulvériser : ${window}`,
  noWindow: 'plus de créneau pour pulvériser aujourd’hui',
  kitReady: 'prête',
  nextPost: (kind, at) => `prochain message : ${kind}, ${at}`,
  noChannel: 'pas de messages : le chantier n’a pas de canal',
  askSite: 'Ce qui n’est pas montré se demande dans le canal du chantier.',
  numbered: {
    fixed: (number) => `Défaut ${number} : réparé`,
    passed: (number) => `Défaut ${number} : bon`,
    punchDone: (number) => `Réserve ${number} : levée`
  }
}
